"""The door of the words: keys, holes, live switch, drafts, and the files of Qt Linguist."""

import ast
import re
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from station.core.languages import Language
from station.line.state import Verb
from station.screens import sentences
from station.screens.bridge import Bridge
from station.screens.catalogue import manager
from station.screens.interpreter import Interpreter
from station.screens.offer import Person
from station.screens.packer import PackerScreen
from station.screens.theme import LIGHT
from station.screens.tongue import CONTEXT, holes, likely, pattern_of, say, speak, spoken, tr
from station.screens.unreviewed import review_words, unreviewed
from station.screens.widgets.sheet import Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.words import long_date, short_date
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.messages import (
    FOLDER,
    TRANSLATED,
    compile_to,
    file_of,
    read,
    sources,
)
from tests.station.screens.states import DAY, every_state

ROOT = Path(__file__).parents[3]
LACKING_AT_MOST = 0.05
"""Share of new words that may wait, shown in English, for whoever brings the files up to date."""
SAID_BY = (
    "drivers/printer",
    "drivers/wedge.py",
    "drivers/diagnosis.py",
    "drivers/connection.py",
    "drivers/hid_port.py",
    "drivers/identity.py",
    "drivers/pace.py",
    "drivers/port_faults.py",
    "drivers/steady.py",
    "drivers/zero_gate.py",
    "drivers/port.py",
    "drivers/wire_view.py",
    "drivers/frames",
    "station/line",
    "station/core",
    "station/access",
    "station/app",
    "station/screens",
    "station/store",
    "station/reports/genealogy.py",
    "station/reports/timeline.py",
)


def files_of(place: Path) -> list[Path]:
    return [place] if place.is_file() else sorted(place.rglob("*.py"))


def said_in_code() -> str:
    """Every text of the code that may end up in a sentence, its holes left empty."""
    found = []
    for folder in SAID_BY:
        for file in files_of(ROOT / folder):
            if file.name == "sentences.py" or file.parent.name == "catalogue":
                continue
            for node in ast.walk(ast.parse(file.read_text("utf-8"))):
                if isinstance(node, ast.Constant) and isinstance(node.value, str):
                    found.append(node.value)
                elif isinstance(node, ast.JoinedStr):
                    parts = [
                        one.value if isinstance(one, ast.Constant) else "{}" for one in node.values
                    ]
                    found.append("".join(map(str, parts)))
    return "\n".join(found)


def test_every_sentence_is_said_by_the_code() -> None:
    """Its parts between the holes stand in the code as they are here."""
    code = said_in_code().lower()
    pieces = {
        piece.strip()
        for sentence in sentences.SENTENCES
        if sentence not in (*manager.DATES, *manager.GASES)  # said by no code of ours
        for piece in re.split(r"\{\w+\}|PINs?|badges?|[:,.()]", sentence)
    }
    assert not [one for one in pieces if one.lower() not in code]


@pytest.mark.parametrize("language", TRANSLATED)
def test_messages_have_words_and_the_same_holes(language: Language) -> None:
    rows = read(file_of(language))
    for source, (words, _) in rows.items():
        assert holes(words) == holes(source) or not words, source
    lacking = [source for source in sources() if not rows.get(source, ("",))[0].strip()]
    most = LACKING_AT_MOST * len(sources())
    assert len(lacking) <= most, f"run python -m tests.station.screens.messages: {lacking}"


@pytest.mark.parametrize("language", TRANSLATED)
def test_compiling_again_gives_the_same_messages(qapp, tmp_path: Path, language: Language) -> None:
    """Qt's own lrelease is the reference."""
    target = tmp_path / "again.qm"
    compile_to(language, target)
    kept, again = QTranslator(), QTranslator()
    assert kept.load(str(FOLDER / f"station_{language}.qm"))
    assert again.load(str(target))
    for source, words in read_words(language).items():
        assert kept.translate(CONTEXT, source) == again.translate(CONTEXT, source)
        assert kept.translate(CONTEXT, source) == words


def read_words(language: Language) -> dict[str, str]:
    return {source: words for source, (words, _) in read(file_of(language)).items()}


def test_holes_take_figures_and_words_that_are_listed_themselves(qapp) -> None:
    speak(Language.SPANISH)
    assert say("lot ROM-1 is held: take it off and load another: RUN, then LOTS (F6)") == (
        "lote ROM-1 retenido: sáquelo y cargue otro: TANDA, luego LOTES (F6)"
    )
    assert say("scale check in 7 min") == "control de báscula en 7 min"
    assert say("Refused. A run is open: end it before the next one starts").startswith(
        "Rechazado. Hay una tanda abierta"
    )
    assert say("nobody listed this") == "nobody listed this"
    assert say("Run open\nOrder: 12 bags") == "Tanda abierta\nPedido: 12 bolsas"


def test_a_sentence_takes_the_pattern_with_most_words(qapp) -> None:
    assert re.fullmatch(pattern_of("{what} now"), "scale check now")
    speak(Language.FRENCH)
    assert say("scale check at the end of the run now") == (
        "contrôle balance en fin de série maintenant"
    )


