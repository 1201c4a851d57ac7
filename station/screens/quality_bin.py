"""The reject bin: how many bags lie in it, counted against the record."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.core.reject_ledger import BinState
from station.screens.quality_host import Host
from station.screens.quality_sources import RejectsSource
from station.screens.quality_words import bin_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import ScanField, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.words import long_date


class BinPage(QWidget):
    """A count and the explanation of a difference.

    Signals:
        left: the count was entered or given up.
    """

    left = Signal()

    def __init__(
        self, host: Host, source: RejectsSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._host, self._source = host, source
        self.day: date = source.today
        self._state = BinState(0, None)
        self.head = Text(palette, "", Face.VERB, 5.2)
        self.said = Text(palette, "", Face.FIGURES, 9.0)
        self.pad = NumberPad(palette)
        self.why = ScanField(palette, "why it differs: scan or type")
        self.why.setMaxLength(200)
        self.back_button = TouchButton(palette, "BACK")
        self.enter_button = TouchButton(palette, "COUNTED", small="hold down", hold=True)
        self._compose()
        self.pad.changed.connect(lambda _: self._show())
        self.back_button.clicked.connect(self.left)
        self.enter_button.held.connect(self._enter)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in (self.back_button, self.enter_button):
            button.cap_px = ruler.px(5.0)
            button.setMinimumHeight(ruler.touch())
            row.addWidget(button, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        for part in (self.head, self.said, self.pad, self.why):
            whole.addWidget(part)
        whole.addStretch(1)
        whole.addLayout(row)

    def show_day(self, day: date, state: BinState) -> None:
        """Show what lies in the bin of a day."""
        self.day, self._state = day, state
        self._show()

    def _show(self) -> None:
        state, digits = self._state, self.pad.digits
        self.head.setText(f"{long_date(self.day)}: {bin_words(state)}")
        off = int(digits) - state.expected if digits else 0
        self.said.setText(f"counted {digits or '…'}{f', {off:+d}' if off else ''}")

    @Slot()
    def _enter(self) -> None:
        if not self.pad.digits:
            self._host.say("Key in how many bags lie in the bin.", refused=True)
            return
        counted, why, day, host = int(self.pad.digits), self.why.text(), self.day, self._host
        told = f"The bin of {day} is counted: {counted}."
        host.enter(lambda: (self._source.count(day, counted, why, host.who),), told)
