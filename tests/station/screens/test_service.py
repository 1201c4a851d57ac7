"""The service page: the line as it is, commands, the lesson and the swap, by touch and by key."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import Qt

from drivers.frames.described import DescribedParser
from drivers.frames.description import Meaning
from drivers.wire import Passed
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.metrology.scale_suitability import Level
from station.core.pack import Moment
from station.core.scale_swap import TAKEN, swap_of
from station.screens.service_learn import BAR
from tests.station.screens.numbers_rig import touch
from tests.station.screens.service_rig import WRONG, ServiceRig
from tests.station.screens.service_rig import marked_line as line

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
TRUE = ("0", "6", "260", "3000")


@pytest.fixture
def rig(qtbot):
    one = ServiceRig()
    qtbot.addWidget(one.page, before_close_func=lambda page: page.stop())
    return one


# --- the line -----------------------------------------------------------------------------------


def test_line_shows_bytes_text_timing_and_reasons(rig):
    rig.page.refresh()
    panel = rig.page.wire
    assert panel.link.text() == "weights arrive and are used"
    assert "5 s: 40 weights, 1 not understood (3 %" in panel.count.text()
    assert "a weight every 100 ms" in panel.count.text()
    assert "device 12ab:0034/A1" in panel.count.text()
    damaged = panel.rows.shown[-2]
    assert (damaged.good, damaged.gap_ms) == (False, 100)
    assert "not a number" in damaged.what
    assert damaged.hex.startswith("0a 20 31 47")


def test_wrong_baud_rate_is_said_in_words(rig):
    rig.wire.link = WRONG
    rig.page.refresh()
    assert "check baud rate and parity (here: 9600 8N1)" in rig.page.wire.link.text()


def test_list_is_held_still_and_goes_on(qtbot, rig):
    before = rig.page.wire.rows.view
    touch(qtbot, rig.page.wire.still_button)
    rig.wire.passed = (*rig.wire.passed, Passed(5 * 10**9, b"\n?\r"))
    rig.page.refresh()
    assert rig.page.wire.rows.view == before
    touch(qtbot, rig.page.wire.still_button)
    rig.page.refresh()
    assert rig.page.wire.rows.view[-1].text == "‹LF›?‹CR›"


def test_recording_is_started_and_ended(qtbot, rig):
    panel = rig.page.wire
    touch(qtbot, panel.record_button)
    assert panel.record_button.text() == "STOP RECORDING"
    assert "recordings/x.rec" in panel.note.text()
    touch(qtbot, panel.record_button)
    assert panel.note.text() == "Recorded: recordings/x.rec"
    rig.wire.disk = False
    touch(qtbot, panel.record_button)
    assert "no space left" in panel.note.text()


# --- the scale ----------------------------------------------------------------------------------


def test_command_and_what_became_of_it(qtbot, rig):
    touch(qtbot, rig.page.tabs[1])
    panel = rig.page.scale
    assert ("Maker and model", "Wharfe W3") in panel.facts.rows
    qtbot.waitUntil(panel.buttons["ZERO"].isVisible)
    touch(qtbot, panel.buttons["ZERO"])
    assert [one.data for one in rig.wire.given] == [b"\nZ\r"]
    assert panel.message.text() == "ZERO …"
    rig.wire.outcome = (1, False, "the scale refused to set zero: empty the pan")
    rig.page.refresh()
    assert "refused to set zero" in panel.message.text()
    rig.wire.refuses = "TARE would change what the bags of the open run weigh: end the run"
    touch(qtbot, panel.buttons["TARE"])
    assert "end the run" in panel.message.text()
    assert len(rig.wire.given) == 1


def test_station_shows_versions_and_disk(qtbot, rig):
    touch(qtbot, rig.page.tabs[2])
    qtbot.waitUntil(lambda: len(rig.page.station.rows) == 3)
    assert ("Disk", "80 GB free") in rig.page.station.rows


# --- the lesson ---------------------------------------------------------------------------------


def drag(qtbot, strip, begin: int, end: int) -> None:
    """Touch the first cell and drag to the last."""
    left = Qt.MouseButton.LeftButton
    qtbot.mousePress(strip, left, pos=strip.centre(begin).toPoint())
    qtbot.mouseMove(strip, strip.centre(end - 1).toPoint())
    qtbot.mouseRelease(strip, left, pos=strip.centre(end - 1).toPoint())
    assert (strip.view.begin, strip.view.end) == (begin, end)


def type_in(qtbot, field, text: str) -> None:
    field.setFocus()
    qtbot.keyClicks(field, text)


def taught(qtbot, rig, sent: bytes, shown: str, *says: Meaning) -> None:
    panel = rig.page.learn
    rig.lesson.send(sent, sent, b"q=")
    touch(qtbot, panel.take_button)
    if not panel.strip.view.marks:
        for field, begin, end in (("flag", 0, 1), ("value", 2, 10), ("unit", 11, 13)):
            drag(qtbot, panel.strip, begin, end)
            touch(qtbot, panel.fields[field])
    type_in(qtbot, panel.shown, shown)
    for meaning, button in panel.says.items():
        if button.isChecked() is not (meaning in says):
            touch(qtbot, button)
    touch(qtbot, panel.keep_button)


def test_lines_are_taught_by_touch_tested_and_kept(qtbot, rig):
    touch(qtbot, rig.page.tabs[3])
    panel = rig.page.learn
    assert not panel.take_button.isEnabled()
    touch(qtbot, panel.listen_button)
    assert rig.lesson.quiet == [True]
    assert rig.asked("bar")[-1][0] == BAR
    rig.lesson.send(b"8 g \r\n")
    touch(qtbot, panel.units["g"])
    taught(qtbot, rig, line("q", "254"), "254", Meaning.STABLE)
    assert not panel.propose_button.isEnabled()
    taught(qtbot, rig, line("w", "12"), "12", Meaning.MOTION)
    type_in(qtbot, panel.name, "Lantern")
    touch(qtbot, panel.propose_button)
    assert "{flag1:1}={value:8} {unit:2}" in panel.message.text()
    assert [row.what for row in panel.rows.view][-1].startswith("12 g")
    touch(qtbot, panel.save_button)
    assert panel.message.text() == "kept as lantern.toml"
    (kept,) = rig.lesson.saved
    (read,) = DescribedParser(kept).feed(line("q", "-1.5"))
    assert (read.digits, read.motion) == ("-1.5", False)
    touch(qtbot, panel.listen_button)
    assert rig.lesson.quiet[-1] is False
    assert rig.asked("bar")[-1] == (BAR, "")


def test_marks_are_made_with_keys_too(qtbot, rig):
    rig.page.choose(3)
    panel = rig.page.learn
    rig.lesson.send(b"x\r\n", line("q", "254"), line("q", "254"), b"q=")
    panel.listen_button.click()
    with qtbot.waitActive(rig.page):
        rig.page.activateWindow()
    panel.take_button.click()
    for _ in range(3):
        qtbot.keyClick(panel.strip, Qt.Key.Key_Right)
    for _ in range(7):
        qtbot.keyClick(panel.strip, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    chosen = panel.strip.view
    qtbot.keyClick(panel.strip, "v")
    (mark,) = panel.strip.view.marks
    assert (mark.name, mark.begin, mark.end) == ("value", chosen.begin, chosen.end)
    assert chosen.end - chosen.begin == 8
    panel.clear_button.click()
    assert panel.strip.view.marks == ()


def test_proposal_that_cannot_be_says_what_to_mark(qtbot, rig):
    rig.page.choose(3)
    panel = rig.page.learn
    panel.listen_button.click()
    panel.units["g"].click()
    rig.lesson.send(b"x\r\n")
    taught(qtbot, rig, line("q", "254"), "254", Meaning.STABLE)
    taught(qtbot, rig, line("q", "12"), "13", Meaning.STABLE)
    panel.propose_button.click()
    assert "value is read as '12', not '13'" in panel.message.text()
    assert not panel.save_button.isEnabled()


def test_settings_that_do_not_fit_are_said(qtbot, rig):
    rig.page.choose(3)
    panel = rig.page.learn
    panel.listen_button.click()
    panel.units["g"].click()
    rig.lesson.send(b"x\r\n")
    taught(qtbot, rig, line("q", "254"), "254", Meaning.STABLE)
    taught(qtbot, rig, line("w", "12"), "12", Meaning.MOTION)
    panel.propose_button.click()
    rig.lesson.refuses = True
    panel.save_button.click()
    assert "these lines are in kg: the settings are in g" in panel.message.text()
    panel.again_button.click()
    assert panel.taught == []


def test_no_line_heard_is_said_with_what_to_look_at(qtbot, rig):
    rig.page.choose(3)
    rig.page.learn.listen_button.click()
    rig.page.learn.take_button.click()
    assert "baud rate and parity" in rig.page.learn.message.text()
    rig.page.learn.keep_button.setEnabled(True)
    rig.page.learn.keep_button.click()
    assert "mark its value" in rig.page.learn.message.text()


def test_recordings_teach_as_well_as_the_line(qtbot, rig, tmp_path):
    rig.page.choose(3)
    panel = rig.page.learn
    panel.tape_button.click()
    assert "There is no recording" in panel.message.text()
    rig.lesson.tapes = (tmp_path / "bad.rec", tmp_path / "b.rec")
    panel.tape_button.click()
    assert "is no ASCII text" in panel.message.text()
    rig.lesson.send(b"x\r\n", line("q", "254"), line("q", "254"), b"q=")
    panel.tape_button.click()
    panel.take_button.click()
    assert panel.strip.view.line == line("q", "254")
    assert rig.lesson.quiet == []


def test_scale_that_is_asked_gets_its_request(qtbot, rig):
    rig.page.choose(3)
    type_in(qtbot, rig.page.learn.request, r"W\r\n")
    rig.page.learn.listen_button.click()
    qtbot.waitUntil(lambda: b"W\r\n" in rig.lesson.asked)
    touch(qtbot, rig.page.tabs[0])
    assert rig.lesson.quiet[-1] is False


# --- the swap -----------------------------------------------------------------------------------


def weigh_in(qtbot, rig, loads=TRUE) -> None:
    touch(qtbot, rig.page.tabs[4])
    touch(qtbot, rig.page.swap.look_button)
    touch(qtbot, rig.page.swap.check_button)
    for shown in loads:
        rig.rest(shown)


def test_scale_is_taken_into_use_with_its_check_and_its_marks(qtbot, rig):
    weigh_in(qtbot, rig)
    panel = rig.page.swap
    assert rig.swap.looked == 1
    assert ("Here", "Wharfe W3 serial 1002") in panel.facts.rows
    assert not panel.sign_button.isEnabled()
    touch(qtbot, panel.people.buttons["M01"])
    panel.sign_button.held.emit()
    assert "1 to 40 characters of the plate" in panel.message.text()
    type_in(qtbot, panel.serial, "1002")
    type_in(qtbot, panel.verified, "2026-03-31")
    panel.sign_button.held.emit()
    (fact,), who = rig.asked("enter")[-1]
    at = Moment(datetime(2026, 11, 25, tzinfo=UTC), 0, "Europe/Dublin", 1)
    swap = swap_of(FactRecord(fact, at, who, 1))
    assert (fact.kind, fact.result, who) == (EntryKind.SETTING, TAKEN, "M01")
    assert swap is not None
    assert [load.reading.indication.digits for load in swap.made.check.loads] == list(TRUE)
    rig.answer()
    assert panel.message.text().startswith("IN USE.")
    rig.show("0")
    assert rig.asked("bar")[-1][1] == ""


def test_scale_that_fails_or_does_not_suit_is_recorded_as_refused(qtbot, rig):
    rig.swap.level = Level.REFUSE
    weigh_in(qtbot, rig)
    panel = rig.page.swap
    panel.people.touched.emit("P01")
    type_in(qtbot, panel.serial, "1002")
    type_in(qtbot, panel.verified, "2026-03-31")
    panel.sign_button.held.emit()
    (fact,), _ = rig.asked("enter")[-1]
    assert fact.result == "refused"
    rig.answer()
    assert "does not suit SPINACH-255" in panel.message.text()


def test_other_panels_wait_while_weights_are_on(qtbot, rig):
    weigh_in(qtbot, rig, TRUE[:2])
    touch(qtbot, rig.page.tabs[0])
    assert rig.page.panels.currentWidget() is rig.page.swap
    touch(qtbot, rig.page.swap.take_button)  # what it shows now stands for the third load
    assert rig.page.swap.loads.view[2].shown == "6 g"


def test_swap_that_could_not_be_recorded_says_so(qtbot, rig):
    weigh_in(qtbot, rig)
    panel = rig.page.swap
    panel.people.touched.emit("P01")
    type_in(qtbot, panel.serial, "1002")
    type_in(qtbot, panel.verified, "2026-03-31")
    panel.sign_button.held.emit()
    rig.answer(recorded=False, words="the disk is full")
    assert panel.message.text() == "Not recorded: the disk is full"


def test_weights_of_a_swap_left_unsigned_are_no_bag(qtbot, rig):
    """The page may be left with the last weight on: no bag is taken until the pan is empty."""
    weigh_in(qtbot, rig)
    assert rig.asked("bar")[-1][1]
    rig.page.hide()
    rig.show("254")
    assert rig.asked("bar")[-1][1], "a weight on the pan would be recorded as a bag"
    rig.show("0")
    assert rig.asked("bar")[-1][1] == ""


def test_known_weight_of_a_lesson_is_no_bag(qtbot, rig):
    touch(qtbot, rig.page.tabs[3])
    touch(qtbot, rig.page.learn.listen_button)
    rig.show("254")
    rig.page.hide()
    barred = dict(rig.asked("bar"))
    assert barred[BAR] == ""
    assert any(barred.values())
    rig.show("0")
    assert not any(dict(rig.asked("bar")).values())


def test_look_at_another_scale_gives_up_the_check_that_goes_on(qtbot, rig):
    weigh_in(qtbot, rig)
    touch(qtbot, rig.page.swap.people.buttons["M01"])
    assert rig.page.swap.sign_button.isEnabled()
    touch(qtbot, rig.page.swap.look_button)
    assert not rig.page.swap.sign_button.isEnabled()
    assert rig.page.swap.loads.view == ()
