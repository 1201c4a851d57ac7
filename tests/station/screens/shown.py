"""Finds every text that a page shows, and those that do not fit, state after state."""

import re
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QLabel,
    QLineEdit,
    QStyle,
    QStyleOptionFrame,
    QTableView,
    QWidget,
)

from station.screens.tongue import say
from station.screens.widgets import lettering
from station.screens.widgets.chart import Chart
from station.screens.widgets.lettering import Fitted
from station.screens.widgets.sheet import Page, Title
from station.screens.widgets.touch_button import TouchButton

_TAGS = re.compile("<[^>]*>|&nbsp;")
_DRAWERS = ("draw", "draw_centred", "draw_right")


class Shown:
    """Takes the place of the camera of the gallery.

    Args:
        monkeypatch: undoes the listening to painters.
        sizes: a page must keep to one of these; any is allowed where there are none.

    Attributes:
        texts: by text, the first state that shows it.
        cut: texts that do not lie in their place, each with its state.
    """

    def __init__(
        self, monkeypatch: pytest.MonkeyPatch, sizes: tuple[tuple[int, int], ...] = ()
    ) -> None:
        self._sizes = sizes
        self.texts: dict[str, str] = {}
        self.cut: dict[str, str] = {}
        self._state = ""
        self._painted: list[Fitted] = []
        for name in _DRAWERS:
            drawer = getattr(lettering, name)
            for module in tuple(sys.modules.values()):
                if getattr(module, name, None) is drawer:
                    monkeypatch.setattr(module, name, self._noting(drawer))

    def _noting(self, drawer: Callable[..., None]) -> Callable[..., None]:
        def note(painter: object, fitted: Fitted, *rest: object) -> None:
            self._painted.append(fitted)
            drawer(painter, fitted, *rest)

        return note

    def __call__(self, widget: QWidget, path: Path) -> None:
        """Look at a state that is ready."""
        self._state = path.stem
        for _ in range(3):  # a page settles its layout in steps
            QApplication.processEvents()
            QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        if self._sizes and widget.size().toTuple() not in self._sizes:
            self._cut(f"the page needs {widget.size().toTuple()}")
        self._painted.clear()
        widget.grab()
        for fitted in self._painted:
            text = " ".join(fitted.lines)
            self._see(text)
            if not fitted.whole:
                self._cut(text)
        for one in (widget, *widget.findChildren(QWidget)):
            if one.isVisibleTo(widget):
                if isinstance(one, Page) and one.body.width() > one.viewport().width():
                    self._cut("what stands on a page that scrolls is wider than the page")
                if isinstance(one, QTableView):
                    for text in _narrow(one):
                        self._cut(text)
                for text in _texts(one):
                    self._see(text)
                    if isinstance(one, QLabel | QLineEdit) and not _fits(one):
                        self._cut(text)

    def _see(self, text: str) -> None:
        for line in _TAGS.sub(" ", text).split("\n"):
            self.texts.setdefault(line.strip(), self._state)

    def _cut(self, text: str) -> None:
        self.cut.setdefault(text, self._state)


def _texts(widget: QWidget) -> Iterator[str]:
    if isinstance(widget, QLabel):
        yield widget.text()
    elif isinstance(widget, TouchButton):
        yield say(widget.text())
        yield say(widget.small)
    elif isinstance(widget, QAbstractButton):
        yield widget.text()
    elif isinstance(widget, QLineEdit):
        yield "" if widget.text() else widget.placeholderText()
    elif isinstance(widget, Chart):
        for side in ("bottom", "left"):
            axis = widget.view.getAxis(side)
            yield axis.labelText
            for level in axis._tickLevels or ():
                yield from (str(words) for _, words in level)
    elif isinstance(widget, QTableView):
        model = widget.model()
        for column in range(model.columnCount()):
            yield model.headerData(column, Qt.Orientation.Horizontal) or ""
            for row in range(model.rowCount()):
                yield str(model.data(model.index(row, column)) or "")


def _narrow(table: QTableView) -> Iterator[str]:
    """Heads and cells that are wider than their column."""
    model = table.model()
    for column in range(model.columnCount()):
        room = table.columnWidth(column) - 6
        words = str(model.headerData(column, Qt.Orientation.Horizontal) or "")
        font = model.headerData(column, Qt.Orientation.Horizontal, Qt.ItemDataRole.FontRole)
        if QFontMetricsF(font).horizontalAdvance(words) > room:
            yield words
        for row in range(model.rowCount()):
            index = model.index(row, column)
            words = str(model.data(index) or "")
            font = model.data(index, Qt.ItemDataRole.FontRole)
            if QFontMetricsF(font).horizontalAdvance(words) > room:
                yield words


def _fits(one: QLabel | QLineEdit) -> bool:
    """Whether its words lie in it; a page that scrolls gives each as much height as it wants."""
    if isinstance(one, QLineEdit):
        words = "" if one.text() else one.placeholderText()
        option = QStyleOptionFrame()
        one.initStyleOption(option)
        inner = one.style().subElementRect(QStyle.SubElement.SE_LineEditContents, option, one)
        return one.fontMetrics().horizontalAdvance(words) <= inner.width() - 4
    if isinstance(one, Title) or not one.text() or Qt.TextFormat.RichText is one.textFormat():
        return True
    if not one.wordWrap():
        return one.sizeHint().width() <= one.width()
    flags = Qt.TextFlag.TextWordWrap | one.alignment()
    need = one.fontMetrics().boundingRect(0, 0, one.width(), 10_000, flags, one.text())
    return need.height() <= one.height() + 2 and need.width() <= one.width()
