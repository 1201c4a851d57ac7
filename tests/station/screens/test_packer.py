"""The packer's screen: what it says in each state, how large, and that shapes tell states apart."""

import itertools
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF, QImage
from PySide6.QtWidgets import QWidget

from station.line.state import Notice, Phase, Verb
from station.screens.bridge import Bridge
from station.screens.packer import NO_BAG_TO_GUIDE, PackerScreen
from station.screens.theme import Ruler
from station.screens.widgets.aside_panel import REASONS
from station.screens.widgets.big_figure import LEAST_NUMBER_MM, SHOWN_AS
from station.screens.widgets.gap_geometry import gap_view
from station.screens.widgets.lettering import Fitted
from station.screens.words import instruction
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import (
    LONG_NAME,
    every_state,
    grams,
    make_product,
    make_run,
    state,
)

SIZES = [(1280, 800), (1920, 1080)]
STATES = every_state()


@pytest.fixture
def intents() -> FakeIntents:
    return FakeIntents()


@pytest.fixture
def screen(qtbot, intents: FakeIntents) -> PackerScreen:
    one = PackerScreen(Bridge(), intents)
    qtbot.addWidget(one)
    one.resize(1280, 800)
    one.show()
    return one


def grey(widget: QWidget) -> np.ndarray:
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    flat = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return flat[:, : image.width()].astype(np.int16)


def said(screen: PackerScreen) -> str:
    """The verb a person sees."""
    seen = [part for part in (screen.card, screen.figure) if part.isVisible()]
    assert len(seen) == 1
    return seen[0].accessibleName()


def test_the_number_is_painted_alone_and_the_rest_with_the_whole_state(screen) -> None:
    first, then = (state(Phase.LOADED, Verb.ADD, net) for net in (228, 230))
    screen.show_state(first)
    screen.show_number(then)
    assert screen.figure.view == instruction(then, note=instruction(first).note)
    assert screen.strip.view == gap_view(first)
    screen.show_state(then)
    assert screen.figure.view == instruction(then)
    assert screen.strip.view == gap_view(then)


def test_every_verb_has_a_picture_and_a_state_here() -> None:
    assert set(SHOWN_AS) == set(Verb)
    assert {one.verb for one in STATES.values()} == set(Verb)


@pytest.mark.parametrize("name", STATES)
def test_the_one_verb_is_shown(screen: PackerScreen, name: str) -> None:
    state = STATES[name]
    screen.show_state(state)
    assert said(screen).startswith(state.verb)
    if state.verb in NO_BAG_TO_GUIDE:
        assert screen.card.view.because.lower() == state.because.lower()
        assert not screen.strip.isVisible()
    else:
        assert screen.strip.isVisible()


def test_grams_stand_in_the_big_row_and_in_the_gap(screen: PackerScreen) -> None:
    screen.show_state(STATES["short_t1"])
    assert said(screen) == "ADD 14 g"
    assert screen.strip.view.amount == "14\u00a0g"
    screen.show_state(STATES["over_far"])
    assert said(screen) == "TAKE OUT 39 g"
    assert screen.strip.view.amount == "39\u00a0g"


def test_header_names_product_weekday_and_every_lot(screen: PackerScreen) -> None:
    screen.show_state(STATES["bag_on"])
    view = screen.header.view
    assert view.product == "Harbour leaf mix"
    assert view.use_by == "Tuesday 1\u00a0December"  # 1 December 2026 is a Tuesday (ISO 8601)
    assert view.lots.split() == ["A2632901", "=", "ROM-2611", "RAD-0418", "CAR-7710"]
    assert screen.counts.accessibleName() == "128 of 400 bags 3 set aside last 253\u00a0g"


def test_the_scale_counts_and_its_own_digits_are_always_said(screen: PackerScreen) -> None:
    screen.show_state(STATES["short_t1"])
    assert "scale shows 244\u00a0g" in screen.figure.view.note
    assert "the scale's own indication counts" in screen.figure.view.note
    screen.show_state(STATES["no_reading"])
    assert screen.figure.view.note == ""