def test_what_is_put_together_of_sentences_is_said_part_by_part(qapp) -> None:
    speak(Language.SPANISH)
    assert say("Not recorded: the store is closed") == "No registrado: el registro está cerrado"
    assert say("Given up: nothing is recorded. 3 more windows wait.") == (
        "Abandonado: no se registra nada. Esperan 3 ventanas más."
    )
    assert say("Ilse Marrow, lead") == "Ilse Marrow, jefe de línea"
    assert say("12 of 25") == "12 de 25"
    assert say("Rest of Gorse Hill") == "Rest of Gorse Hill"  # a hole for figures takes no name


def test_a_part_with_a_gap_of_its_own_is_said_as_one(qapp) -> None:
    """And blanks around a sentence, a comma before it, or a pattern said alike change nothing."""
    speak(Language.SPANISH)
    whole = say("labels are jammed: clear them")
    assert whole in say("label A1 is in doubt: labels are jammed: clear them")
    assert say("   target 252 now   ") == f"   {say('target 252 now')}   "
    speak(Language.PUNJABI)
    assert ",," not in say("2026-11-25 09:24:00, shift 04:00-12:00, by P01")
    speak(Language.TAGALOG)
    assert say("label applied") == f"label {say('applied')}"
    speak(Language.FRENCH)
    assert "\u00a0: " in say("seal: failed")


def test_codes_figures_and_names_of_a_table_cost_no_pattern(qapp) -> None:
    """Hundreds of rows change each second; only sentences may be tried one by one."""
    rows = ("A1-7K-000041", "252.5", "09:41:07", "Harbour leaf mix", "ROM-26327-B", "Io Marsh")
    assert not [row for row in rows if likely(row)]
    most = max(len(likely(sentence)) for sentence in sentences.SENTENCES)
    assert most < len(sentences.SENTENCES) / 5


def test_english_is_never_touched(qapp) -> None:
    assert spoken() is Language.ENGLISH
    for verb in Verb:
        assert tr(verb) == verb == say(verb)


def test_a_switch_reaches_what_is_on_screen_at_once(qtbot) -> None:
    screen = PackerScreen(Bridge(), FakeIntents())
    qtbot.addWidget(screen)
    screen.show()
    screen.show_state(every_state()["short_t1"])
    button, words = TouchButton(LIGHT, "SET ASIDE"), Text(LIGHT, "Run open")
    for one in (button, words):
        qtbot.addWidget(one)
    seen = set()
    for language in Language:
        speak(language)
        QApplication.processEvents()
        figure = screen.figure
        assert figure.accessibleName() == f"{tr('ADD')} 14 g"
        assert figure.texts is not None
        assert figure.texts.row.verb.lines == (tr("ADD"),)
        assert button.text() == "SET ASIDE"  # the key stays, for whoever asks the button
        assert button.accessibleName() == tr("SET ASIDE")
        assert words.text() == tr("Run open")
        seen.add((figure.accessibleName(), words.text()))
        assert "244\u00a0g" in figure.view.note  # the scale's own digits, in every language
    assert len(seen) == len(Language)


def test_dates_are_those_of_the_unicode_locale_data(qapp) -> None:
    """Names and their order against Qt's copy of the CLDR; the year is left out."""
    locales = {"es": "es_ES", "fr": "fr_FR", "pa": "pa_IN", "vi": "vi_VN", "zh": "zh_CN"}
    locales |= {"tl": "fil_PH", "pt": "pt_PT"}
    day = QDate(DAY.year, DAY.month, DAY.day)
    for language in TRANSLATED:
        speak(language)
        locale = QLocale(locales[language])
        whole = locale.toString(day, QLocale.FormatType.LongFormat)
        parts = re.findall(r"\w+", long_date(DAY).replace("\u00a0", " "))
        assert [part for part in re.findall(r"\w+", whole) if part in parts] or language == "zh"
        assert locale.dayName(day.dayOfWeek()) in long_date(DAY)
        assert str(DAY.day) in long_date(DAY)
        assert str(DAY.day) in short_date(DAY)


PEOPLE = (
    Person("P01", "Ilse", "packer", Language.PUNJABI),
    Person("P02", "Teodor", "packer"),
    Person("L01", "Brigid", "lead", Language.FRENCH),
)


def test_the_packers_screen_follows_the_packer_and_other_pages_who_signed_on(qapp) -> None:
    who = Interpreter(PEOPLE, Language.PORTUGUESE)
    who.listen("", at_scale=True)
    assert spoken() is Language.PORTUGUESE
    assert who.follow("run 1", "P01")
    assert not who.follow("run 1", "P01")
    who.listen("", at_scale=True)
    assert spoken() is Language.PUNJABI
    who.listen("L01", at_scale=False)
    assert spoken() is Language.FRENCH
    who.listen("L01", at_scale=True)
    assert spoken() is Language.PUNJABI
    who.choose(Language.TAGALOG)
    who.listen("L01", at_scale=True)
    assert spoken() is Language.TAGALOG
    who.listen("P02", at_scale=True)  # a packer signs on: theirs, which is the station's own
    assert spoken() is Language.PORTUGUESE
    who.follow("", "")
    who.listen("", at_scale=True)
    assert spoken() is Language.PORTUGUESE


def test_what_is_not_reviewed_is_counted_from_the_files() -> None:
    counts = {one.language: one for one in unreviewed()}
    assert set(counts) == set(TRANSLATED)
    for language, count in counts.items():
        rows = read(file_of(language))
        assert count.messages == len(rows)
        assert count.drafts == sum(bool(words) and not done for words, done in rows.values())
        assert f"{language} {count.drafts} of {count.messages}" in review_words()
