"""A page that gathers scans until something is made of them: bags, cases, units to be shipped."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text, Title
from station.screens.widgets.touch_button import TouchButton

LONGEST_SCAN = 200
MOST_ROWS = 40


class GatherPage(QWidget):
    """A title, what was gathered, a scan field, buttons; room for more at the right.

    Args:
        palette: colours.
        hint: of the scan field.
        do: what the last button says; it is strong once all is there.
        others: words of the other buttons.
        beside: part at the right; None for none.

    Signals:
        scanned: str, what was scanned or typed.
        touched: str, words of a button.
    """

    scanned = Signal(str)
    touched = Signal(str)

    def __init__(
        self,
        palette: Palette,
        hint: str,
        do: str,
        others: Sequence[str],
        beside: QWidget | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._palette = palette
        self.title = Title(palette, "")
        self.list = Page(palette)
        self.rows: tuple[str, ...] = ()
        self.scan = ScanField(palette, hint)
        self.scan.setMaxLength(LONGEST_SCAN)
        self.do_button = TouchButton(palette, do)
        self.buttons = {words: TouchButton(palette, words) for words in others}
        self._compose(beside)
        self.scan.returnPressed.connect(self._scanned)
        for words, button in (*self.buttons.items(), (do, self.do_button)):
            button.clicked.connect(lambda _=False, words=words: self.touched.emit(words))

    def _compose(self, beside: QWidget | None) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        left = QVBoxLayout()
        left.setSpacing(gap // 2)
        left.addWidget(self.title)
        left.addWidget(self.list, 1)
        top = QHBoxLayout()
        top.setSpacing(gap)
        top.addLayout(left, 6)
        if beside is not None:
            top.addWidget(beside, 5)
        row = QHBoxLayout()
        row.setSpacing(gap)
        row.addWidget(self.scan, 4)
        for button in (*self.buttons.values(), self.do_button):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch())
            row.addWidget(button, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(gap)
        whole.addLayout(top, 1)
        whole.addLayout(row)

    def show_gathered(self, title: str, rows: Sequence[str], *, ready: bool) -> None:
        """Show what was gathered; the newest rows where they are many.

        Args:
            title: how much it is.
            rows: a line each.
            ready: the last button may be touched.
        """
        self.title.setText(title)
        self.do_button.setEnabled(ready)
        self.do_button.strong = ready
        self.do_button.update()
        if tuple(rows) == self.rows:
            return
        self.rows = tuple(rows)
        self.list.clear()
        for words in self.rows[-MOST_ROWS:]:
            self.list.column.addWidget(Text(self._palette, words, Face.TEXT, 4.6))
        self.list.column.addStretch(1)

    @Slot()
    def _scanned(self) -> None:
        text = self.scan.text().strip()
        self.scan.clear()
        if text:
            self.scanned.emit(text)