def test_notice_and_rules_are_one_touch_away(qtbot, screen: PackerScreen) -> None:
    screen.show_state(STATES["short_t1"])
    qtbot.mouseClick(screen.figure, Qt.MouseButton.LeftButton)
    assert screen.about.isVisible()
    assert screen.about.view.notice.startswith("The scale's own indication counts.")
    facts = dict(screen.about.view.facts)
    assert facts["rule set"].startswith("eu-76-211")
    assert facts["T2, T1, nominal"] == "232\u00a0g, 241\u00a0g, 250\u00a0g"
    qtbot.mouseClick(screen.about, Qt.MouseButton.LeftButton)
    assert not screen.about.isVisible()


def test_a_bag_closes_what_was_being_read(screen: PackerScreen) -> None:
    screen.show_state(STATES["bag_on"])
    screen.toggle_about()
    screen.show_state(STATES["bag_on"])
    assert screen.about.isVisible()
    screen.show_state(STATES["short_t1"])
    assert not screen.about.isVisible()


@pytest.mark.parametrize("name", ["stopped", "no_reading"])
def test_nothing_covers_a_stop(screen: PackerScreen, name: str) -> None:
    screen.show_state(STATES["short_t1"])
    screen.aside_button.click()
    screen.toggle_about()
    screen.show_state(STATES[name])
    assert screen.card.isVisible()
    assert not screen.aside_panel.isVisible()
    assert not screen.about.isVisible()


def test_screen_words_promise_nothing(screen: PackerScreen) -> None:
    screen.show_state(STATES["seal"])
    words = " ".join(
        (screen.about.view.notice, screen.figure.view.note, str(screen.about.view.facts))
    ).lower()
    for claim in ("approved", "certified", "legal for trade", "guarantee", "tamper"):
        assert claim not in words


@pytest.mark.parametrize("reason", [words for words, _ in REASONS])
def test_set_aside_asks_a_reason_by_picture(
    qtbot, screen: PackerScreen, intents: FakeIntents, reason: str
) -> None:
    screen.show_state(STATES["short_t1"])
    qtbot.mouseClick(screen.aside_button, Qt.MouseButton.LeftButton)
    assert screen.aside_panel.isVisible()
    assert not screen.strip.isVisible()
    button = next(one for one in screen.aside_panel.buttons if one.text() == reason)
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert intents.asked == [("set_aside", reason)]
    assert not screen.aside_panel.isVisible()


def test_set_aside_can_be_left_without_a_reason(
    qtbot, screen: PackerScreen, intents: FakeIntents
) -> None:
    screen.show_state(STATES["short_t1"])
    qtbot.mouseClick(screen.aside_button, Qt.MouseButton.LeftButton)
    assert screen.aside_button.text() == "BACK"
    qtbot.mouseClick(screen.aside_button, Qt.MouseButton.LeftButton)
    assert intents.asked == []
    assert screen.strip.isVisible()


def test_nothing_can_be_set_aside_without_a_run(screen: PackerScreen) -> None:
    screen.show_state(STATES["start_run"])
    assert not screen.aside_button.isEnabled()


@pytest.mark.parametrize(("wide", "tall"), SIZES)
def test_targets_are_large_enough_and_apart(screen: PackerScreen, wide: int, tall: int) -> None:
    screen.resize(wide, tall)
    screen.show_state(STATES["short_t1"])
    screen.aside_button.click()
    ruler = Ruler.of(screen.screen())
    row = (screen.aside_button, screen.call_button, screen.run_button)
    for button in (*row, *screen.aside_panel.buttons):
        assert min(button.width(), button.height()) >= ruler.px(30) - 1
    for one, other in (*itertools.pairwise(row), *itertools.pairwise(screen.aside_panel.buttons)):
        gap = other.geometry().left() - one.geometry().right() - 1
        assert gap >= ruler.px(6) - 1
    assert screen.rect().contains(screen.run_button.geometry())


