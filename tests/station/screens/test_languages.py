"""Every language in every state of the packer: nothing cut, nothing over another, large enough.

Least sizes are those of readability at 2 m and 1 m: characters of 20 to 22 minutes of arc (ISO
9241-3 as it is commonly quoted; 22' at 2 m are 13 mm, at 1 m 6.4 mm), the verb and the number
larger. They are measured in the layout's own millimetres, which are a screen's where it is 16
inches wide or more; a narrower one shows everything smaller, whatever the language.
"""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QRawFont, QTextLayout
from PySide6.QtWidgets import QApplication

from station.core.languages import Language
from station.core.metrology.forecast import Outlook
from station.screens.bridge import Bridge
from station.screens.numbers_words import Shown
from station.screens.packer import PackerScreen
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from station.screens.theme import LIGHT, Face, font_of
from station.screens.tongue import speak, tr
from station.screens.widgets.big_figure import SENTENCE_TOP_MM
from station.screens.widgets.lettering import Fitted, fit, ink_of
from station.screens.widgets.outlook_plate import OutlookPlate
from station.screens.widgets.touch_button import TouchButton
from station.screens.words import long_date, narrow_date
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.legibility import SCREENS, SMALL_UPRIGHT, Screen, ruler_of
from tests.station.screens.messages import TRANSLATED, file_of, read
from tests.station.screens.signing_rig import CREW, PinSource
from tests.station.screens.states import LONG_NAME, every_state, make_product, make_run

SIZES = [(1024, 768), (1920, 1080), (1080, 1920)]
WIDE = (1920, 1080)
LEAST_MM = {"verb": 30.0, "number": 35.0, "use by": 13.0, "counts": 6.4}
"""On a wide screen, whose shape is that of the layout."""
NARROW_MM = {"verb": 26.0, "number": 35.0, "use by": 9.0, "counts": 3.2}
"""On one that is less wide for its height; English verbs come to 27 mm there."""
LONG = every_state(make_run(make_product(name=LONG_NAME), order_size=12_000))


def texts(screen: PackerScreen) -> list[tuple[str, Fitted, float]]:
    """Every text on show by its kind, with the width it may take."""
    figure, card, wide = screen.figure, screen.card, float(screen.header.width())
    rows = [("counts", text, screen.counts.width()) for text in screen.counts.texts.values()]
    rows += [
        ("use by" if kind == "use_by" else "header", text, wide)
        for kind, text in screen.header.texts.items()
    ]
    if figure.isVisible() and figure.texts is not None:
        rows += [("verb", figure.texts.row.verb, wide), ("sentence", figure.texts.sentence, wide)]
        if figure.view.number:
            rows.append(("number", figure.texts.row.number, wide))
    if card.isVisible():
        assert card.word is not None
        assert card.reason is not None
        rows += [("verb", card.word, wide), ("sentence", card.reason, wide)]
    rows += [("sign", sign, screen.strip.width() * 0.105) for _, sign, _ in screen.strip.labels]
    return rows


def check_buttons(buttons: list[TouchButton]) -> None:
    for button in buttons:
        words, small, place = button.lettering()
        assert words.whole, f"{button.text()}: {words.lines}"
        assert small.whole, f"{button.small}: {small.lines}"
        assert max(words.width, small.width) <= place.width()
        assert words.descent + words.height <= button.height()


