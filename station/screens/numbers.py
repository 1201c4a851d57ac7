"""The numbers of a run, for its lead and the manager: outlook, mean, giveaway, target, charts."""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import (
    QHideEvent,
    QKeySequence,
    QShortcut,
    QShowEvent,
)
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.line.fill_target import Advice
from station.line.numbers import RunFigures, Span
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.chart_files import keep
from station.screens.doors import DoorPage
from station.screens.numbers_charts import SpreadChart, TargetChart, WeightsChart
from station.screens.numbers_source import NumbersSource
from station.screens.numbers_words import advice_words, rows, shown
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.figure_list import FigureList
from station.screens.widgets.outlook_plate import OutlookPlate
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.touch_button import TouchButton
from station.screens.work import Tried, Work

_WORDS_MM = 3.4
LOOK_MS = 1000
"""How often a change of the line is looked at."""
_ANYWAY = 10
"""After so many looks the figures are asked for without a change: an hour goes on."""
_CHARTS = (
    ("TARGET", "T", "The line is the lowest mean that holds for a spread. Touch it to read it."),
    (
        "WEIGHTS",
        "W",
        "Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.",
    ),
    ("SPREAD", "D", "How many bags have which net. Touch a bar to read it."),
)
"""Of each chart: its name, its key, and how it is read."""


