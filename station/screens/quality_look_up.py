"""A complaint: from a label, or a lot and a time, to the bag, its neighbours and its checks."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QWidget

from station.core.complaint import Complaint
from station.screens.quality_host import Host
from station.screens.quality_sources import InboxSource
from station.screens.quality_words import around_words, bag_row, complaint_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TouchTable

_COLUMNS = (
    Column("time", 7),
    Column("serial", 12),
    Column("net", 5, figures=True),
    Column("now", 6),
    Column("label", 6),
)


class LookUpPanel(QWidget):
    """Two fields, the bag among its neighbours, and what was checked around it."""

    def __init__(
        self, host: Host, source: InboxSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._host, self._source = host, source
        self.found: Complaint | None = None
        self.scan = ScanField(palette, "scan a label or lot")
        self.scan.replaced = True  # what was not found stays to be mended
        self.scan.setMaxLength(400)
        self.time = ScanField(palette, "time, with a lot")
        self.go_button = TouchButton(palette, "LOOK UP")
        self.bag = Text(palette, "", Face.CODE, 3.4)
        self.around = Text(palette, "", Face.CODE, 3.0)
        self.side = Page(palette)
        self.table = TouchTable(palette, _COLUMNS)
        self._compose()
        self.scan.returnPressed.connect(self._ask)
        self.time.returnPressed.connect(self._ask)
        self.go_button.clicked.connect(self._ask)
        self.table.touched.connect(self.show_bag)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        self.go_button.cap_px = ruler.px(4.6)
        self.side.column.addWidget(self.bag)
        self.side.column.addWidget(self.around)
        self.side.column.addStretch(1)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(ruler.touch(5))
        grid.setVerticalSpacing(round(ruler.px(3)))
        grid.addWidget(self.scan, 0, 0, 1, 2)
        grid.addWidget(self.time, 0, 2)
        grid.addWidget(self.go_button, 0, 3)
        grid.addWidget(self.table, 1, 0, 1, 2)
        grid.addWidget(self.side, 1, 2, 1, 2)
        for column, share in enumerate((3, 3, 4, 2)):
            grid.setColumnStretch(column, share)
        grid.setRowStretch(1, 1)

    def look(self) -> None:
        """Wait for a scan."""
        self.scan.setFocus()

    def recorded(self) -> None:
        """Nothing is entered here."""

    @Slot(str)
    def show_bag(self, serial: str) -> None:
        """Look a bag up by its serial."""
        self._host.ask(lambda: self._source.complaint(serial), self._show)

    @Slot()
    def _ask(self) -> None:
        text, at = self.scan.text().strip(), self.time.text().strip()
        if not text:
            self._host.say("Scan a label, or type a serial or a blend lot.", refused=True)
            return
        self._host.say("Looking …")
        self._host.ask(lambda: self._source.complaint(text, at), self._show)

    def _show(self, found: Complaint) -> None:
        self.found = found
        self.scan.clear()
        self._host.say(f"Bag {found.bag.serial} and {len(found.neighbours)} around it")
        self.bag.setText(complaint_words(found))
        self.around.setText(around_words(found, self._source.zone))
        self.table.show_rows([bag_row(one, found.bag.serial) for one in found.in_order])
        self.table.choose(found.bag.serial)