@pytest.mark.parametrize(("wide", "tall"), SIZES)
def test_main_number_can_be_read_at_two_metres(screen: PackerScreen, wide: int, tall: int) -> None:
    """35 mm is the hard minimum; 50 mm is wished for and reached where the window is that large."""
    screen.resize(wide, tall)
    ruler = Ruler.of(screen.screen())
    for name in ("short_t1", "over_far"):
        screen.show_state(STATES[name])
        assert screen.figure.texts is not None
        cap_mm = screen.figure.texts.row.number.cap / ruler.px_per_mm
        assert cap_mm >= LEAST_NUMBER_MM
        if screen.unit >= ruler.px_per_mm:
            assert cap_mm >= 50.0


def texts_with_room(screen: PackerScreen) -> list[tuple[str, Fitted, float]]:
    """Every text on show, with the width it may take."""
    header, counts, figure = screen.header, screen.counts, screen.figure
    rows = [(f"header {k}", v, header.width()) for k, v in header.texts.items()]
    rows += [(f"counts {k}", v, counts.width()) for k, v in counts.texts.items()]
    if figure.isVisible() and figure.texts is not None:
        rows += [
            ("verb", figure.texts.row.verb, figure.width()),
            ("number", figure.texts.row.number, figure.width()),
            ("sentence", figure.texts.sentence, figure.width()),
        ]
    if screen.card.isVisible():
        assert screen.card.word is not None
        assert screen.card.reason is not None
        rows += [
            ("word", screen.card.word, screen.card.width()),
            ("reason", screen.card.reason, screen.card.width()),
        ]
    for mark, sign, mass in screen.strip.labels:
        rows += [(mark.sign, sign, screen.strip.width() * 0.2)]
        rows += [(mark.mass, mass, screen.strip.width() * 0.2)]
    return rows


@pytest.mark.parametrize(("wide", "tall"), SIZES)
@pytest.mark.parametrize("name", STATES)
def test_nothing_is_cut_with_long_names(
    screen: PackerScreen, name: str, wide: int, tall: int
) -> None:
    heavy = make_product(
        name=LONG_NAME,
        nominal=grams(2270),
        floor=grams(2270),
        target=grams(2280),
        upper=grams(2310),
    )
    for run in (make_run(make_product(name=LONG_NAME)), make_run(heavy, order_size=12_000)):
        screen.resize(wide, tall)
        screen.show_state(every_state(run)[name])
        for what, text, room in texts_with_room(screen):
            assert text.whole, f"{what}: {text.lines}"
            metrics = QFontMetricsF(text.font)
            for line in text.lines:
                assert "…" not in line
                assert metrics.horizontalAdvance(line) <= room, f"{what}: {line}"
    if STATES[name].run is not None:
        assert " ".join(screen.header.texts["product"].lines) == LONG_NAME


@pytest.mark.parametrize(("wide", "tall"), SIZES)
def test_header_texts_do_not_touch(screen: PackerScreen, wide: int, tall: int) -> None:
    screen.resize(wide, tall)
    screen.show_state(every_state(make_run(make_product(name=LONG_NAME)))["bag_on"])
    texts = screen.header.texts
    assert texts["product"].width + texts["use_by"].width < screen.header.width()
    assert texts["lots"].width + texts["use_by_words"].width < screen.header.width()


def test_the_row_fits_with_the_longest_verb_and_number(screen: PackerScreen) -> None:
    screen.show_state(STATES["over_far"])
    texts = screen.figure.texts
    assert texts is not None
    assert (
        texts.row.verb.width + texts.row.number.width + texts.row.unit.width < screen.figure.width()
    )