@pytest.mark.parametrize(("wide", "tall"), SIZES)
@pytest.mark.parametrize("language", Language)
def test_nothing_is_cut_and_all_is_large_enough(
    qtbot, language: Language, wide: int, tall: int
) -> None:
    speak(language)
    screen = PackerScreen(Bridge(), FakeIntents())
    qtbot.addWidget(screen)
    screen.resize(wide, tall)
    screen.show()
    least = LEAST_MM if (wide, tall) == WIDE else NARROW_MM
    for states in (every_state(), LONG):
        for name, state in states.items():
            screen.show_state(state)
            for kind, text, room in texts(screen):
                said = f"{name}, {kind}: {text.lines}"
                assert text.whole, said
                assert text.width <= room, said
                if kind in least and text.lines != ("",):
                    assert text.cap >= (least[kind] - 0.05) * screen.unit, said
            check_figure(screen)
            check_header(screen)
    check_buttons([screen.aside_button, screen.call_button, screen.run_button])
    screen.aside_button.setChecked(True)
    check_buttons([screen.aside_button, *screen.aside_panel.buttons])
    question = tr("Why is it set aside?")
    assert fit(question, Face.VERB, 11 * screen.unit, screen.aside_panel.width()).whole
    screen.aside_button.setChecked(False)
    screen.toggle_about()
    about = screen.about
    assert about.notice is not None
    assert about.notice.whole
    assert all(name.whole and fact.whole for name, fact in about.texts)


@pytest.mark.parametrize("size", [*SCREENS, SMALL_UPRIGHT], ids=str)
def test_the_buttons_of_the_packer_s_row_are_lettered_alike(qtbot, size: Screen) -> None:
    """One size in every language, 6 mm of the layout, also when the language changes."""
    with ruler_of(size):
        screen = PackerScreen(Bridge(), FakeIntents())
        qtbot.addWidget(screen)
        screen.resize(size.wide, size.tall)
        screen.show()
        for language in Language:
            speak(language)
            QApplication.processEvents()
            row = screen.run_button, screen.call_button, screen.aside_button
            for aside in (True, False):
                screen.aside_button.setChecked(aside)
                caps = {button.lettering()[0].cap for button in row}
                assert len(caps) == 1, (language, caps)
                assert caps.pop() == pytest.approx(6.0 * screen.unit), language
                check_buttons(list(row))
            assert screen.counts.width() >= 92 * screen.unit, language
            assert screen.counts.geometry().right() <= screen.label.geometry().left()


def check_figure(screen: PackerScreen) -> None:
    """Verb, number and sentence stand clear of one another and of the header."""
    figure = screen.figure
    if not figure.isVisible() or figure.texts is None:
        return
    verb, number = figure.texts.row.verb, figure.texts.row.number
    assert figure.texts.row.baseline - verb.rise >= -3.5 * screen.unit
    if figure.view.number:
        assert verb.width + number.width + figure.texts.row.unit.width < figure.width()
    sentence = figure.texts.sentence
    if sentence.lines != ("",):
        plate = figure.height() - (SENTENCE_TOP_MM + 2.8 + 7.5) * screen.unit
        top = plate + SENTENCE_TOP_MM * screen.unit + sentence.cap - sentence.rise
        assert figure.texts.row.baseline + verb.descent <= top + 1, (
            f"{verb.lines} over {sentence.lines}"
        )


def check_header(screen: PackerScreen) -> None:
    texts = screen.header.texts
    assert texts["product"].width + texts["use_by"].width < screen.header.width()
    assert texts["lots"].width + texts["use_by_words"].width < screen.header.width()


@pytest.mark.parametrize("language", Language)
def test_every_date_of_a_year_is_large_enough(qapp, language: Language) -> None:
    """Weekday in words, at 13 mm in not more than the header gives it."""
    speak(language)
    room = 325.0 * 4 * 0.48
    for offset in range(366):
        day = date(2028, 1, 1) + timedelta(offset)
        sizes = [fit(form(day), Face.VERB, 13 * 4, room).cap for form in (long_date, narrow_date)]
        assert max(sizes) >= 13 * 4 - 0.5, narrow_date(day)


@pytest.mark.qt_log_ignore("propagateSizeHints", "raise")  # Qt's offscreen platform only
@pytest.mark.parametrize("language", Language)
def test_the_signing_sheet_is_whole(qtbot, language: Language) -> None:
    speak(language)
    signed = SignedIntents(FakeIntents(), PinSource(), Bridge(), CREW)
    sheet = SigningSheet(signed)
    qtbot.addWidget(sheet)
    sheet.resize(1024, 768)
    sheet.unlock(lambda: None)
    QApplication.processEvents()
    assert sheet.tiles is not None
    check_buttons([*sheet.tiles.buttons.values(), *sheet.pad.keys.values(), sheet.drop_button])
    sheet.drop()


