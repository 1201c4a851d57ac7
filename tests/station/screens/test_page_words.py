"""The pages behind the lead's doors in other languages: no English is left, and nothing is cut.

Chinese is looked at for what is left, because there every Latin word that is neither a code nor a
name must be English that nobody passed through the door of the words.
"""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTranslator
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import QApplication

from station.core.languages import Language
from station.screens import tongue
from station.screens.theme import LIGHT, Face, font_of
from station.screens.tongue import say, speak
from station.screens.widgets.touch_table import Column, TableRow, TouchTable
from tests.station.screens import (
    gallery_languages,
    gallery_manager,
    gallery_office,
    gallery_pages,
    messages,
)
from tests.station.screens.checks_rig import ChecksRig
from tests.station.screens.messages import TRANSLATED, compile_to, file_of, read, sources, write
from tests.station.screens.shown import Shown

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints", "raise")  # Qt's offscreen platform
SMALL = (1024, 768)
PAGES = (
    *(gallery_pages.numbers, gallery_office.shipping, gallery_office.trace),
    gallery_office.quality,
    *(gallery_pages.checks, gallery_pages.change, gallery_pages.lots, gallery_pages.labels),
    *(gallery_pages.signing, gallery_office.alarms, gallery_office.training),
    *(gallery_office.service, gallery_manager.manager, gallery_manager.clock),
    *(gallery_manager.leaving, gallery_languages.packing),
)
NAMES = (
    *("Ilse Marrow", "Bram Okafor", "Ines Calder", "Maud Ferris", "Wren Calder", "Io Marsh"),
    *("Tamsin Fen", "Bram Osterly", "Brigid Onslane", "Rashid Fennimoor", "Sunniva Pellinore"),
    *("Noor Halvard", "Harbour leaf mix", "retail bag 28 cm", "Aldermoor Growers", "Quarry Farm"),
    *("Tarn Roots", "romaine lettuce", "white cabbage", "carrot", "radicchio", "p.marsh"),
    *("Rocket and baby spinach", "Marshgate Grocers", "Depot 4, Marshgate Wharf"),
    *("Tallowby School Kitchens", "Tallowby Road 9, Dunfallow", "delivery note"),
    *("Crunchy slaw mix", "Catering leaf mix", "Soup and stir-fry vegetables", "Hollow Ash mix"),
    *("Saltmere Root Cooperative", "Hitherglass Nurseries", "Pellow and Daughters Field Crops"),
    *("Tinmill Beds", "Ashbrook Growers", "ROCKET", "SPINACH", "CARROT", "CELERY", "ICEBERG"),
    *("ROMAINE", "CRESS", "LEAF", "RED-CABBAGE", "WHITE-CABBAGE", "PW/ICE/", "PW/ROM/"),
    *("jaw cleaned, bags held", "non-Fe", "stainless"),
    *("Amaru Welkin", "Ilse Varnholm", "Teodor Quay", "Dag Ormskerry", "Noor Tallow"),
    *("Wren Ashby", "Wharfe W3", "bench scale 1", "x.rec", "lantern.toml"),
    *("mean 5.4 g of 25 bags with label", "film lot F-0917", "rounded up to 1 g"),
    *("bench scale, serial 0007", "76/211/EEC as amended to", "transcription"),
    *("invented study", "common practice for local sale", "common practice"),
)
"""People, products, suppliers, customers and remarks of the states; they are data."""
KEPT = {
    "kg",
    "cm",
    "mm",
    "Fe",
    "Ctrl",
    "min",
    "PIN",
    "GTIN",
    "OK",
    "QA",
    *("toml", "station.toml"),
    *("PNG", "SVG", "CSV", "UTC", "Max", "Min", "GB", "ms", "Python", "SQLite", "CR", "LF"),
    "station",
    "people",
    "pin",
}
"""Units, signs and what somebody types."""
_WORD = re.compile(r"[A-Za-z][A-Za-z0-9_.'-]*|[0-9][A-Za-z0-9_-]*[A-Za-z][A-Za-z0-9_-]*")
_CLAUSE = re.compile(r"\uff08[^\uff08]* \[[^\]]*\]\uff09")
"""A rule's own words in brackets, with their source."""
_PLACE = re.compile(r"(?<!\w)(?:/[\w.-]+)+|\{\w+:[-0-9]+\}|b'[^']*'")
"""A file or folder, a field of a pattern, bytes."""
_CODE = re.compile(r".*[0-9].*|[A-Z]{2,}-[A-Z]+|[A-Za-z]")


