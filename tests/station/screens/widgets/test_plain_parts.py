"""Parts that are Qt's own beneath: what it would paint, elide or cut by itself."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import QApplication, QStyle, QStyleOptionFrame, QWidget

from station.screens.theme import PALETTES, Palette, Ruler, contrast
from station.screens.widgets.entry_field import EntryField
from station.screens.widgets.sheet import ScanField
from station.screens.widgets.touch_table import Column, TableRow, TouchTable

pytestmark = [
    pytest.mark.qt_log_ignore("propagateSizeHints"),  # Qt's offscreen platform only
    pytest.mark.parametrize("palette", PALETTES.values(), ids=PALETTES),
]
QT_LEAVES = 2
"""Pixels on each side of the text of a field."""
GLOVE_MM = 7.0
"""As wide as the bar beside every other list."""


@pytest.mark.parametrize("kind", [ScanField, EntryField])
def test_a_hint_is_read_as_well_as_other_small_text(qtbot, palette: Palette, kind) -> None:
    """4.5 to 1: WCAG 2.2, success criterion 1.4.3, which holds for placeholders too."""
    field = kind(palette, "scan the label on a bag")
    qtbot.addWidget(field)
    field.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the cursor is no letter
    field.resize(600, 120)
    field.show()
    QApplication.processEvents()
    image = field.grab().toImage()
    row = range(20, image.height() - 20)
    seen = {image.pixelColor(x, y).name() for y in row for x in range(20, image.width() - 20)}
    assert max(contrast(palette.paper, one) for one in seen) >= 4.5


@pytest.mark.parametrize("kind", [ScanField, EntryField])
def test_a_hint_is_whole_in_the_field_in_front(qtbot, palette: Palette, kind) -> None:
    """Its frame is thicker there than it was when the hint was given its size."""
    shown = QWidget()
    qtbot.addWidget(shown)
    field, other = (kind(palette, "scan the label on a bag", shown) for _ in range(2))
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    for wide in range(280, 560):
        other.setFocus()
        field.resize(wide, 120)
        field.setFocus()
        assert field.hasFocus()
        option = QStyleOptionFrame()
        field.initStyleOption(option)
        place = QStyle.SubElement.SE_LineEditContents
        room = field.style().subElementRect(place, option, field).width() - 2 * QT_LEAVES
        words = QFontMetricsF(field.font()).horizontalAdvance(field.placeholderText())
        assert words <= room, wide


def test_the_bar_of_a_table_has_the_colours_of_the_page_and_the_width_of_a_glove(
    qtbot, palette: Palette
) -> None:
    table = TouchTable(palette, (Column("serial", 1),))
    qtbot.addWidget(table)
    table.resize(400, 300)
    table.show_rows([TableRow(str(number), (str(number),)) for number in range(60)])
    table.show()
    QApplication.processEvents()
    bar = table.verticalScrollBar()
    assert bar.isVisible()
    assert bar.width() >= int(Ruler.of(table.screen()).px(GLOVE_MM))
    image = bar.grab().toImage()
    middle = [image.pixelColor(bar.width() // 2, y).name() for y in range(2, bar.height() - 2)]
    assert {one.upper() for one in middle} == {palette.quiet.upper(), palette.edge.upper()}


def test_a_remark_that_is_wider_than_its_column_is_read_to_its_end(qtbot, palette: Palette) -> None:
    """Two remarks that differ in their last word alone do not look alike."""
    table = TouchTable(palette, (Column("time", 3), Column("note", 2)))
    qtbot.addWidget(table)
    table.resize(400, 300)
    table.show()
    seen = []
    for end in ("held", "free"):
        table.show_rows([TableRow("a", ("09:12", f"jaw cleaned, teflon renewed, 115 bags {end}"))])
        QApplication.processEvents()
        image = table.viewport().grab().toImage()
        seen.append(bytes(image.constBits()))
    assert seen[0] != seen[1]