@pytest.mark.parametrize("language", TRANSLATED)
def test_every_letter_is_in_the_fonts_that_ship(qapp, language: Language) -> None:
    words = "".join(words for words, _ in read(file_of(language)).values())
    days = (date(2028, 1, 1) + timedelta(offset) for offset in range(366))
    speak(language)
    letters = set(words + language.own_name + "".join(map(long_date, days))) - {"\n"}
    for face in (Face.TEXT, Face.VERB, Face.NARROW):
        fonts = []
        for family in font_of(face, 40).families():
            font = font_of(face, 40)
            font.setFamilies([family])
            fonts.append(QRawFont.fromFont(font))
            assert fonts[-1].familyName().startswith("Pack Line")
        lacking = {one for one in letters if not any(f.supportsCharacter(ord(one)) for f in fonts)}
        assert not lacking, f"cut the fonts anew (cut_fonts): {sorted(lacking)}"


@pytest.mark.parametrize("language", Language)
def test_the_word_of_a_forecast_stands_clear(qtbot, language: Language) -> None:
    """Of the figure above it and of what it is about, in scripts that reach far below the line."""
    speak(language)
    plate = OutlookPlate(LIGHT)
    qtbot.addWidget(plate)
    plate.set_unit(3.2)
    plate.resize(380, 224)
    for outlook in Outlook:
        plate.set(Shown(outlook, "0.9122", outlook.name, "whole run: all 900 bags"))
        inks = [(one, *ink_of(one)) for one in plate.texts.values()]
        ink = sum(max(0, rise - one.cap) + one.height + below for one, rise, below in inks)
        assert ink <= plate.height() - 32
        assert plate.texts["word"].cap > 24


def glyphs(text: str) -> list[tuple[int, float]]:
    """Glyphs of a text with their places from the left, as Qt sets it."""
    layout = QTextLayout(text, font_of(Face.VERB, 40))
    layout.beginLayout()
    layout.createLine()
    layout.endLayout()
    found = []
    for run in layout.glyphRuns():
        places = (place.x() for place in run.positions())
        found += list(zip(run.glyphIndexes(), places, strict=True))
    return found


def test_gurmukhi_is_shaped(qapp) -> None:
    """The vowel sign I stands left of its consonant, and a conjunct with RA is not written out.

    The Unicode Standard, chapter 12, Gurmukhi.
    """
    consonant, sign = "\u0a38", "\u0a3f"
    alone = glyphs(consonant)[0][0]
    joined = glyphs(consonant + sign)
    assert joined[0][0] != alone or joined[0][1] > joined[1][1]
    place = dict(joined)
    assert place[alone] > min(x for glyph, x in joined if glyph != alone)
    assert len(glyphs("\u0a2a\u0a4d\u0a30")) < 3
    assert {glyph for glyph, _ in glyphs("ਪ੍ਰ")}.isdisjoint({0})


def test_digits_beside_gurmukhi_are_those_of_the_station(qapp) -> None:
    """A run of letters takes the digits beside it from its own font; they must look the same."""
    font = font_of(Face.VERB, 40)
    boxes = []
    for text in ("1", "\u0a15 1"):
        layout = QTextLayout(text, font)
        layout.beginLayout()
        layout.createLine()
        layout.endLayout()
        run = layout.glyphRuns()[-1]
        glyph, raw = run.glyphIndexes()[-1], run.rawFont()
        assert raw.familyName().startswith("Pack Line")
        boxes.append(QRectF(raw.boundingRect(glyph)))
    assert abs(boxes[0].width() - boxes[1].width()) < 1
    assert abs(boxes[0].height() - boxes[1].height()) < 1
