"""A reference test on bags an inspector picks: picked, weighed again, judged; an aid only."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from station.core.reference_test import AID, Batch, ReferenceTest
from station.line.guided import BagSeries
from station.line.state import LineState
from station.screens.pan_bar import PanBar
from station.screens.quality_host import Host
from station.screens.quality_sources import InspectorSource
from station.screens.quality_words import rehearsal_words, sentence, standing_words
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.live_figure import LiveFigure, live
from station.screens.widgets.sheet import Page, ScanField, Text
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.touch_table import Column, TableRow, TouchTable
from station.screens.words import short_date

_BATCHES = (Column("hour", 3), Column("product", 6), Column("bags", 2, figures=True))
_PICKED = (
    Column("serial", 5),
    Column("by the record", 3, figures=True),
    Column("weighed now", 3, figures=True),
)


class InspectorPanel(QWidget):
    """Two pages: the batches, and the test of one of them.

    While bags are picked and weighed the line takes none of its own.
    """

    def __init__(
        self,
        host: Host,
        source: InspectorSource,
        bar: PanBar,
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._host, self._source, self._bar = host, source, bar
        self._palette = palette
        self.batches: tuple[Batch, ...] = ()
        self.batch: Batch | None = None
        self.test: ReferenceTest | None = None
        self._series: BagSeries | None = None
        self.head = Text(palette, sentence(AID), Face.VERB, 4.8)
        self.list = TouchTable(palette, _BATCHES)
        self.scan = ScanField(palette, "scan a picked bag")
        self.scan.setMaxLength(400)
        self.figure = LiveFigure(palette)
        self.verb = Text(palette, "", Face.VERB, 5.2)
        self.picked = TouchTable(palette, _PICKED)
        self.standing = Text(palette, "", Face.TEXT, 4.0)
        self.rehearsed = Text(palette, "", Face.TEXT, 3.6)
        self.inspector = ScanField(palette, "name of the inspector")
        self.inspector.setMaxLength(80)
        self.draw_button = TouchButton(palette, "DRAW", small="at random")
        self.rehearse_button = TouchButton(palette, "REHEARSE", small="stored bags")
        self.end_button = TouchButton(palette, "END", small="hold, no record", hold=True)
        self.keep_button = TouchButton(palette, "KEEP", small="hold down", hold=True)
        self.pages = QStackedWidget()
        self._compose()
        self.list.touched.connect(self.begin)
        self.scan.returnPressed.connect(self._scanned)
        self.draw_button.clicked.connect(self._draw)
        self.rehearse_button.clicked.connect(self._rehearse)
        self.end_button.held.connect(self.end)
        self.keep_button.held.connect(self._keep)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        side = Page(self._palette)
        side.column.addWidget(self.standing)
        side.column.addWidget(self.rehearsed)
        side.column.addStretch(1)
        self.figure.set_unit(ruler.px(1))
        self.figure.setMinimumHeight(round(ruler.px(24)))
        left, right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.scan)
        left.addWidget(self.picked)
        shown: tuple[QWidget, ...] = (self.figure, self.verb, side, self.inspector)
        for part in shown:
            right.addWidget(part)
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in (
            *(self.draw_button, self.rehearse_button),
            *(self.end_button, self.keep_button),
        ):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch(26))
            row.addWidget(button, 1)
        page = QWidget()
        grid = QGridLayout(page)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(ruler.touch(5))
        grid.addLayout(left, 0, 0)
        grid.addLayout(right, 0, 1)
        grid.addLayout(row, 1, 0, 1, 2)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        self.pages.addWidget(self.list)
        self.pages.addWidget(page)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.head)
        whole.addWidget(self.pages, 1)

    @property
    def under_way(self) -> bool:
        """Whether a test goes on: bags are on the scale for it."""
        return self.test is not None

    def look(self) -> None:
        """Read the batches, unless a test goes on."""
        if self.test is None:
            self._host.ask(self._source.batches, self.show_batches)

    def recorded(self) -> None:
        """The test is on record."""
        self.end()

    def show_batches(self, batches: tuple[Batch, ...]) -> None:
        """Show which batches there are."""
        self.batches = batches
        self.list.show_rows(
            [
                TableRow(
                    one.key,
                    (
                        f"{short_date(one.hour.date())} {one.hour:%H:00}",
                        one.run.product.name,
                        f"{len(one.packs)}",
                    ),
                )
                for one in batches
            ]
        )

    @Slot(str)
    def begin(self, key: str) -> None:
        """Begin a test of a batch."""
        batch = next(one for one in self.batches if one.key == key)
        try:
            self.test = self._source.begin(batch)
        except ValueError as refused:
            self._host.say(f"Refused. {sentence(str(refused))}", refused=True)
            return
        self.batch = batch
        self._series = BagSeries(self.test.most, self._source.dwell_ns)
        self._bar.begin()
        self.rehearsed.setText("")
        self.pages.setCurrentIndex(1)
        self.scan.setFocus()
        self._show()

    @Slot()
    def end(self) -> None:
        """End the test; what is not kept is not recorded."""
        self.test, self.batch, self._series = None, None, None
        self._bar.end()
        self.pages.setCurrentIndex(0)
        self.look()

    def show_state(self, state: LineState) -> None:
        """Follow the scale: the next picked bag that stands after zero is taken."""
        self.figure.set(live(state))
        test, series = self.test, self._series
        if test is None or series is None or test.next_to_weigh is None:
            return
        before = series.waits_for_bag
        if series.see(state):
            try:
                self.test = test.weigh(series.tares[-1])
            except ValueError as refused:
                series.again()
                self._host.say(f"Refused. {sentence(str(refused))}", refused=True)
            self._show()
        elif series.waits_for_bag != before:
            self._show()

    @Slot()
    def _scanned(self) -> None:
        text = self.scan.text()
        self.scan.clear()
        test, batch = self.test, self.batch
        if test is not None and batch is not None and text.strip():
            self._change(lambda: self._source.pick(test, batch, text))

    @Slot()
    def _draw(self) -> None:
        test, batch = self.test, self.batch
        if test is not None and batch is not None:
            self._change(lambda: self._source.draw(test, batch))

    def _change(self, make: Callable[[], ReferenceTest]) -> None:
        try:
            self.test = make()
        except ValueError as refused:
            self._host.say(f"Refused. {sentence(str(refused))}", refused=True)
        else:
            self._host.say("")
        self._show()

    @Slot()
    def _rehearse(self) -> None:
        test, batch = self.test, self.batch
        if test is not None and batch is not None:
            self.rehearsed.setText("Rehearsing …")
            self._host.ask(
                lambda: self._source.rehearsal(test, batch),
                lambda found: self.rehearsed.setText(rehearsal_words(found)),
            )

    @Slot()
    def _keep(self) -> None:
        test, host, name = self.test, self._host, self.inspector.text()
        if test is not None:
            told = f"The test is on record, as {AID}."
            host.enter(lambda: (self._source.record(test, name, host.who),), told)

    def _show(self) -> None:
        test, series = self.test, self._series
        if test is None:
            return
        rows = [
            TableRow(
                one.serial,
                (one.serial, f"{one.stored}", "…" if one.net is None else f"{one.net}"),
                one is test.next_to_weigh,
            )
            for one in test.picked
        ]
        self.picked.show_rows(rows)
        coming = test.next_to_weigh
        if coming is not None:
            self.picked.choose(coming.serial)
        self.standing.setText(standing_words(test, self._source.standing(test)))
        if coming is None:
            self.verb.setText("SCAN A BAG" if len(test.picked) < test.plan.n else "ALL WEIGHED")
        elif series is not None and series.waits_for_bag:
            self.verb.setText(f"PUT {coming.serial} ON")
        else:
            self.verb.setText("EMPTY THE PAN")
