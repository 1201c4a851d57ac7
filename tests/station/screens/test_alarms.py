"""The page of alarms: gravest first, each priority with a shape of its own, two answers by touch.

That an alarm asks for an answer, that priorities are few and that shelving ends by itself follows
the public summaries of ANSI/ISA-18.2.
"""

from datetime import UTC

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage

from station.core.alarms import Priority
from station.line.state import EntryAnswer
from station.screens.alarm_mark import AlarmMark
from station.screens.alarms import WHO, AlarmsPage
from station.screens.bridge import Bridge
from station.screens.doors import Door
from station.screens.theme import PALETTES, Ruler
from station.screens.widgets.alarm_list import AlarmList, AlarmRow, AlarmsView
from station.screens.window import StationWindow
from tests.station.screens.alarm_states import MEAN, MISMATCH, PRINTER, ROLL, AlarmSourceStub
from tests.station.screens.change_states import LEADS
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture
def shown(qtbot):
    def show(*alarms, size=(1024, 768)):
        bridge, intents = Bridge(), FakeIntents()
        page = AlarmsPage(bridge, intents, AlarmSourceStub(*alarms), LEADS, UTC)
        qtbot.addWidget(page)
        page.resize(*size)
        with qtbot.waitExposed(page):
            page.show()
        return page, intents

    return show


def touch(qtbot, button):
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def touch_row(qtbot, page, number):
    middle = page.list.boxes[number].center()
    qtbot.mouseClick(
        page.list, Qt.MouseButton.LeftButton, pos=QPoint(int(middle.x()), int(middle.y()))
    )


def test_each_alarm_says_what_and_what_to_do_and_how_it_stands(shown):
    page, _ = shown(MISMATCH, PRINTER, MEAN, ROLL)
    rows = page.list.view.rows
    assert [row.priority for row in rows] == [3, 2, 2, 1]
    assert all(row.answer for row in rows)
    states = [row.state for row in rows]
    assert states == [
        "since 09:36",
        "since 09:38",
        "since 09:31, seen by L01",
        "shelved until 09:43",
    ]


def test_without_an_alarm_it_says_so(shown):
    page, _ = shown()
    assert "No alarm stands" in page.list.accessibleName()
    assert not page.seen_button.isEnabled()


def test_acknowledged_by_whoever_is_touched(qtbot, shown):
    page, intents = shown(MISMATCH, PRINTER)
    touch_row(qtbot, page, 1)
    touch(qtbot, page.seen_button)
    assert WHO in page.message.text()
    assert intents.asked == []
    touch(qtbot, next(iter(page.people.buttons.values())))
    touch(qtbot, page.seen_button)
    [(what, (facts, who))] = intents.asked
    assert (what, who) == ("enter", LEADS[0].id)
    assert facts[0].details["alarm"] == PRINTER.uid
    page.show_answer(EntryAnswer((facts[0].uid,), False, "P02 may not"))
    assert "P02 may not" in page.message.text()


def test_shelved_for_a_time_but_never_a_high_one(qtbot, shown):
    page, intents = shown(MISMATCH, PRINTER)
    touch(qtbot, next(iter(page.people.buttons.values())))
    touch_row(qtbot, page, 0)
    assert not any(button.isEnabled() for button in page.shelve_buttons.values())
    touch_row(qtbot, page, 1)
    touch(qtbot, page.shelve_buttons[30])
    [(_, (facts, _))] = intents.asked
    assert (facts[0].result, facts[0].details["minutes"]) == ("shelved", 30)


@pytest.mark.parametrize("size", [(1024, 768), (1920, 1080)])
def test_everything_touched_is_large_enough(shown, size):
    page, _ = shown(MISMATCH, PRINTER, MEAN, ROLL, size=size)
    least = Ruler.of(page.screen()).touch()
    assert len(page.list.boxes) >= 2
    assert all(box.height() >= least for box in page.list.boxes)
    for button in (page.seen_button, page.back_button, *page.shelve_buttons.values()):
        assert min(button.width(), button.height()) >= least


@pytest.mark.parametrize("palette", PALETTES.values(), ids=PALETTES)
def test_priorities_differ_in_grey(qtbot, palette):
    pictures = {}
    for priority in Priority:
        shown = AlarmList(palette)
        qtbot.addWidget(shown)
        shown.resize(800, 140)
        row = AlarmRow("u", priority, "the same", "words", "answer", "since 09:36", False)
        shown.set(AlarmsView((row,)))
        grey = shown.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
        wide = grey.bytesPerLine()
        pixels = np.frombuffer(grey.constBits(), np.uint8).reshape(140, wide)[:, :60]
        pictures[priority] = pixels.astype(float) / 255
    for one in Priority:
        for other in Priority:
            if one < other:
                apart = float(np.sqrt(np.mean((pictures[one] - pictures[other]) ** 2)))
                assert apart > 0.1, (one, other, apart)


def test_unseen_alarms_are_counted_on_the_way_to_them(qtbot):
    bridge, intents, source = (
        Bridge(),
        FakeIntents(),
        AlarmSourceStub(MISMATCH, PRINTER, MEAN, ROLL),
    )
    page = AlarmsPage(bridge, intents, source, LEADS, UTC)
    door = Door("ALARMS", Qt.Modifier.SHIFT | Qt.Key.Key_F2, lambda: page)
    window = StationWindow(bridge, intents, make_offer(), doors=(door,))
    qtbot.addWidget(window)
    mark = AlarmMark(window, source)
    buttons = (window.packer.run_button, window.lead.more_button, window.lead.doors["ALARMS"])
    assert [button.small for button in buttons] == ["! 2"] * 3
    source.open = (MEAN, ROLL)  # one was seen, one is put off
    mark.look()
    assert [button.small for button in buttons] == ["F2", "", "Shift+F2"]
    source.now = ROLL.shelved_until
    mark.look()
    assert [button.small for button in buttons] == ["! 1"] * 3


def test_shift_f2_leads_to_them(qtbot):
    bridge, intents = Bridge(), FakeIntents()
    page = AlarmsPage(bridge, intents, AlarmSourceStub(MISMATCH), LEADS, UTC)
    door = Door("ALARMS", Qt.Modifier.SHIFT | Qt.Key.Key_F2, lambda: page)
    window = StationWindow(bridge, intents, make_offer(), doors=(door,))
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    qtbot.keyClick(window, Qt.Key.Key_F2, Qt.KeyboardModifier.ShiftModifier)
    assert page.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_F2)
    assert window.lead.isVisible()
