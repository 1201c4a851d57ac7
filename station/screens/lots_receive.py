"""Receiving: the case label by scan, what it does not say by touch."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from station.core.lots import LotError
from station.core.mass import Mass, Unit
from station.core.receiving import Notes, merge
from station.screens.lots_source import LotsSource
from station.screens.lots_words import notes_words
from station.screens.theme import KEY_MM, Face, Palette, Ruler
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Page, ScanField, Text, Title
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.words import short_date, with_year

LONGEST_SCAN = 200
_DAY, _TYPED = "day, month", "typed below"
WARM = "it came too warm, or damaged: QA decides"
"""Why a lot is held from the start with one touch."""


class ReceivePage(QWidget):
    """Scan field and pad on the right, components and suppliers on the left.

    Args:
        palette: colours.
        source: reads scans and knows who delivers.

    Signals:
        taken: Notes and str: a delivery, and why it is held; empty where it is free.
        refused: str, why a scan was not taken.
        noted: something was taken: what was refused before is over.
    """

    taken = Signal(object, str)
    refused = Signal(str)
    noted = Signal()

    def __init__(self, palette: Palette, source: LotsSource, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._source = source
        self.notes = Notes()
        self.scan = ScanField(palette, "scan the case label")
        self.scan.setMaxLength(LONGEST_SCAN)
        components = [Tile(code, name) for code, name in source.components]
        suppliers = [Tile(name, name) for name in source.suppliers]
        self.components = Tiles(palette, components, columns=2)
        self.suppliers = Tiles(palette, suppliers, columns=2)
        self.told = Text(palette, "", Face.TEXT, 3.6)
        self.pad = NumberPad(palette)
        self.mass_button = TouchButton(palette, "kg", small="tenths", least_mm=KEY_MM)
        self.warmth_button = TouchButton(palette, "°C", small="tenths", least_mm=KEY_MM)
        self.harvest_button = TouchButton(palette, "CUT ON", small=_DAY, least_mm=KEY_MM)
        self.packed_button = TouchButton(palette, "PACKED ON", small=_DAY, least_mm=KEY_MM)
        self.code_button = TouchButton(palette, "LOT", small=_TYPED, least_mm=KEY_MM)
        self.paper_button = TouchButton(palette, "PAPER", small=_TYPED, least_mm=KEY_MM)
        self.take_button = TouchButton(palette, "RECEIVE")
        self.hold_button = TouchButton(palette, "HOLD IT", small="warm or damaged")
        self.clear_button = TouchButton(palette, "START OVER")
        self._compose(palette)
        self._connect()
        self.show_notes()

    def _compose(self, palette: Palette) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        page = Page(palette)
        for title, part in (("What", self.components), ("From", self.suppliers)):
            page.column.addWidget(Title(palette, title))
            page.column.addWidget(part)
        page.column.addStretch(1)
        entries = QGridLayout()
        entries.setSpacing(gap // 2)
        keys = (
            (self.mass_button, self.harvest_button, self.code_button),
            (self.warmth_button, self.packed_button, self.paper_button),
        )
        for line, row in enumerate(keys):
            for place, button in enumerate(row):
                button.cap_px = ruler.px(4.0)
                entries.addWidget(button, line, place)
        upper = QHBoxLayout()
        upper.addWidget(self.told, 3)
        upper.addLayout(entries, 5)
        right = QVBoxLayout()
        right.setSpacing(gap // 2)
        right.addLayout(upper)
        right.addStretch(1)
        right.addWidget(self.pad)
        top = QHBoxLayout()
        top.setSpacing(gap)
        top.addWidget(page, 6)
        top.addLayout(right, 4)
        foot = QHBoxLayout()
        foot.setSpacing(gap)
        foot.addWidget(self.scan, 4)
        for button in (self.clear_button, self.hold_button, self.take_button):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch())
            foot.addWidget(button, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(gap)
        whole.addLayout(top, 1)
        whole.addLayout(foot)

    def _connect(self) -> None:
        self.pad.changed.connect(self._echo)
        self.scan.returnPressed.connect(self._scanned)
        self.components.touched.connect(lambda code: self._set(component=code))
        self.suppliers.touched.connect(lambda name: self._set(supplier=name))
        self.mass_button.clicked.connect(self._weighed)
        self.warmth_button.clicked.connect(self._measured)
        self.harvest_button.clicked.connect(lambda: self._dated("harvested"))
        self.packed_button.clicked.connect(lambda: self._dated("packed"))
        self.code_button.clicked.connect(lambda: self._typed("code"))
        self.paper_button.clicked.connect(lambda: self._typed("reference"))
        self.take_button.clicked.connect(lambda: self.taken.emit(self.notes, ""))
        self.hold_button.clicked.connect(lambda: self.taken.emit(self.notes, WARM))
        self.clear_button.clicked.connect(self.begin)

    @Slot()
    def begin(self) -> None:
        """Forget what was noted."""
        self.notes = Notes()
        self.pad.digits = ""
        self.show_notes()
        self.scan.setFocus()

    def show_notes(self) -> None:
        """Show what is noted so far."""
        notes = self.notes
        self.components.check([notes.component or ""])
        self.suppliers.check([notes.supplier or ""])
        self.told.setText(notes_words(notes))
        ready = notes.component is not None and notes.supplier is not None
        for button in (self.take_button, self.hold_button):
            button.setEnabled(ready)
        self.take_button.strong = ready
        self.take_button.update()

    @Slot(str)
    def _echo(self, digits: str) -> None:
        """Show on the keys what the digits so far would be."""
        typed = f"{Decimal(digits).scaleb(-1)}" if digits else "tenths"
        day = self._source.day(digits)
        dated = _DAY if day is None else with_year(day, short_date(day))
        for button, words in (
            (self.mass_button, typed),
            (self.warmth_button, typed),
            (self.harvest_button, dated),
            (self.packed_button, dated),
        ):
            button.small = words
            button.update()

    def _set(self, **changes: object) -> None:
        self._echo(self.pad.digits)
        self.notes = replace(self.notes, **changes)  # type: ignore[arg-type]  # fields by name
        self.show_notes()
        self.noted.emit()

    @Slot()
    def _scanned(self) -> None:
        text = self.scan.text().strip()
        self.scan.clear()
        if not text:
            return
        try:
            self.notes = merge(self.notes, self._source.scanned(text))
        except LotError as why:
            self.refused.emit(str(why))
            return
        self.show_notes()
        self.noted.emit()

    @Slot()
    def _weighed(self) -> None:
        digits, self.pad.digits = self.pad.digits, ""
        mass = Mass(Decimal(digits).scaleb(-1), Unit.KILOGRAM) if digits else None
        self._set(quantity=mass)

    def _dated(self, name: str) -> None:
        """Take the digits as a day and its month."""
        digits, self.pad.digits = self.pad.digits, ""
        day = self._source.day(digits)
        self._set(**{name: day})
        if digits and day is None:
            self.refused.emit(f"{digits} is no day: give day and month, like 2411 for 24 November")

    def _typed(self, name: str) -> None:
        """Take what is typed in the scan field as it stands."""
        text = self.scan.text().strip()
        self.scan.clear()
        self._set(**{name: text or None})

    @Slot()
    def _measured(self) -> None:
        digits, self.pad.digits = self.pad.digits, ""
        self._set(temperature=Decimal(digits).scaleb(-1) if digits else None)
