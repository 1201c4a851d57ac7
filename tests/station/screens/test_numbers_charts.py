"""The charts of the numbers: what a pointer reads, what is marked, what is kept as files."""

import csv
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QImage, QMouseEvent
from PySide6.QtWidgets import QApplication

from station.screens.numbers_charts import _apart
from station.screens.theme import LIGHT
from tests.station.screens.numbers_rig import STATES, Shown, touch

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture
def show(qtbot, tmp_path):
    """Give a function that shows a source on a page and waits for its figures."""
    return lambda source, size=(1024, 768): Shown(qtbot, source, tmp_path / "charts", size)


def point_at(chart, place: QPointF) -> None:
    """Move a pointer over a chart, without a button."""
    none = Qt.MouseButton.NoButton
    seen = chart.view.viewport().mapToGlobal(place)
    event = QMouseEvent(
        QEvent.Type.MouseMove, place, seen, none, none, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(chart.view.viewport(), event)


@pytest.mark.parametrize(("tab", "said"), [(0, "a mean of"), (1, "; mean so far"), (2, "bags, ")])
def test_the_pointer_reads_the_value_below_it(show, tab, said):
    one = show(STATES["safe"](), (1280, 800))
    one.page.tabs[tab].click()
    chart = one.page.pages.currentWidget()
    index = chart.count // 3
    place = chart.place_of(index)
    point_at(chart, place)
    assert said in one.page.reading.view
    assert one.page.reading.view == chart.reading(index)
    point_at(chart, QPointF(1, 1))
    assert said not in one.page.reading.view
    one.qtbot.mouseClick(chart.view.viewport(), Qt.MouseButton.LeftButton, pos=place.toPoint())
    assert said in one.page.reading.view


def test_the_proposal_and_the_present_are_marked_on_the_knee(show):
    one = show(STATES["safe"]())
    one.work_out()
    table = one.page.target.table()
    named = {row[0]: row for row in table.rows if row[0] != "curve"}
    assert set(named) == {"knee", "target 252 now", "target 250 proposed"}
    assert float(named["target 250 proposed"][2]) < float(named["target 252 now"][2])


@pytest.mark.parametrize("tab", [0, 1, 2])
def test_each_chart_is_kept_as_picture_drawing_and_values(show, tab, tmp_path):
    one = show(STATES["safe"](), (1280, 800))
    one.page.tabs[tab].click()
    touch(one.qtbot, one.page.keep_button)
    chart = one.page.pages.currentWidget()
    files = {path.suffix: path for path in (tmp_path / "charts").iterdir()}
    assert set(files) == {".png", ".svg", ".csv"}
    picture = QImage(str(files[".png"]))
    assert picture.width() == 2 * chart.width()
    ground = picture.pixelColor(picture.width() // 2, 6)
    assert ground.name().lower() == LIGHT.paper.lower()
    assert ElementTree.parse(files[".svg"]).getroot().tag.endswith("svg")
    with files[".csv"].open(encoding="utf-8", newline="") as kept:
        read = list(csv.reader(kept))
    table = chart.table()
    assert tuple(read[0]) == table.columns
    assert [tuple(row) for row in read[1:]] == list(table.rows)


def test_the_values_of_the_weights_are_the_bags(show):
    source = STATES["safe"]()
    page = show(source).page
    page.tabs[1].click()
    table = page.weights.table()
    assert source.numbers is not None
    assert [row[1] for row in table.rows] == [bag.net.digits for bag in source.numbers.bags]
    assert table.rows[0][0] == source.numbers.bags[0].at.isoformat()


def test_the_spread_counts_every_bag(show):
    page = show(STATES["safe"]()).page
    page.tabs[2].click()
    assert sum(int(row[1]) for row in page.spread.table().rows) == 900


def test_a_folder_that_cannot_be_written_is_said(show, tmp_path):
    (tmp_path / "charts").write_text("a file stands here")
    one = show(STATES["safe"]())
    touch(one.qtbot, one.page.keep_button)
    assert one.page.reading.view.startswith("Not kept:")


def test_without_values_there_is_nothing_to_keep(show):
    one = show(STATES["none"]())
    touch(one.qtbot, one.page.keep_button)
    assert one.page.reading.view == "There is nothing to keep yet."


@pytest.mark.parametrize("name", ["safe", "thin", "failing", "begun"])
def test_every_mark_lies_inside_the_chart(show, name):
    one = show(STATES[name]())
    one.work_out()
    chart = one.page.target
    ground = chart.view.getViewBox().sceneBoundingRect()
    curve = sum(row[0] == "curve" for row in chart.table().rows)
    assert chart.count > curve
    for index in range(curve, chart.count):
        place = chart.view.mapToScene(chart.place_of(index).toPoint())
        assert ground.adjusted(4, 4, -4, -4).contains(place), chart.reading(index)


def test_levels_that_lie_close_have_one_name_together():
    five = (("T2", 232.0), ("T1", 241.0), ("nominal", 250.0), ("target", 250.5), ("upper", 251.0))
    assert _apart(five, 0.6) == {
        "T2": "T2",
        "T1": "T1",
        "nominal": "",
        "target": "",
        "upper": "nominal, target, upper",
    }
    assert _apart(five, 0.1) == {name: name for name, _ in five}


@pytest.mark.parametrize("tab", [0, 1, 2])
def test_without_values_no_axis_measures_anything(show, tab):
    for name, there in (("none", False), ("safe", True)):
        one = show(STATES[name]())
        one.page.tabs[tab].click()
        chart = one.page.pages.currentWidget()
        assert chart.view.getPlotItem().isVisible() is there
