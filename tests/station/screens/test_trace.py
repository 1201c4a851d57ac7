"""The trace page on a real record: scan, touch a plate, go back, print."""

import pytest
from PySide6.QtCore import QPoint, Qt

from station.app.trace_desk import TraceDesk
from station.screens.trace import TracePage
from tests.station.line.lot_rig import LotLine
from tests.station.store.dock import shipped_record

pytestmark = [
    pytest.mark.gui,
    pytest.mark.qt_log_ignore("propagateSizeHints"),  # Qt's offscreen platform only
]


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    line = LotLine(tmp_path_factory.mktemp("trace") / "home")
    line.start("ROM-1", "CAR-7")
    bags = line.bags(3)
    line.load("ROM-2")
    bags += line.bags(2)
    line.close()
    return line.home, bags


@pytest.fixture
def page(packed, qtbot):
    shown = TracePage(TraceDesk(packed[0]))
    qtbot.addWidget(shown)
    shown.resize(1024, 768)
    shown.show()
    yield shown
    shown.stop()


def asked(page, qtbot, text):
    with qtbot.waitSignal(page.work.ended):
        page.field.setText(text)
        qtbot.keyClick(page.field, Qt.Key.Key_Return)


def plate(page, key):
    place = next(at for at, node in enumerate(page.tree.shown.nodes) if node.key == key)
    box = page.tree.boxes[place]
    return QPoint(round(box.left + box.width / 2), round(box.middle))


def test_a_scan_shows_the_tree_and_a_touch_goes_on_with_that_plate(page, qtbot, packed):
    bags = packed[1]
    asked(page, qtbot, f"]d2010952123454321310A2632901\x1d21{bags[0]}")
    assert page.tree.view.asked == bags[0]
    assert page.field.text() == ""
    with qtbot.waitSignal(page.work.ended):
        qtbot.mouseClick(page.tree, Qt.MouseButton.LeftButton, pos=plate(page, "ROM-1"))
    assert page.tree.view.asked == "ROM-1"
    assert page.tree.view.answer.startswith("5 bags")
    with qtbot.waitSignal(page.work.ended):
        page.before_button.click()
    assert page.tree.view.asked == bags[0]
    assert not page.before_button.isEnabled()


def test_what_is_not_there_is_said_and_the_tree_stays(page, qtbot):
    asked(page, qtbot, "ROM-1")
    asked(page, qtbot, "A1-ZZ-999999")
    assert "is not in the record" in page.message.text()
    assert page.tree.view.asked == "ROM-1"


def test_print_writes_the_paper_beside_the_record(page, qtbot, packed):
    assert not page.print_button.isEnabled()
    asked(page, qtbot, "ROM-1")
    with qtbot.waitSignal(page.work.ended):
        page.print_button.click()
    path = packed[0] / "papers" / "genealogy-ROM-1.pdf"
    assert path.read_bytes().startswith(b"%PDF-")
    assert str(path) in page.message.text()


def test_every_line_of_every_plate_fits_it(page, qtbot):
    asked(page, qtbot, "ROM-1")
    boxes = page.tree.boxes
    assert len(boxes) == len(page.tree.shown.nodes)
    assert all(box.right <= page.tree.width() for box in boxes)
    assert all(box.top + box.height <= page.tree.height() for box in boxes)


def test_a_scanned_pallet_opens_and_a_touch_leads_to_the_customer_and_back(qtbot, tmp_path):
    record = shipped_record(tmp_path / "home")
    page = TracePage(TraceDesk(record.home))
    qtbot.addWidget(page)
    page.resize(1024, 768)
    page.show()
    asked(page, qtbot, f"]C100{record.pallet}")
    assert page.tree.view.asked == record.pallet
    assert len(page.tree.boxes) == len(page.tree.shown.nodes)
    assert all(box.right <= page.tree.width() for box in page.tree.boxes)
    for key, bags in (("S-1", 6), (record.cases[0], 3), ("LF-101", 10)):
        with qtbot.waitSignal(page.work.ended):
            qtbot.mouseClick(page.tree, Qt.MouseButton.LeftButton, pos=plate(page, key))
        assert page.tree.view.asked == key
        assert page.tree.view.answer.startswith(f"{bags} bags")
    page.stop()
