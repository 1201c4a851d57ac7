"""The ledger of a day's rejects: filters, one bag in full, and the way to a decision."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from station.core.complaint import Complaint
from station.core.reject_ledger import BinState, LedgerRow
from station.screens.quality_bin import BinPage
from station.screens.quality_decide import DecidePage
from station.screens.quality_host import Host
from station.screens.quality_sources import InboxSource, RejectsSource
from station.screens.quality_words import (
    bin_words,
    neighbours_words,
    reject_filters,
    reject_row,
    reject_words,
    with_gone,
)
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TouchTable
from station.screens.words import narrow_date

_COLUMNS = (
    Column("time", 2),
    Column("serial", 5),
    Column("net", 3, figures=True),
    Column("why", 4),
    Column("now", 3),
)
_DAY = timedelta(days=1)
_ALL = "all"


class RejectsPanel(QWidget):
    """Four pages: the list, the filters, the decision, the bin."""

    def __init__(
        self,
        host: Host,
        source: RejectsSource,
        look_up: InboxSource,
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._host, self._source, self._look_up = host, source, look_up
        self._palette = palette
        self.day: date = source.today
        self.rows: tuple[LedgerRow, ...] = ()
        self.chosen: dict[str, str] = {}
        """Filters that are set: dimension and value."""
        self.only_open = False
        self._wanted = ""
        self.head = Text(palette, "", Face.VERB, 4.8)
        self.scan = ScanField(palette, "scan a ticket or label")
        self.scan.setMaxLength(120)
        self.table = TouchTable(palette, _COLUMNS, several=True)
        self.detail = Page(palette)
        self.words = Text(palette, "", Face.CODE, 3.4)
        self.near = Text(palette, "", Face.CODE, 3.0)
        self.bin_state = Text(palette, "", Face.TEXT, 3.6)
        self.before_button = TouchButton(palette, "◀", small="day")
        self.after_button = TouchButton(palette, "▶", small="day")
        self.filter_button = TouchButton(palette, "FILTER")
        self.open_button = TouchButton(palette, "OPEN ONLY")
        self.open_button.setCheckable(True)
        self.bin_button = TouchButton(palette, "BIN")
        self.decide_button = TouchButton(palette, "DECIDE")
        self.decide = DecidePage(host, source, palette)
        self.bin = BinPage(host, source, palette)
        self.filters = Page(palette)
        self.pages = QStackedWidget()
        self._compose()
        self._connect()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        for text in (self.words, self.near):
            self.detail.column.addWidget(text)
        self.detail.column.addStretch(1)
        buttons = QHBoxLayout()
        buttons.setSpacing(ruler.touch(6))
        for button in (
            *(self.before_button, self.after_button, self.filter_button),
            *(self.open_button, self.bin_button, self.decide_button),
        ):
            button.cap_px = ruler.px(4.4)
            button.setMinimumHeight(ruler.touch(24))
            buttons.addWidget(button, 1)
        page = QWidget()
        grid = QGridLayout(page)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(ruler.touch(5))
        grid.setVerticalSpacing(round(ruler.px(2)))
        grid.addWidget(self.head, 0, 0)
        grid.addWidget(self.scan, 0, 1)
        grid.addWidget(self.table, 1, 0)
        grid.addWidget(self.detail, 1, 1)
        grid.addWidget(self.bin_state, 2, 0, 1, 2)
        grid.addLayout(buttons, 3, 0, 1, 2)
        grid.setColumnStretch(0, 5)
        grid.setColumnStretch(1, 3)
        grid.setRowStretch(1, 1)
        for one in (page, self.filters, self.decide, self.bin):
            self.pages.addWidget(one)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.pages)

    def _connect(self) -> None:
        self.scan.returnPressed.connect(self._scanned)
        self.table.touched.connect(self.show_one)
        self.before_button.clicked.connect(lambda: self.go_to(self.day - _DAY))
        self.after_button.clicked.connect(lambda: self.go_to(self.day + _DAY))
        self.filter_button.clicked.connect(self._show_filters)
        self.open_button.clicked.connect(self._toggle_open)
        self.bin_button.clicked.connect(self._show_bin)
        self.decide_button.clicked.connect(self._show_decision)
        self.decide.left.connect(self.show_list)
        self.bin.left.connect(self.show_list)

    # --- the list -----------------------------------------------------------------------------

    def look(self) -> None:
        """Read the day anew."""
        self.go_to(self.day)
        if self.pages.currentIndex() == 0:
            self.scan.setFocus()

    def recorded(self) -> None:
        """A decision or a count is durable: back to the list."""
        self.show_list()

    def go_to(self, day: date) -> None:
        """Show the rejects of another day; none lies ahead of today."""
        self.day = min(day, self._source.today)
        asked = self.day

        def read() -> tuple[date, tuple[LedgerRow, ...], BinState, str]:
            return asked, *self._source.day_seen(asked), self._source.gone(asked)

        self._host.ask(read, self._show_day)

    def show_bag(self, serial: str) -> None:
        """Show the row of a bag, whatever day it is of."""
        self._wanted = serial
        self._host.ask(lambda: self._source.day_of_bag(serial), self.go_to)

    def _show_day(self, found: tuple[date, tuple[LedgerRow, ...], BinState, str]) -> None:
        day, self.rows, state, gone = found
        if day != self.day:
            return
        self.bin_state.setText(with_gone(bin_words(state), gone))
        self.bin.show_day(day, state)
        self._show_rows()
        wanted, self._wanted = self._wanted, ""
        if wanted and any(row.serial == wanted for row in self.rows):
            self.table.choose(wanted)
            self.show_one(wanted)
        elif wanted:
            self._host.say(f"Bag {wanted} was not set aside: LOOK UP shows it.", refused=True)

    def _show_rows(self) -> None:
        shown = self.shown
        still = sum(row.open for row in self.rows)
        filters = "".join(f", {value}" for value in self.chosen.values())
        self.head.setText(
            f"{narrow_date(self.day)}: {len(shown)} of {len(self.rows)} rejects{filters};"
            f" {still} open"
        )
        self.table.show_rows([reject_row(row) for row in shown])
        self.after_button.setEnabled(self.day < self._source.today)

    @property
    def shown(self) -> tuple[LedgerRow, ...]:
        """The rows the filters let through."""
        readers = self._readers()
        return tuple(
            row
            for row in self.rows
            if (row.open or not self.only_open)
            and all(readers[name](row) == value for name, value in self.chosen.items())
        )

    @property
    def picked(self) -> tuple[LedgerRow, ...]:
        """The rows that are touched."""
        keys = self.table.chosen
        return tuple(row for row in self.rows if row.serial in keys)

    @Slot(str)
    def show_one(self, serial: str) -> None:
        """Show one reject in full, and its neighbours once they are read."""
        row = next((one for one in self.rows if one.serial == serial), None)
        if row is None:
            return
        self.words.setText(reject_words(row, self._source.shift(row)))
        self.near.setText("")
        self._host.ask(lambda: self._look_up.complaint(serial), self._show_near)

    def _show_near(self, found: Complaint) -> None:
        if self.words.text().startswith(found.bag.serial):
            self.near.setText(neighbours_words(found))

    # --- what is touched ----------------------------------------------------------------------

    @Slot()
    def show_list(self) -> None:
        """Back to the list, read anew."""
        self.pages.setCurrentIndex(0)
        self.table.choose()
        self.look()

    @Slot()
    def _scanned(self) -> None:
        serial = self._source.serial(self.scan.text())
        self.scan.clear()
        if serial:
            self.show_bag(serial)

    @Slot()
    def _toggle_open(self) -> None:
        self.only_open = self.open_button.isChecked()
        self._show_rows()

    @Slot()
    def _show_bin(self) -> None:
        self.pages.setCurrentWidget(self.bin)

    @Slot()
    def _show_decision(self) -> None:
        if not self.picked:
            self._host.say("Touch the rejects it is about first.", refused=True)
            return
        self.decide.begin(self.picked)
        self.pages.setCurrentWidget(self.decide)

    def _readers(self) -> dict[str, Callable[[LedgerRow], str]]:
        return {"shift": self._source.shift, **dict(reject_filters())}

    @Slot()
    def _show_filters(self) -> None:
        self.filters.clear()
        for name, read in self._readers().items():
            values = sorted({read(row) for row in self.rows})
            tiles = Tiles(
                self._palette, [Tile(_ALL, "ALL"), *(Tile(v, v or "none") for v in values)], 5
            )
            tiles.check([self.chosen.get(name, _ALL)])
            tiles.touched.connect(lambda value, name=name: self.set_filter(name, value))
            self.filters.column.addWidget(Text(self._palette, f"By {name}", Face.VERB, 4.6))
            self.filters.column.addWidget(tiles)
        self.filters.column.addStretch(1)
        self.pages.setCurrentWidget(self.filters)

    def set_filter(self, name: str, value: str) -> None:
        """Let only rows of a value through, or all; back to the list."""
        self.chosen.pop(name, None)
        if value != _ALL:
            self.chosen[name] = value
        self.pages.setCurrentIndex(0)
        self._show_rows()
