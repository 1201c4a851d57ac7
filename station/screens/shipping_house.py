"""What stands in the house and what left, to be opened, labelled again or undone."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.core.shipping_lines import ShipmentLine, UnitLine
from station.screens.shipping_words import shipment_row, unit_row, unit_state
from station.screens.theme import Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Title
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

UNDO, BACK, AGAIN = "UNDO", "CAME BACK", "PRINT AGAIN"
_MOST = 30
_BUTTONS = ((AGAIN, "a numbered copy"), (BACK, "hold the button"), (UNDO, "hold the button"))


class HousePage(QWidget):
    """Units and shipments as rows to touch, and what may be done with the chosen one.

    Signals:
        scanned: str, what was scanned.
        asked: str and str: what is to be done, with which unit or shipment.
    """

    scanned = Signal(str)
    asked = Signal(str, str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette = palette
        self.chosen = ""
        """SSCC, or number of a shipment."""
        self._shipments: frozenset[str] = frozenset()
        self._units: frozenset[str] = frozenset()
        self.page = Page(palette)
        self.rows: list[Tiles] = []
        self.scan = ScanField(palette, "scan a case or pallet")
        self.buttons = {
            words: TouchButton(palette, words, small=small, hold=words != AGAIN)
            for words, small in _BUTTONS
        }
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        row = QHBoxLayout()
        row.setSpacing(gap)
        row.addWidget(self.scan, 4)
        for words, button in self.buttons.items():
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch())
            signal = button.clicked if words == AGAIN else button.held
            signal.connect(lambda _=False, words=words: self.asked.emit(words, self.chosen))
            row.addWidget(button, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(gap)
        whole.addWidget(self.page, 1)
        whole.addLayout(row)
        self.scan.returnPressed.connect(self._scanned)
        self.show_all((), ())

    def show_all(self, units: Sequence[UnitLine], gone: Sequence[ShipmentLine]) -> None:
        """Show what stands and what left."""
        self._units = frozenset(one.sscc for one in units)
        self._shipments = frozenset(one.number for one in gone if one.gone)
        self.page.clear()
        self.rows = []
        newest = sorted(units, key=lambda one: one.at, reverse=True)
        for title, tiles in (
            (
                f"{len(units)} cases and pallets stand here",
                [Tile(one.sscc, unit_row(one), unit_state(one)) for one in newest[:_MOST]],
            ),
            ("Shipments", [Tile(one.number, shipment_row(one)) for one in gone]),
        ):
            if not tiles:
                continue
            self.page.column.addWidget(Title(self._palette, title))
            rows = Tiles(self._palette, tiles, columns=1)
            rows.touched.connect(self.choose)
            self.rows.append(rows)
            self.page.column.addWidget(rows)
        if not self.rows:
            self.page.column.addWidget(Title(self._palette, "No case stands here"))
        self.page.column.addStretch(1)
        self.choose(self.chosen if self.chosen in self._units | self._shipments else "")

    @Slot(str)
    def choose(self, key: str) -> None:
        """Let the buttons be about a unit or a shipment."""
        self.chosen = key
        for rows in self.rows:
            rows.check([key])
        self.buttons[AGAIN].setEnabled(key in self._units)
        self.buttons[UNDO].setEnabled(key in self._units | self._shipments)
        self.buttons[BACK].setEnabled(key in self._shipments)

    @Slot()
    def _scanned(self) -> None:
        text = self.scan.text().strip()
        self.scan.clear()
        if text:
            self.scanned.emit(text)
