"""The manager's page: where the money goes, what waits for a signature, who may work."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLayout,
    QStackedWidget,
    QWidget,
)
from typing_extensions import override

from station.line.state import Intents
from station.screens.bridge import Bridge
from station.screens.chart_files import keep
from station.screens.doors import DoorPage
from station.screens.manager_charts import BarsChart, PanChart, TimelineChart
from station.screens.manager_sign import SignPanel
from station.screens.manager_source import GivenBy, ManagerSource, Money, Period
from station.screens.offer import Person
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.chart import Chart
from station.screens.widgets.figure_list import FigureList
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wait_card import WaitCard
from station.screens.work import Work

_WORDS_MM = 3.4
_TABS = (("GIVEN AWAY", "A"), ("LOSSES", "L"), ("TIME", "T"), ("SIGN", "S"), ("PEOPLE", "P"))
_BY = {
    GivenBy.PRODUCT: "BY PRODUCT",
    GivenBy.HOUR: "BY HOUR",
    GivenBy.POSITION: "BY POSITION",
    GivenBy.DAY: "BY DAY",
}
_SIGN, _PEOPLE = 3, 4
_ROWS = 7
"""People, or lives, on one page."""


@dataclass(frozen=True, slots=True)
class _Look:
    """One thing a tab may show: what its button says, and what draws it."""

    words: str
    draw: Callable[[Money], Chart]


class ManagerPage(DoorPage):
    """Shows what a source says of a period.

    Args:
        bridge: tells what became of signatures.
        intents: takes them to the record.
        source: knows the record.
        managers: who may sign.
        charts: folder for kept charts.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ManagerSource,
        managers: tuple[Person, ...],
        charts: Path,
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._source, self._folder = source, charts
        self._period, self._money = Period.WEEK, None  # type: tuple[Period, Money | None]
        self._at, self._turn = 0, [0] * len(_TABS)
        self.figures = FigureList(palette)
        self.bars, self.pareto = BarsChart(palette), BarsChart(palette)
        self.timeline, self.pan = TimelineChart(palette), PanChart(palette)
        self.people = FigureList(palette)
        self.sign = SignPanel(bridge, intents, source, managers, palette)
        self.pages = QStackedWidget()
        charts_of = (self.bars, self.pareto, self.timeline, self.pan)
        for page in (*charts_of, self.people, self.sign):
            self.pages.addWidget(page)
        for chart in charts_of:
            chart.read.connect(self._read)
        self.tabs = tuple(TouchButton(palette, words, small=key) for words, key in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F11")
        self.period_button = TouchButton(palette, "", small="D")
        self.turn_button = TouchButton(palette, "", small="B")
        self.keep_button = TouchButton(palette, "KEEP CHART", small="K")
        self.report_button = TouchButton(palette, "REPORT", small="R")
        self.evidence_button = TouchButton(palette, "EVIDENCE", small="E")
        self.reading = Sentence(palette, _WORDS_MM)
        self.looking, self.writing = Work("manager", self), Work("manager papers", self)
        self.wait_card = WaitCard(palette, self, self.pages)
        self._looks: tuple[tuple[_Look, ...], ...] = (
            (
                *(
                    _Look(_BY[key], lambda money, by=key: self._given(money, by))  # type: ignore[misc]
                    for key in GivenBy
                ),
                _Look("YIELD OF LOTS", self._yields),
            ),
            (_Look("STOPS", self._stops), _Look("SET ASIDE", self._rejects)),
            (_Look("CHECKS", self._times), _Look("PAN WHEN EMPTY", self._pan)),
        )
        self._compose()
        self._connect()
        self._choose(0)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        for tab in self.tabs:
            tab.setCheckable(True)
        top = self.head_row((*self.tabs, self.back_button), 4.4)
        foot = QHBoxLayout()
        foot.setSpacing(gap)
        for button in self._foot:
            button.cap_px = ruler.px(4.0)
            foot.addWidget(button, 1)
        for painted in (self.figures, self.people, self.reading):
            painted.set_unit(ruler.px(1))
        self.reading.setFixedHeight(round(ruler.px(2.6 * _WORDS_MM)))
        whole = QGridLayout(self)
        whole.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setHorizontalSpacing(gap)
        whole.setVerticalSpacing(round(ruler.px(4)))
        whole.addLayout(top, 0, 0, 1, 2)
        whole.addWidget(self.figures, 1, 0)
        whole.addWidget(self.pages, 1, 1)
        whole.addWidget(self.reading, 2, 0, 1, 2)
        whole.addLayout(foot, 3, 0, 1, 2)
        self._grid = whole
        whole.setColumnStretch(0, 2)
        whole.setColumnStretch(1, 5)
        whole.setRowStretch(1, 1)

    @property
    def _foot(self) -> tuple[TouchButton, ...]:
        return (
            *(self.period_button, self.turn_button, self.keep_button),
            *(self.report_button, self.evidence_button),
        )

    def _connect(self) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self._choose(index))
        clicks = (
            (self.period_button, self._next_period),
            (self.turn_button, self._next_turn),
            (self.keep_button, self._keep),
            (self.report_button, self._report),
            (self.evidence_button, self._evidence),
            (self.back_button, self.left.emit),
        )
        for button, slot in clicks:
            button.clicked.connect(slot)
        for button in (*self.tabs, *self._foot):
            key = QShortcut(QKeySequence(button.small), self)
            key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            key.activated.connect(button.click)
        for work in (self.looking, self.writing):
            work.failed.connect(self._say)
            work.ended.connect(self._show_buttons)
            self.wait_card.follow(work)
        self.wait_card.given_up.connect(lambda: self._say("Given up."))
        self.looking.done.connect(self.show_money)
        self.writing.done.connect(self._written)

    @override
    def stop(self) -> None:
        for work in (self.looking, self.writing):
            work.stop()
        for work in (self.looking, self.writing):
            work.wait()

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.sign.look()
        self._ask()

    # --- what comes -------------------------------------------------------------------------

    @Slot(object)
    def show_money(self, money: Money | None) -> None:
        """Show the figures of a period."""
        self._money = money
        self.figures.set(() if money is None else money.headline)
        self._say("No bag is on record yet." if money is None else _title(money))
        self._draw()

    @Slot(object)
    def _written(self, files: tuple[Path, ...]) -> None:
        self._say(f"Written: {files[0].name} and {len(files) - 1} more in {files[0].parent}")

    # --- what a person does -----------------------------------------------------------------

    def _ask(self) -> None:
        period, source = self._period, self._source
        if self.looking.begin(lambda told: source.money(period, told)):
            self._say("Adding up …")
        self._show_buttons()

    @Slot()
    def _next_period(self) -> None:
        self.looking.stop()
        periods = list(Period)
        self._period = periods[(periods.index(self._period) + 1) % len(periods)]
        self._ask()

    @Slot()
    def _next_turn(self) -> None:
        self._turn[self._at] += 1
        self._draw()

    @Slot()
    def _report(self) -> None:
        period, source = self._period, self._source
        self._write(lambda told: source.report(period, told))

    @Slot()
    def _evidence(self) -> None:
        source = self._source
        self._write(source.evidence)

    def _write(self, task: Callable[[Callable[[int], None]], object]) -> None:
        if self.writing.begin(task):
            self._say("Writing …")
        self._show_buttons()

    @Slot()
    def _keep(self) -> None:
        chart = self.pages.currentWidget()
        if not isinstance(chart, Chart) or not chart.count or self._money is None:
            self._say("There is no chart to keep.")
            return
        title = f"{self.turn_button.text()}, {self._money.title}"
        stem = re.sub(r"[^A-Za-z0-9-]+", "-", title).strip("-").lower()
        try:
            files = keep(chart, self._folder, stem, title)
        except OSError as fault:
            self._say(f"Not kept: {fault.strerror or fault}, {self._folder}")
            return
        self._say(f"Kept as {files[0].stem} (PNG, SVG, CSV) in {self._folder}")

    def _choose(self, index: int) -> None:
        self._at = index
        for at, tab in enumerate(self.tabs):
            tab.setChecked(at == index)
        if index == _SIGN:
            self.sign.look()
        self._draw()

    # --- showing it -------------------------------------------------------------------------

    def _draw(self) -> None:
        signing = self._at == _SIGN
        self.figures.setVisible(not signing)
        self._grid.setColumnStretch(0, 0 if signing else 2)
        for button in self._foot:
            button.setVisible(not signing)
        if signing:
            self.pages.setCurrentWidget(self.sign)
        elif self._at == _PEOPLE:
            self._show_people()
        elif self._money is not None:
            looks = self._looks[self._at]
            look = looks[self._turn[self._at] % len(looks)]
            self.pages.setCurrentWidget(look.draw(self._money))
        self._show_buttons()

    def _show_people(self) -> None:
        pages = [
            rows[at : at + _ROWS]
            for rows in (self._source.people(), self._source.lives())
            for at in range(0, len(rows), _ROWS)
        ]
        self.people.set(pages[self._turn[self._at] % len(pages)] if pages else ())
        self.pages.setCurrentWidget(self.people)

    def _given(self, money: Money, by: GivenBy) -> Chart:
        self.bars.show_slices(money.given[by], "% of nominal")
        return self.bars

    def _yields(self, money: Money) -> Chart:
        self.bars.show_slices(money.yields, "% of the lot in bags")
        return self.bars

    def _stops(self, money: Money) -> Chart:
        self.pareto.show_slices(money.stops, "minutes", together=True)
        return self.pareto

    def _rejects(self, money: Money) -> Chart:
        self.pareto.show_slices(money.rejects, "bags", together=True)
        return self.pareto

    def _times(self, money: Money) -> Chart:
        self.timeline.show_happenings(money.happenings, money.zone)
        return self.timeline

    def _pan(self, money: Money) -> Chart:
        self.pan.show_pan(money.pan)
        return self.pan

    @Slot()
    def _show_buttons(self) -> None:
        busy = self.writing.busy
        self.period_button.setText(self._period.value.upper())
        self.turn_button.setText(self._turn_words())
        self.turn_button.setEnabled(self._at != _SIGN)
        self.keep_button.setEnabled(self._at < _SIGN and self._money is not None)
        for button in (self.report_button, self.evidence_button):
            button.setEnabled(not busy and self._money is not None)

    def _turn_words(self) -> str:
        if self._at >= len(self._looks):
            return "NEXT" if self._at == _PEOPLE else ""
        looks = self._looks[self._at]
        return looks[self._turn[self._at] % len(looks)].words

    @Slot(str)
    def _read(self, words: str) -> None:
        if words:
            self._say(words)
        elif self._money is not None:
            self._say(_title(self._money))

    @Slot(str)
    def _say(self, words: str) -> None:
        self.reading.set(words)


def _title(money: Money) -> str:
    return "; ".join(filter(None, (money.title, money.gone)))
