"""The lots on the line: load, finish, declare empty, return, waste; held lots are struck."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from station.core.line_lots import LotMove, Move
from station.core.lots import LotError, LotStatus
from station.core.mass import Mass, Unit
from station.screens.lots_receive import LONGEST_SCAN
from station.screens.lots_source import LotsSource
from station.screens.lots_words import bar_of, chosen_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.lot_bars import LotBars
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import ScanField, Text
from station.screens.widgets.touch_button import TouchButton

CLEAN = "LOAD CLEAN"
_BUTTONS = (
    ("LOAD", "both on the label"),
    (CLEAN, "bin and belt empty"),
    ("FINISHING", "last of it"),
    ("EMPTY", "none left on line"),
    ("RETURN", "weigh the rest"),
    ("WASTE", "weigh it"),
    ("HOLD", "hold the button"),
)
_MOVES = {
    "FINISHING": Move.FINISHING,
    "EMPTY": Move.EMPTY,
    "RETURN": Move.RETURNED,
    "WASTE": Move.WASTED,
}


class LineLotsPage(QWidget):
    """Bars, a scan field, a number pad for the mass, and what can be done with the chosen lot.

    Args:
        palette: colours.
        source: knows the line.

    Signals:
        moved: tuple of LotMove, made together.
        hold: str, lot to be held.
        refused: str, why nothing was asked of the line.
    """

    moved = Signal(object)
    hold = Signal(str)
    refused = Signal(str)

    def __init__(self, palette: Palette, source: LotsSource, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._source = source
        self._rework: LotMove | None = None
        self.chosen = ""
        """Code of the lot the buttons are about."""
        self.bars = LotBars(palette)
        self.scan = ScanField(palette, "scan a lot")
        self.scan.setMaxLength(LONGEST_SCAN)
        self.words = Text(palette, "", Face.TEXT, 4.6)
        self.pad = NumberPad(palette)
        self.mass_button = TouchButton(palette, "kg")
        self.pages = QStackedWidget()
        self.buttons = {
            words: TouchButton(palette, words, small=small, hold=words == "HOLD")
            for words, small in _BUTTONS
        }
        self._compose()
        self.bars.touched.connect(self.choose)
        self.scan.returnPressed.connect(self._scanned)
        self.pad.changed.connect(self.show_mass)
        self.mass_button.toggled.connect(self._show_pad)
        for words, button in self.buttons.items():
            signal = button.held if words == "HOLD" else button.clicked
            signal.connect(lambda _=False, words=words: self._act(words))
        self.show_mass()
        self.refresh()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        self.bars.set_unit(ruler.px(1))
        weigh = QWidget()
        column = QVBoxLayout(weigh)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.pad)
        column.addStretch(1)
        for page in (self.bars, weigh):
            self.pages.addWidget(page)
        choice = QHBoxLayout()
        choice.setSpacing(gap // 2)
        choice.addWidget(self.scan, 4)
        choice.addWidget(self.words, 4)
        choice.addWidget(self.mass_button, 2)
        row = QHBoxLayout()
        row.setSpacing(gap // 2)
        for button in self.buttons.values():
            row.addWidget(button, 1)
        for button in (self.mass_button, *self.buttons.values()):
            button.cap_px = ruler.px(4.0)
            button.setMinimumHeight(ruler.touch())
        self.mass_button.setCheckable(True)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(gap // 2)
        whole.addWidget(self.pages, 1)
        whole.addLayout(choice)
        whole.addLayout(row)

    @property
    def quantity(self) -> Mass | None:
        """The mass on the pad, in tenths of a kilogram; None where none was typed."""
        digits = self.pad.digits
        if not digits:
            return None
        tenths = digits.zfill(2)
        return Mass.parse(f"{tenths[:-1]}.{tenths[-1]} {Unit.KILOGRAM}")

    @Slot()
    def show_mass(self) -> None:
        """Show the mass on the pad."""
        mass = self.quantity
        self.mass_button.setText("kg" if mass is None else str(mass))
        self.mass_button.small = "not weighed" if mass is None else "touch to change"
        self.mass_button.update()

    @Slot(bool)
    def _show_pad(self, wanted: bool) -> None:
        self.pages.setCurrentIndex(int(wanted))

    def begin(self) -> None:
        """Forget the mass; what was typed for one lot is not another's."""
        self.pad.digits = ""
        self.mass_button.setChecked(False)
        self.show_mass()
        self.refresh()

    @Slot(str)
    def choose(self, code: str) -> None:
        """Let the buttons be about a lot, or about the content of a bag."""
        self.chosen = code
        unknown = code and self._source.lot(code) is None
        self._rework = self._source.rework(code, None) if unknown else None
        self.refresh()

    def refresh(self) -> None:
        """Show the line as it is now."""
        rows = self._source.rows()
        name = self._source.name
        self.bars.set(tuple(bar_of(row, name, self.chosen) for row in rows))
        lot = self._source.lot(self.chosen)
        words = chosen_words(lot, self._rework, self.chosen, name)
        if words != self.words.text():
            self.words.setText(words)
        on_line = any(row.lot == self.chosen for row in rows)
        for word, button in self.buttons.items():
            button.setEnabled(on_line if word in _MOVES else lot is not None)
        held = lot is not None and lot.status is LotStatus.HELD
        button = self.buttons["HOLD"]
        button.setText("RELEASE" if held else "HOLD")
        button.small = "QA holds the button" if held else "hold the button"
        button.update()
        if self._rework is not None:
            self.buttons["LOAD"].setEnabled(True)

    @Slot()
    def _scanned(self) -> None:
        text = self.scan.text().strip()
        self.scan.clear()
        if text:
            self.choose(self._code_in(text))

    def _code_in(self, text: str) -> str:
        """The lot a case label names, or the code as it was typed."""
        code = text.upper()
        if self._source.lot(code) is None:
            with suppress(LotError):
                code = self._source.scanned(text).code or code
        return code

    def _act(self, words: str) -> None:
        if words == "HOLD":
            self.hold.emit(self.chosen)
            return
        try:
            self.moved.emit(self._moves(words))
        except ValueError as why:
            self.refused.emit(str(why))

    def _moves(self, words: str) -> tuple[LotMove, ...]:
        lot = self._source.lot(self.chosen)
        component = "" if lot is None else lot.component
        if words in _MOVES:
            move = _MOVES[words]
            weighed = self.quantity if move in (Move.RETURNED, Move.WASTED) else None
            return (LotMove(move, self.chosen, component, weighed),)
        if self._rework is not None:
            return (replace(self._rework, quantity=self.quantity or self._rework.quantity),)
        load = LotMove(Move.LOADED, self.chosen, component, self.quantity)
        if words != CLEAN:
            return (load,)
        old = (
            row.lot
            for row in self._source.rows()
            if row.component == component and row.lot != self.chosen
        )
        gone = (LotMove(Move.EMPTY, code, component, note="clean break") for code in old)
        return (*gone, load)
