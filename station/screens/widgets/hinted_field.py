"""A field that says, in the language shown now, what belongs into it; the hint shrinks to fit."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QFontMetricsF, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QStyle, QStyleOptionFrame, QWidget
from typing_extensions import override

from station.screens.theme import Face, Ruler, font_of
from station.screens.tongue import say

_MARGIN = 5
"""Pixels on each side of the text: three that Qt leaves free, two that the frame of the field in
front takes more than that of the others."""
_LEAST = 0.45
"""Smallest part of its size that a hint shrinks to."""


class HintedField(QLineEdit):
    """Shows its hint while it is empty.

    Args:
        hint: in English.
        mm: height of a capital of what is typed.
    """

    def __init__(self, hint: str, mm: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._cap, self._hint = Ruler.of(self.screen()).px(mm), hint
        self.setFont(font_of(Face.CODE, self._cap))
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.NoContextMenu)
        self.textChanged.connect(self._size)

    def set_hint(self, hint: str) -> None:
        """Ask for something else."""
        self._hint = hint
        self.setAccessibleName(say(hint))
        self.show_words(hint)

    def show_words(self, words: str) -> None:
        """Show other words than the hint, such as a refusal, until the next key."""
        self.setPlaceholderText(say(words))
        self._size()

    def show_hint(self) -> None:
        """Show the hint again."""
        if self.placeholderText() != say(self._hint):
            self.show_words(self._hint)

    def _size(self) -> None:
        """As large as what is typed; a hint that is wider than the field is smaller."""
        option = QStyleOptionFrame()
        self.initStyleOption(option)
        inner = self.style().subElementRect(QStyle.SubElement.SE_LineEditContents, option, self)
        room = inner.width() - 2 * _MARGIN
        cap = self._cap
        while not self.text() and cap > self._cap * _LEAST:
            if QFontMetricsF(font_of(Face.CODE, cap)).horizontalAdvance(
                self.placeholderText()
            ) <= max(room, 1):
                break
            cap *= 0.95
        font = font_of(Face.CODE, cap)
        if font != self.font():
            self.setFont(font)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._size()

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.set_hint(self._hint)
