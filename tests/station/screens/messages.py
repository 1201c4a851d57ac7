"""Keeps the files of Qt Linguist: python -m tests.station.screens.messages.

Words are found where ``tr``, ``mark`` or ``say`` takes them as they are, in the texts of buttons,
titles and tiles of the pages that are translated, and in the line's own tables. New words come into
each file without a translation, vanished ones go; translations stay, with their marks. Then each
file is compiled by Qt's own lrelease.
"""

import ast
import re
import shutil
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from xml.etree import ElementTree as Tree
from xml.sax.saxutils import escape

import PySide6

from station.core.languages import Language
from station.screens.sentences import SENTENCES, WORDS
from station.screens.tongue import CONTEXT

SCREENS = Path(__file__).parents[3] / "station" / "screens"
FOLDER = SCREENS / "languages"
TRANSLATED = tuple(one for one in Language if one is not Language.ENGLISH)
PAGES = (
    *("packer", "window", "lead", "lead_pages", "door_grid", "language_page", "signing_sheet"),
    *("offer", "aside_panel", "pin_pad", "number_pad", "alarms", "kiosk", "lot_bars"),
    *("checks", "checks_scale", "checks_tare", "checks_suspect", "change", "change_pages"),
    *("lots", "lots_line", "lots_receive", "labels", "labels_doubt", "labels_first_off"),
    *("labels_roll", "labels_scan", "trace", "quality", "quality_bin", "quality_checks"),
    *("quality_decide", "quality_holds", "quality_inbox", "quality_inspector", "quality_look_up"),
    *("quality_rejects", "shipping", "shipping_gather", "shipping_house", "numbers"),
)
"""Modules whose widgets' words are translated; elsewhere only what is marked."""
NO_BUTTONS = ("bench", "manager", "manager_sign", "service_learn", "service_swap", "service_wire")
"""Modules whose buttons wait too: of the simulator, of managers and of maintenance."""
_WIDGETS = {
    "TouchButton": (1, 2),
    "Text": (1,),
    "Title": (1,),
    "ScanField": (1,),
    "LabelField": (1,),
    "EntryField": (1,),
    "Tile": (1, 2),
    "setText": (0,),
    "say": (0,),
    "set_hint": (0,),
    "set": (0,),
    "_drop": (0,),
    "_say": (0,),
    "_refuse": (0,),
}
"""Callables and the places of their words among the arguments."""
_NO_WORDS = re.compile(r"(F?[0-9]*|PIN|OK|QA|O2|CO2|kg|[^a-zA-Z]*|[^a-zA-Z]*[a-zA-Z][^a-zA-Z]*)")
"""Keys, figures and signs, which are the same in every language."""
_LOCALES = {"es": "es_ES", "fr": "fr_FR", "pa": "pa_IN", "vi": "vi_VN", "zh": "zh_CN"}
_LOCALES |= {"tl": "tl_PH", "pt": "pt_PT"}


@cache
def sources() -> tuple[str, ...]:
    """Every message, in the order of its letters."""
    found = set(SENTENCES) | set(WORDS)
    for file in sorted(SCREENS.rglob("*.py")):
        found |= set(_in_module(ast.parse(file.read_text("utf-8")), file.stem))
    return tuple(sorted(one for one in found if not _NO_WORDS.fullmatch(one)))


def _in_module(tree: ast.AST, file: str) -> Iterator[str]:
    page = file in PAGES
    for call in (node for node in ast.walk(tree) if isinstance(node, ast.Call)):
        name = getattr(call.func, "id", getattr(call.func, "attr", ""))
        places: tuple[int, ...] = ()
        if name in ("tr", "mark") or getattr(call.func, "id", "") == "say":
            places = (0,)
        elif page or (name == "TouchButton" and file not in NO_BUTTONS):
            places = _WIDGETS.get(name, ())
        words = [call.args[at] for at in places if at < len(call.args)]
        if places and (page or name == "TouchButton"):
            words += [one.value for one in call.keywords if one.arg == "small"]
        for node in words:
            yield from _constants(node)


def _constants(node: ast.expr) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from _constants(node.body)
        yield from _constants(node.orelse)
    elif isinstance(node, ast.BoolOp):
        for value in node.values:
            yield from _constants(value)


def file_of(language: Language) -> Path:
    """The file a translator opens in Qt Linguist."""
    return FOLDER / f"station_{language}.ts"


def read(file: Path) -> dict[str, tuple[str, bool]]:
    """Translation and whether a person reviewed it, by message."""
    if not file.exists():
        return {}
    rows = {}
    for message in Tree.fromstring(file.read_bytes()).iter("message"):
        translation = message.find("translation")
        assert translation is not None
        reviewed = translation.get("type") != "unfinished"
        rows[message.findtext("source", "")] = (translation.text or "", reviewed)
    return rows


def write(language: Language, rows: dict[str, tuple[str, bool]]) -> None:
    """Write a file in the format of Qt Linguist (TS 2.1)."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{_LOCALES[language]}" sourcelanguage="en">',
        "<context>",
        f"    <name>{CONTEXT}</name>",
    ]
    for source, (words, reviewed) in rows.items():
        kind = "" if reviewed and words else ' type="unfinished"'
        lines += [
            "    <message>",
            f"        <source>{escape(source)}</source>",
            f"        <translation{kind}>{escape(words)}</translation>",
            "    </message>",
        ]
    file_of(language).write_text("\n".join([*lines, "</context>", "</TS>", ""]), "utf-8")


def compile_to(language: Language, target: Path) -> None:
    """Compile a language's file with Qt's own compiler; drafts count as translations."""
    lrelease = shutil.which("lrelease", path=str(Path(PySide6.__file__).parent))
    assert lrelease is not None, "PySide6-Essentials carries lrelease"
    command = [lrelease, "-silent", str(file_of(language)), "-qm", str(target)]
    subprocess.run(command, check=True, timeout=60)


def main() -> None:
    wanted = sources()
    for language in TRANSLATED:
        known = read(file_of(language))
        write(language, {source: known.get(source, ("", False)) for source in wanted})
        compile_to(language, FOLDER / f"station_{language}.qm")
        missing = [source for source in wanted if not known.get(source, ("", False))[0]]
        print(f"{language}: {len(wanted)} messages, {len(missing)} without a translation")


if __name__ == "__main__":
    main()
