"""Checks of QA: what is due, a figure or a pass, and what is done about a failure."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from station.core.checks.qa import REFERENCE, UNITS, QaKind, QaLimit, figure
from station.core.facts import Fact, FactRecord
from station.core.run import Run
from station.line.state import LineState
from station.screens.quality_host import Host
from station.screens.quality_sources import QaSource
from station.screens.quality_words import check_row, due_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.number_pad import NumberPad
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TouchTable

_COLUMNS = (
    Column("time", 5),
    Column("check", 5),
    Column("found", 4),
    Column("allowed", 5),
    Column("result", 3),
    Column("note", 5),
)
_PASS, _FAIL = "passed", "failed"

_TILES = {QaKind.SEAL: "SEAL CHECK"}
"""SEAL alone tells the packer to seal a bag."""


class QaPanel(QWidget):
    """Kinds at the left; at the right the check of the chosen kind, or the record."""

    def __init__(
        self, host: Host, source: QaSource, palette: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._host, self._source, self._palette = host, source, palette
        self._run: Run | None = None
        self._seen: object = object()
        self.limit: QaLimit | None = None
        self.found: set[str] = set()
        self.passed: bool | None = None
        self.kinds = Page(palette)
        self.tiles: Tiles | None = None
        self.head = Text(palette, "", Face.VERB, 5.2)
        self.value = Text(palette, "", Face.FIGURES, 11.0)
        self.pad = NumberPad(palette, signed=True)
        self.outcome = Tiles(palette, [Tile(_PASS, "PASSED"), Tile(_FAIL, "FAILED")], 2)
        self.pieces = Page(palette)
        self.piece_tiles: Tiles | None = None
        self.note = ScanField(palette, "bag, record")
        self.instrument = ScanField(palette, "instrument")
        self.action = ScanField(palette, "failed: what is done")
        for field in (self.note, self.instrument, self.action):
            field.setMaxLength(120)
        self.table = TouchTable(palette, _COLUMNS)
        self.list_button = TouchButton(palette, "HISTORY", small="checks made")
        self.enter_button = TouchButton(palette, "ENTER", small="hold down", hold=True)
        self.side = QStackedWidget()
        self._compose()
        for part in (self.value, self.pad, self.outcome, self.pieces):
            part.hide()  # until a kind is chosen
        self.pad.changed.connect(self._figure)
        self.outcome.touched.connect(self._judge)
        self.list_button.clicked.connect(lambda: self.side.setCurrentIndex(1))
        self.enter_button.held.connect(self._enter)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        fields = QHBoxLayout()
        fields.addWidget(self.note, 2)
        fields.addWidget(self.instrument, 2)
        fields.addWidget(self.action, 3)
        entry = QWidget()
        column = QVBoxLayout(entry)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(ruler.px(2)))
        for part in (self.head, self.value, self.pad, self.outcome, self.pieces):
            column.addWidget(part)
        column.addStretch(1)
        column.addLayout(fields)
        self.side.addWidget(entry)
        self.side.addWidget(self.table)
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in (self.list_button, self.enter_button):
            button.cap_px = ruler.px(4.8)
            button.setMinimumHeight(ruler.touch(26))
            row.addWidget(button, 1)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(ruler.touch(5))
        grid.addWidget(self.kinds, 0, 0, 2, 1)
        grid.addWidget(self.side, 0, 1)
        grid.addLayout(row, 1, 1)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 5)
        grid.setRowStretch(0, 1)

    def look(self) -> None:
        """Show what is due now, and read the checks made."""
        self._show_kinds()
        self._host.ask(self._source.made, self._show_made)

    def recorded(self) -> None:
        """A check is durable: show it among the others."""
        self.limit = None
        self.side.setCurrentIndex(1)
        self.look()

    def show_state(self, state: LineState) -> None:
        """Follow the run."""
        told = (None if state.run is None else state.run.id, state.due, state.closed)
        if told == self._seen:
            return
        self._seen, self._run = told, state.run
        if self.isVisible():
            self._show_kinds()

    def _show_kinds(self) -> None:
        source, now = self._source, self._source.now
        limits = source.limits(self._run)
        tiles = [
            Tile(
                str(one.kind),
                _TILES.get(one.kind, str(one.kind).upper()),
                due_words(one, source.due_at(one), now, failed=source.failed(one)),
            )
            for one in limits
        ]
        self.kinds.clear()
        words = "no run is open" if self._run is None else self._run.product.name
        if not limits:
            words = f"{words}: no checks in the settings"
        self.kinds.column.addWidget(Text(self._palette, words, Face.VERB, 4.4))
        self.tiles = Tiles(self._palette, tiles, 1)
        self.tiles.touched.connect(self.choose)
        self.tiles.check([] if self.limit is None else [str(self.limit.kind)])
        self.kinds.column.addWidget(self.tiles)
        self.kinds.column.addStretch(1)
        if self.limit is None and limits:
            self.choose(str(limits[0].kind), quiet=self.side.currentIndex() == 1)

    def _show_made(self, records: tuple[FactRecord, ...]) -> None:
        self.table.show_rows([check_row(one, self._source.zone) for one in reversed(records)])

    @Slot(str)
    def choose(self, word: str, *, quiet: bool = False) -> None:
        """Choose what is checked; ``quiet`` leaves the list of checks in sight."""
        kind = QaKind(word)
        self.limit = next(one for one in self._source.limits(self._run) if one.kind is kind)
        self.found, self.passed, self.pad.digits = set(), None, ""
        for field in (self.note, self.action):
            field.clear()
        if self.tiles is not None:
            self.tiles.check([word])
        if not quiet:
            self.side.setCurrentIndex(0)
        self._show_pieces()
        self._show()

    def _show_pieces(self) -> None:
        self.pieces.clear()
        limit = self.limit
        if limit is not None and limit.pieces:
            self.piece_tiles = Tiles(
                self._palette, [Tile(one, one, "touch when thrown out") for one in limit.pieces], 3
            )
            self.piece_tiles.touched.connect(self.find_piece)
            self.pieces.column.addWidget(self.piece_tiles)

    def _show(self) -> None:
        limit = self.limit
        if limit is None:
            return
        measured, metal = limit.kind in UNITS, limit.kind is QaKind.METAL
        allowed = f": {limit}" if str(limit) and not metal else ""
        self.head.setText(f"{str(limit.kind).capitalize()}{allowed}")
        self.value.setText(f"{self.pad.digits or '…'} {limit.unit}")
        self.value.setVisible(measured)
        self.pad.setVisible(measured)
        self.outcome.setVisible(not measured and not metal and limit.kind is not REFERENCE)
        self.outcome.check([] if self.passed is None else [_PASS if self.passed else _FAIL])
        self.pieces.setVisible(metal)
        if metal and self.piece_tiles is not None:
            self.piece_tiles.check(sorted(self.found))

    @Slot(str)
    def find_piece(self, piece: str) -> None:
        """A test piece was found and thrown out, or was not after all."""
        self.found ^= {piece}
        self._show()

    @Slot(str)
    def _judge(self, word: str) -> None:
        self.passed = word == _PASS
        self._show()

    @Slot(str)
    def _figure(self, _: str) -> None:
        self._show()

    @Slot()
    def _enter(self) -> None:
        limit, run = self.limit, self._run
        if limit is None:
            self._host.say("Touch what is checked first.", refused=True)
            return
        judged = limit.kind in UNITS or limit.kind in (QaKind.METAL, REFERENCE)
        if not judged and self.passed is None:
            self._host.say("Touch PASSED or FAILED.", refused=True)
            return
        digits, passed, found = self.pad.digits, self.passed is not False, tuple(self.found)
        note, instrument, action = (
            field.text() for field in (self.note, self.instrument, self.action)
        )

        def make() -> tuple[Fact, ...]:
            value = figure(digits) if limit.kind in UNITS else None
            made = self._source.check(
                limit,
                run,
                value,
                passed=passed,
                found=found,
                instrument=instrument,
                note=note,
                action=action,
            )
            return (made,)

        self._host.enter(make, f"{str(limit.kind).capitalize()} is on record.")
