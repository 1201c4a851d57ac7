"""A table for a glove: rows as high as a finger, one or several touched.

Heads and cells are shown in the language of now; what is no sentence or word of the station, such
as a code, a figure or a name, stays as it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QScroller,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)
from typing_extensions import override

from station.screens.theme import Face, Palette, Ruler, font_of
from station.screens.tongue import say
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.scroll_bar import scroll_bar

_Index = QModelIndex | QPersistentModelIndex
_ROW_MM = 11.0
_TEXT_MM = 3.5
_MARGIN = 4
"""Pixels Qt leaves free on each side of a cell."""
_HEAD = 6 / 7
"""Size of a head, against a cell."""
_PARTS = (0.92, 0.84, 0.76, 0.68)
"""Of its size, to which a text that is wider than its column shrinks."""
_LEAST, _LEADING = 0.8, 1.5
"""How far a text shrinks further that stands on several lines, and from line to line."""
_NONE = QModelIndex()


@dataclass(frozen=True, slots=True)
class Column:
    """One column.

    Args:
        name: at its head.
        share: of the width, against the others.
        figures: its cells stand at the right.
    """

    name: str
    share: int
    figures: bool = False


@dataclass(frozen=True, slots=True)
class TableRow:
    """One row.

    Args:
        key: what it is.
        cells: one for each column.
        attend: it asks for something: a mark stands before it.
    """

    key: str
    cells: tuple[str, ...]
    attend: bool = False


@lru_cache(maxsize=2048)
def _font_for(words: str, face: Face, cap: float, room: int) -> QFont:
    """The font of a cell or head; words that are wider than their column are set smaller."""
    font = font_of(face, cap)
    for part in _PARTS:
        if not room or QFontMetricsF(font).horizontalAdvance(words) <= room:
            break
        font = font_of(face, cap * part)
    return font


class _Rows(QAbstractTableModel):
    """Rows as Qt asks for them."""

    def __init__(self, columns: Sequence[Column], ruler: Ruler) -> None:
        super().__init__()
        self.columns, self.rows = tuple(columns), tuple[TableRow, ...]()
        self.chosen: set[str] = set()
        self.rooms: tuple[int, ...] = ()
        """Width each column has for its words, in pixels."""
        self.cap = ruler.px(_TEXT_MM)
        """Height of a capital, in pixels."""

    def show(self, rows: Sequence[TableRow]) -> None:
        self.beginResetModel()
        self.rows = tuple(rows)
        self.endResetModel()

    @override
    def rowCount(self, parent: _Index = _NONE) -> int:
        return 0 if parent.isValid() else len(self.rows)

    @override
    def columnCount(self, parent: _Index = _NONE) -> int:
        return 0 if parent.isValid() else len(self.columns)

    @override
    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        words = self.words(self.rows[index.row()], index.column())
        if role == Qt.ItemDataRole.DisplayRole:
            return words
        if role == Qt.ItemDataRole.FontRole:
            return self.font(words, index.column())
        return None

    def font(self, words: str, column: int) -> QFont:
        """The font of the words of a cell."""
        room = self.rooms[column] if self.rooms else 0
        return _font_for(words, Face.CODE, self.cap, room)

    def words(self, row: TableRow, column: int) -> str:
        """What stands in a cell, in the language of now."""
        mark = "! " if row.attend and column == 0 else ""
        return f"{mark}{say(row.cells[column])}"

    @override
    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> object:
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return say(self.columns[section].name)
        if role == Qt.ItemDataRole.FontRole and self.rooms:
            words = say(self.columns[section].name)
            return _font_for(words, Face.VERB, self.cap * _HEAD, self.rooms[section])
        return None


class _Cells(QStyledItemDelegate):
    """Paints cells by hand: by way of a style sheet each takes several times as long."""

    def __init__(self, rows: _Rows, palette: Palette, parent: QWidget) -> None:
        super().__init__(parent)
        self._rows = rows
        self._grounds = QColor(palette.paper), QColor(palette.ink)
        self._inks = QColor(palette.ink), QColor(palette.on_dark)
        self._here = QPen(QColor(palette.act), 2)
        side = Qt.AlignmentFlag
        self._sides = tuple(
            int(side.AlignVCenter | (side.AlignRight if one.figures else side.AlignLeft))
            for one in rows.columns
        )

    @override
    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        box: QRect = option.rect
        state: QStyle.StateFlag = option.state
        row, column = self._rows.rows[index.row()], index.column()
        chosen = row.key in self._rows.chosen
        painter.fillRect(box, self._grounds[chosen])
        inner = box.adjusted(_MARGIN, 0, -_MARGIN, 0)
        words = self._rows.words(row, column)
        painter.setFont(self._rows.font(words, column))
        painter.setPen(self._inks[chosen])
        if not self._wrap(painter, words, inner):
            elided = painter.fontMetrics().elidedText(
                words, Qt.TextElideMode.ElideRight, inner.width()
            )
            painter.drawText(inner, self._sides[column], elided)
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(self._here)
            painter.drawRect(box.adjusted(1, 1, -2, -2))

    def _wrap(self, painter: QPainter, words: str, inner: QRect) -> bool:
        """Set words that are too long for their column in several lines, if they all fit then."""
        if painter.fontMetrics().horizontalAdvance(words) <= inner.width():
            return False
        cap, tall = self._rows.cap * _PARTS[-1], inner.height() - 2 * _MARGIN
        set_so = fit(words, Face.CODE, cap, inner.width(), tall, least=_LEAST, leading=_LEADING)
        if set_so.whole:
            top = inner.center().y() - set_so.height / 2
            draw(painter, set_so, inner.left(), top, painter.pen().color().name())
        return set_so.whole


class TouchTable(QTableView):
    """Rows to be touched.

    Args:
        palette: colours.
        columns: from left to right.
        several: whether more than one row may be chosen; a second touch lets a row go.

    Signals:
        touched: str, the key of the row.
    """

    touched = Signal(str)

    def __init__(
        self,
        palette: Palette,
        columns: Sequence[Column],
        *,
        several: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self._several = several
        self._rows = _Rows(columns, ruler)
        self.setModel(self._rows)
        self.setItemDelegate(_Cells(self._rows, palette, self))
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setShowGrid(True)
        self.setWordWrap(False)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(ruler.touch(_ROW_MM))
        head = self.horizontalHeader()
        head.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        head.setSectionsClickable(False)
        head.setHighlightSections(False)
        head.setFont(font_of(Face.VERB, ruler.px(3.0)))
        edge = palette.edge
        self.setStyleSheet(
            f"QTableView {{ background: {palette.ground}; border: 1px solid {edge};"
            f" color: {palette.ink}; gridline-color: {palette.quiet}; }}"
            f"QHeaderView::section {{ background: {palette.quiet}; color: {palette.ink};"
            f" border: none; padding: {round(ruler.px(1))}px; }}" + scroll_bar(palette, ruler)
        )
        self.clicked.connect(self._click)
        self.activated.connect(self._click)
        QScroller.grabGesture(self.viewport(), QScroller.ScrollerGestureType.TouchGesture)

    def show_rows(self, rows: Sequence[TableRow]) -> None:
        """Show these rows; chosen ones that are gone are let go. The same rows cost nothing."""
        if tuple(rows) == self.rows:
            return
        self._rows.chosen &= {row.key for row in rows}
        self._rows.show(rows)

    @property
    def rows(self) -> tuple[TableRow, ...]:
        """The rows as they stand."""
        return self._rows.rows

    @property
    def chosen(self) -> tuple[str, ...]:
        """Keys of the chosen rows, in the order they stand."""
        return tuple(row.key for row in self.rows if row.key in self._rows.chosen)

    def choose(self, *keys: str) -> None:
        """Choose rows, and bring the first into sight."""
        self._rows.chosen = set(keys)
        places = [place for place, row in enumerate(self.rows) if row.key in keys]
        if places:
            self.scrollTo(self._rows.index(places[0], 0))
        self.viewport().update()

    def touch(self, key: str) -> None:
        """Choose a row as a finger does."""
        if not self._several:
            self._rows.chosen = {key}
        else:
            self._rows.chosen ^= {key}
        self.viewport().update()
        self.touched.emit(key)

    @Slot(QModelIndex)
    def _click(self, index: QModelIndex) -> None:
        self.touch(self.rows[index.row()].key)

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.horizontalHeader().viewport().update()
            self.viewport().update()

    @override
    def resizeEvent(self, event: object) -> None:
        super().resizeEvent(event)  # type: ignore[arg-type]
        whole = sum(column.share for column in self._rows.columns)
        wide = self.viewport().width()
        widths = [wide * column.share // whole for column in self._rows.columns]
        self._rows.rooms = tuple(width - 2 * _MARGIN for width in widths)
        for place, width in enumerate(widths):
            self.setColumnWidth(place, width)
