"""Pieces of a lead's sheet: plain text in the station's type, a scrolling page, a scan field."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QScroller,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from drivers.wedge import Key, Typed, WedgeRules, judge_keys
from station.screens.theme import Face, Palette, Ruler, font_of
from station.screens.tongue import say
from station.screens.widgets.hinted_field import HintedField
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.scroll_bar import scroll_bar

_MOST_KEYS = 400
_WEDGE = WedgeRules(shortest=2)
TEXT_MM = 4.6
"""Read at 0.7 m by who stands at the screen."""
_TITLE_MM = 5.2


class Text(QLabel):
    """Plain text that wraps, in the language shown now; markup in it is shown as it is written."""

    def __init__(
        self,
        palette: Palette,
        words: str = "",
        face: Face = Face.TEXT,
        mm: float = TEXT_MM,
        colour: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._words = ""
        self._face = face
        self._mm = mm
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setStyleSheet(f"color: {colour or palette.ink}; background: transparent;")
        self.setFont(font_of(face, Ruler.of(self.screen()).px(mm)))
        self.setText(words)

    @override
    def setText(self, words: str) -> None:
        self._words = words
        super().setText(say(words))

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            super().setText(say(self._words))


class Message(Text):
    """What became of something, in the colour of the stop where it was refused."""

    def __init__(self, palette: Palette, mm: float, parent: QWidget | None = None) -> None:
        super().__init__(palette, "", Face.VERB, mm, parent=parent)
        self._colours = palette

    def say(self, words: str, *, refused: bool = False) -> None:
        """Say it instead of what was said before."""
        colour = self._colours.stop if refused else self._colours.ink
        self.setStyleSheet(f"color: {colour}; background: transparent;")
        self.setText(words)


class Title(Text):
    """A heading on one line, so that the height of its page does not depend on its width.

    Words that are wider than their place are painted smaller.
    """

    def __init__(self, palette: Palette, words: str = "", parent: QWidget | None = None) -> None:
        super().__init__(palette, words, Face.VERB, _TITLE_MM, parent=parent)
        self._colour = palette.ink
        self.setWordWrap(False)

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(0, super().minimumSizeHint().height())

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        cap = Ruler.of(self.screen()).px(_TITLE_MM)
        fitted = fit(self.text(), Face.VERB, cap, self.width())
        painter = QPainter(self)
        draw(painter, fitted, 0, (self.height() - fitted.cap) / 2, self._colour)
        painter.end()


class Page(QScrollArea):
    """A column of parts that scrolls by touch when it is higher than its place."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setStyleSheet(
            f"QScrollArea {{ background: {palette.ground}; }}" + scroll_bar(palette, ruler)
        )
        self.body = QWidget()
        self.body.setStyleSheet(f"background: {palette.ground};")
        self.column = QVBoxLayout(self.body)
        self.column.setContentsMargins(0, 0, round(ruler.px(2)), 0)
        self.column.setSpacing(round(ruler.px(3)))
        self.setWidget(self.body)
        QScroller.grabGesture(self.viewport(), QScroller.ScrollerGestureType.TouchGesture)

    @classmethod
    def around(cls, palette: Palette, *parts: QWidget, gap: float = 0.0) -> Page:
        """Return parts that may be many, under each other: they scroll, and keep the rest whole.

        Args:
            palette: colours.
            parts: from the top.
            gap: pixels between them; 0 for as much as a page has.
        """
        page = cls(palette)
        if gap:
            page.column.setSpacing(round(gap))
        for part in parts:
            page.column.addWidget(part)
        page.column.addStretch(1)
        page.setMinimumHeight(Ruler.of(page.screen()).touch())
        return page

    def clear(self) -> None:
        """Take every part off the page."""
        while self.column.count():
            item = self.column.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()


GS = "\x1d"
"""The separator of element strings; a scanner that types sends it as Ctrl and ]."""
_GS1 = ("]C1", "]d2", "]e0", "]Q3")
"""Symbology identifiers of GS1 element strings (ISO/IEC 15424, GS1 General Specifications)."""
_COMMANDS = (
    Qt.KeyboardModifier.ControlModifier
    | Qt.KeyboardModifier.AltModifier
    | Qt.KeyboardModifier.MetaModifier
)


class ScanField(HintedField):
    """Takes a code from a scanner or a keyboard; Enter ends it.

    A scanner that types like a keyboard is told from a person by its pace. What it types must be
    printable; a code that presses control or alternate keys does nothing, wherever it comes from,
    and a fast one is dropped whole. The reason stands in the field until the next key.
    """

    identified = False
    """Whether whoever reads the field wants the symbology identifier of every scan."""
    replaced = False
    """Whether what comes next takes the place of what stands there; else it goes behind."""
    _touched = False

    def __init__(
        self,
        palette: Palette,
        hint: str,
        parent: QWidget | None = None,
        clock: Callable[[], int] = time.monotonic_ns,
    ) -> None:
        super().__init__(hint, 6.4, parent)
        ruler = Ruler.of(self.screen())
        self._side = ruler.touch()
        self._clock = clock
        self._keys: list[Key] = []
        self.setMaxLength(40)
        self.setMinimumHeight(self._side)
        self.setStyleSheet(
            f"QLineEdit {{ color: {palette.ink}; background: {palette.paper};"
            f" placeholder-text-color: {palette.muted};"
            f" border: 2px solid {palette.ink}; padding: 0 {round(ruler.px(4))}px; }}"
            f"QLineEdit:focus {{ border: 4px solid {palette.act}; }}"
        )
        self.set_hint(hint)

    def take(self, identifier: str, data: str) -> None:
        """Take a scan of a scanner that does not type, as if it were typed and ended.

        Args:
            identifier: symbology identifier; may be empty.
            data: of the symbol.
        """
        text = identifier + data if self.identified or identifier in _GS1 else data
        if len(text) > self.maxLength():
            self._refuse(f"{len(text)} characters, at most {self.maxLength()}")
            return
        self.setText(text)
        self.returnPressed.emit()

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        self.show_hint()
        ends = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        separates = event.text() == GS
        commands = bool(event.modifiers() & _COMMANDS) and not separates
        typed = "\n" if ends else " " if separates else event.text()
        if typed or commands:
            self._keys = [*self._keys[-_MOST_KEYS:], Key(typed, self._clock(), commands)]
        if separates:
            self.insert(GS)
        elif ends:
            judged = judge_keys(tuple(self._keys), _WEDGE)
            typed_signs = len(self._keys) - 1
            self._keys = []
            if typed_signs > self.maxLength() <= len(self.text()):
                self._refuse(f"{typed_signs} characters, at most {self.maxLength()}")  # never cut
            elif judged.typed is Typed.REFUSED:
                self._refuse(judged.why)
            else:
                super().keyPressEvent(event)
                if self.replaced:
                    self.selectAll()
        elif not commands:
            super().keyPressEvent(event)

    @override
    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._touched = event.reason() is Qt.FocusReason.MouseFocusReason

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        super().mouseReleaseEvent(event)
        if self._touched and self.replaced:
            self.selectAll()
        self._touched = False

    def _refuse(self, why: str) -> None:
        self.clear()
        self.show_words(f"refused: {why}")

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(self._side * 2, self._side)


def side_by_side(*parts: QWidget) -> QWidget:
    """Return a row of parts; the last one takes what room is left."""
    row = QWidget()
    line = QHBoxLayout(row)
    line.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        line.addWidget(part)
    line.setStretch(len(parts) - 1, 1)
    return row