class NumbersPage(DoorPage):
    """Shows what a source says of the open run, or of the last one.

    Args:
        bridge: tells the newest state and what became of a proposal.
        intents: takes the proposal to the record.
        source: knows the bags.
        charts: folder for kept charts.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: NumbersSource,
        charts: Path,
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._intents, self._source = intents, source
        self._folder = charts
        self._span: Span | None = None
        self._figures: RunFigures | None = None
        self._advice: Advice | None = None
        self._told: object = None
        self._due = 0
        self._uid = ""
        self.plate = OutlookPlate(palette)
        self.figures = FigureList(palette)
        self.target, self.weights = TargetChart(palette), WeightsChart(palette)
        self.spread = SpreadChart(palette)
        self.pages = QStackedWidget()
        for chart in (self.target, self.weights, self.spread):
            self.pages.addWidget(chart)
            chart.read.connect(self._read)
        self.tabs = tuple(TouchButton(palette, words, small=key) for words, key, _ in _CHARTS)
        self.span_button = TouchButton(palette, "", small="B")
        self.keep_button = TouchButton(palette, "KEEP CHART", small="K")
        self.back_button = TouchButton(palette, "LEAD", small="F3")
        self.work_button = TouchButton(palette, "WORK OUT", small="O")
        self.record_button = TouchButton(palette, "RECORD PROPOSAL", small="R")
        self.reading, self.message = Sentence(palette, _WORDS_MM), Sentence(palette, _WORDS_MM)
        self._looking, self._advising = Work("numbers", self), Work("fill target", self)
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_MS)
        self._compose()
        self._connect(bridge)
        self._choose(0)
        self._show()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = self.head_row((*self.tabs, self.span_button, self.keep_button, self.back_button), 4.4)
        for tab in self.tabs:
            tab.setCheckable(True)
        side = QVBoxLayout()
        side.setSpacing(round(ruler.px(3)))
        side.addWidget(self.plate, 2)
        side.addWidget(self.figures, 3)
        for painted in (self.plate, self.figures, self.reading, self.message):
            painted.set_unit(ruler.px(1))
        self.reading.setFixedHeight(round(ruler.px(2.4 * _WORDS_MM)))
        self.offer = QWidget()
        offer = QHBoxLayout(self.offer)
        offer.setContentsMargins(0, 0, 0, 0)
        offer.setSpacing(gap)
        for button in (self.work_button, self.record_button):
            button.cap_px = ruler.px(4.0)
        offer.addWidget(self.message, 3)
        offer.addWidget(self.work_button, 1)
        offer.addWidget(self.record_button, 1)
        main = QVBoxLayout()
        main.setSpacing(round(ruler.px(2)))
        main.addWidget(self.pages, 1)
        main.addWidget(self.reading)
        main.addWidget(self.offer)
        whole = QGridLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setHorizontalSpacing(gap)
        whole.setVerticalSpacing(round(ruler.px(5)))
        whole.addLayout(top, 0, 0, 1, 2)
        whole.addLayout(side, 1, 0)
        whole.addLayout(main, 1, 1)
        whole.setColumnStretch(0, 2)
        whole.setColumnStretch(1, 3)
        whole.setRowStretch(1, 1)

    def _connect(self, bridge: Bridge) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self._choose(index))
        clicks = (
            (self.span_button, self._change_span),
            (self.keep_button, self._keep),
            (self.back_button, self.left.emit),
            (self.work_button, self._work_out),
            (self.record_button, self._record),
        )
        for button, slot in clicks:
            button.clicked.connect(slot)
        for button in (*self.tabs, *(button for button, _ in clicks if button.small != "F3")):
            key = QShortcut(QKeySequence(button.small), self)
            key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            key.activated.connect(button.click)
        self._timer.timeout.connect(self._look)
        self._looking.done.connect(self.show_figures)
        self._looking.failed.connect(self._say)
        self._advising.done.connect(self.show_advice)
        self._advising.failed.connect(self._say)
        self._advising.counted.connect(self._count)
        self._advising.ended.connect(self._show_buttons)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self._entered, Qt.ConnectionType.DirectConnection)

    @property
    def busy(self) -> bool:
        """Whether something is worked out just now."""
        return self._looking.busy or self._advising.busy

    def stop(self) -> None:
        """Give up what is worked out and wait for it; before the window goes."""
        self._timer.stop()
        for work in (self._looking, self._advising):
            work.stop()
            work.wait()

    @property
    def _shown_span(self) -> Span:
        return Span.RUN if self._figures is None else self._figures.batch.span

    # --- what comes -------------------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Notice a bag more or another run; the figures follow at the next look."""
        told = (state.run and state.run.id, state.tally)
        if told != self._told:
            self._told, self._due = told, 0

    @Slot(object)
    def show_figures(self, figures: RunFigures | None) -> None:
        """Show figures; those of another run have no advice yet."""
        other = figures is None or self._figures is None or figures.run != self._figures.run
        if other:
            self._advice, self._uid, self._span = None, "", None
            self._say("")
        self._figures = figures
        self._show()

    @Slot(object)
    def show_advice(self, advice: Advice | None) -> None:
        """Show what target the bags propose."""
        self._advice, self._uid = advice, ""
        if self._figures is not None and advice is not None:
            self._say(advice_words(self._figures, advice))
        self._show()

    # --- what a person does -----------------------------------------------------------------

    def _choose(self, index: int) -> None:
        self.pages.setCurrentIndex(index)
        for at, tab in enumerate(self.tabs):
            tab.setChecked(at == index)
        self.offer.setVisible(index == 0)
        self._read("")
        self._draw()

    @Slot()
    def _change_span(self) -> None:
        self._span = Span.HOUR if self._shown_span is Span.RUN else Span.RUN
        self._due = 0
        self._look()

    @Slot()
    def _work_out(self) -> None:
        if self._advising.busy:
            self._advising.stop()
            self._say("Given up.")
        elif self._figures is not None and self._advising.begin(self._source.advice):
            self._say("Working a target out from the bags …")
        self._show_buttons()

    @Slot()
    def _record(self) -> None:
        figures, advice = self._figures, self._advice
        if figures is None or advice is None or advice.proposal is None or self._uid:
            return
        fact = self._source.proposal(figures, advice)
        self._uid = fact.uid
        self._show_buttons()
        self._intents.enter((fact,), figures.run.lead)

    @Slot(object)
    def _entered(self, answer: EntryAnswer) -> None:
        if not self._uid or self._uid not in answer.uids:
            return
        if answer.recorded:
            self._say("The proposal is on record. A manager approves it, as a new version.")
        else:
            self._uid = ""
            self._say(f"Not recorded: {answer.words}")
        self._show_buttons()

    @Slot()
    def _keep(self) -> None:
        chart, figures = self.pages.currentWidget(), self._figures
        assert isinstance(chart, TargetChart | WeightsChart | SpreadChart)
        if figures is None or not chart.count:
            self._read("There is nothing to keep yet.")
            return
        name = _CHARTS[self.pages.currentIndex()][0].lower()
        bags = len(figures.charts.nets)
        stem = re.sub(r"[^A-Za-z0-9-]+", "-", f"{figures.run.blend_lot}-{name}-{bags}-bags")
        title = f"{figures.run.product.name}, blend lot {figures.run.blend_lot}: {name}"
        try:
            files = keep(chart, self._folder, stem, title)
        except OSError as fault:
            self._read(f"Not kept: {fault.strerror or fault}, {self._folder}")
            return
        self._read(f"Kept as {files[0].stem} (PNG, SVG, CSV) in {self._folder}")

    # --- showing it -------------------------------------------------------------------------

    @Slot()
    def _look(self) -> None:
        """Ask for figures where something changed, one question at a time."""
        self._due -= 1
        if self._due > 0 or self._looking.busy:
            return
        span, source = self._span, self._source

        def task(_: Tried) -> object:
            return source.figures(span)

        if self._looking.begin(task):
            self._due = _ANYWAY

    def _show(self) -> None:
        self.plate.set(shown(self._figures))
        self.figures.set(rows(self._figures, self._advice))
        self._show_buttons()
        self._draw()

    def _draw(self) -> None:
        """Draw the chart that is looked at."""
        if self._figures is None:
            return
        chart = self.pages.currentWidget()
        if chart is self.target:
            self.target.show_figures(self._figures, self._advice)
        elif chart is self.weights:
            self.weights.show_figures(self._figures)
        else:
            self.spread.show_figures(self._figures)

    @Slot()
    def _show_buttons(self) -> None:
        busy, advice = self._advising.busy, self._advice
        self.span_button.setText(str(self._shown_span).upper())
        self.span_button.setAccessibleName(f"batch: {self._shown_span}")
        self.work_button.setText("GIVE UP" if busy else "WORK OUT")
        self.work_button.setEnabled(busy or self._figures is not None)
        offered = advice is not None and advice.proposal is not None and not busy
        self.record_button.setEnabled(offered and not self._uid)
        self.record_button.strong = offered and not self._uid
        self.record_button.setText("ASKED" if self._uid and not offered else "RECORD PROPOSAL")
        for button in (self.span_button, self.work_button, self.record_button):
            button.update()

    @Slot(int)
    def _count(self, tried: int) -> None:
        if self._advising.busy:
            self._say(f"Working a target out from the bags: {tried} tried …")

    @Slot(str)
    def _say(self, words: str) -> None:
        self.message.set(words[:1].upper() + words[1:])

    @Slot(str)
    def _read(self, words: str) -> None:
        self.reading.set(words or _CHARTS[self.pages.currentIndex()][2])

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.setFocus()
        self._due = 0
        self._timer.start()
        self._look()

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        self._timer.stop()
        for work in (self._looking, self._advising):
            work.stop()