def english_in(text: str) -> list[str]:
    """Latin words of a text that are no code, name, unit or clause of a rule."""
    text = _PLACE.sub("", _CLAUSE.sub("", text))
    for name in NAMES:
        text = text.replace(name, "")
    words = (word.rstrip(".'-") for word in _WORD.findall(text))
    return [word for word in words if word not in KEPT and not _CODE.fullmatch(word)]


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.__name__)
def test_no_english_is_left(
    qapp, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, page: Callable[..., None]
) -> None:
    speak(Language.CHINESE)
    shown = Shown(monkeypatch)
    page(tmp_path, shown, (SMALL,))
    assert len(shown.texts) > 5
    left = {text: state for text, state in shown.texts.items() if english_in(text)}
    assert not left, "pass them through tr or say, and list them: see Languages in DEVELOPERS.md"


def test_a_badge_switches_the_page_that_is_open(qtbot) -> None:
    """Sentences, hints, heads and cells of a table, each by its own widget."""
    checks, table = ChecksRig(size=SMALL).page, TouchTable(LIGHT, (Column("serial", 1),))
    qtbot.addWidget(checks)
    qtbot.addWidget(table)
    checks.choose(1)
    table.show_rows([TableRow("a", ("in doubt",)), TableRow("b", ("Harbour leaf mix",))])
    seen = set()
    for language in Language:
        speak(language)
        QApplication.processEvents()
        model = table.model()
        cells = [str(model.data(model.index(row, 0))) for row in range(2)]
        verb = checks.tare.verb.shown
        assert verb is not None
        assert cells[1] == "Harbour leaf mix"
        assert cells[0] == say("in doubt")
        hint = checks.tare.film.placeholderText()
        head = str(model.headerData(0, Qt.Orientation.Horizontal))
        seen.add((" ".join(verb.lines), hint, cells[0], head))
    assert len(seen) == len(Language)
    checks.stop()


@pytest.fixture(scope="module")
def longest(qapp, tmp_path_factory: pytest.TempPathFactory) -> QTranslator:
    """Of every message the translation that is the widest, whatever its language."""
    folder = tmp_path_factory.mktemp("longest")
    metrics = QFontMetricsF(font_of(Face.VERB, 40))
    files = [read(file_of(language)) for language in TRANSLATED]
    rows = {}
    for source in sources():
        words = [one.get(source, ("", False))[0] for one in files]
        rows[source] = (max((source, *words), key=metrics.horizontalAdvance), False)
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(messages, "FOLDER", folder)
        write(Language.SPANISH, rows)
        compile_to(Language.SPANISH, folder / "longest.qm")
    translator = QTranslator()
    assert translator.load(str(folder / "longest.qm"))
    return translator


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.__name__)
def test_the_longest_words_lie_in_their_places(
    longest: QTranslator,
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
    page: Callable[..., None],
) -> None:
    monkeypatch.setattr(tongue, "_loaded", {Language.SPANISH: longest, Language.ENGLISH: None}.get)
    tongue._said.cache_clear()
    speak(Language.SPANISH)
    # The small screen is the tight one; the gallery draws every language at both sizes.
    shown = Shown(monkeypatch, (SMALL,))
    page(tmp_path, shown, (SMALL,))
    speak(Language.ENGLISH)
    tongue._said.cache_clear()
    assert not [one for one in shown.cut if one not in NAMES], shown.cut