DIFFERENT_PIXELS = 0.012
"""Least share of the screen's pixels that must differ in grey between two pictures."""
PAIRS = [
    ("short_t1", "seal"),
    ("short_t1", "over_near"),
    ("short_t1", "stopped"),
    ("seal", "stopped"),
    ("seal", "lift_bag"),
    ("seal", "set_aside"),
    ("over_near", "seal"),
    ("wait", "seal"),
    ("bag_on", "empty_pan"),
    ("bag_on", "stopped"),
    ("no_reading", "stopped"),
    ("no_reading", "start_run"),
    ("no_reading", "bag_on"),
    ("wipe_pan", "empty_pan"),
    ("order_done", "stopped"),
    ("set_aside", "short_t1"),
]


@pytest.mark.parametrize(("one", "other"), PAIRS)
def test_states_differ_without_colour(screen: PackerScreen, one: str, other: str) -> None:
    pictures = []
    for name in (one, other):
        screen.show_state(STATES[name])
        pictures.append(grey(screen))
    differ = (abs(pictures[0] - pictures[1]) > 64).mean()
    assert differ >= DIFFERENT_PIXELS, f"{one} and {other} differ in {differ:.4f} of the pixels"


def test_a_stop_has_a_frame_of_bars_in_grey(screen: PackerScreen) -> None:
    """Along the frame light and dark take turns; no other state shows that."""
    changes = {}
    for name in ("stopped", "no_reading", "start_run", "order_done"):
        screen.show_state(STATES[name])
        picture = grey(screen.card)
        row = picture[round(5 * screen.unit)] < 128
        changes[name] = int(np.count_nonzero(row[1:] != row[:-1]))
    assert changes.pop("stopped") > 20
    assert max(changes.values()) < 10


def test_missing_is_hollow_good_is_solid_excess_is_hatched(screen: PackerScreen) -> None:
    """Share of dark pixels in the slot and in the lap, in grey."""

    def dark(name: str, left: float, right: float) -> float:
        screen.show_state(STATES[name])
        band = screen.strip.band
        picture = grey(screen.strip)
        lip = round(5 * screen.unit)
        part = picture[
            lip : round(band.height()) - lip,
            round(screen.strip.along(left)) : round(screen.strip.along(right)),
        ]
        return float((part < 128).mean())

    assert dark("bag_on", 0.54, 0.82) < 0.02
    assert dark("bag_on", 0.02, 0.50) < 0.02
    assert dark("short_t1", 0.02, 0.15) == 1.0
    assert dark("seal", 0.02, 0.50) == 1.0
    assert dark("seal", 0.54, 0.82) > 0.7  # but for the white tick and word
    assert 0.2 < dark("over_near", 0.848, 0.875) < 0.8


def test_an_unsteady_edge_is_a_comb(screen: PackerScreen) -> None:
    def edges(name: str) -> int:
        screen.show_state(STATES[name])
        row = grey(screen.strip)[round(screen.strip.band.height() / 2)] < 128
        comb = row[round(screen.strip.along(0.25)) : round(screen.strip.along(0.40))]
        return int(np.count_nonzero(comb[1:] != comb[:-1]))

    assert screen.strip.view.teeth == 0
    assert edges("short_t1_unsteady") >= 5
    assert screen.strip.view.teeth >= 3


def test_markup_in_a_name_is_shown_as_written(screen: PackerScreen) -> None:
    screen.show_state(every_state(make_run(make_product(name="<b>Mix</b> & more")))["bag_on"])
    assert screen.header.texts["product"].lines == ("<b>Mix</b> & more",)


def test_what_is_due_soon_stands_beside_the_counts_and_nothing_before(screen: PackerScreen) -> None:
    """Only what needs somebody within ten minutes takes the place of what is past."""
    now = datetime.now(UTC)  # noqa: TID251  the screen asks the machine's clock
    state = every_state()["bag_on"]
    for minutes, shown in ((30, False), (9, True), (-2, True)):
        notice = Notice("scale check", now + timedelta(minutes=minutes))
        screen.show_state(replace(state, due=(notice,)))
        assert ("scale check" in screen.counts.accessibleName()) is shown
        due = screen.counts.texts["due"]
        assert due.whole
