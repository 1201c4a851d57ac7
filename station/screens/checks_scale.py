"""The guided check of the scale: one load at a time, each taken and judged before the next."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from station.core.metrology.clause import RuleRefused
from station.core.metrology.scale_check import CheckResult, CheckStage
from station.core.run import Run
from station.line.guided import GuidedCheck
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.checks_panel import lay_out
from station.screens.checks_source import ChecksSource
from station.screens.checks_words import due_words, load_rows, put_on
from station.screens.pan_bar import PanBar
from station.screens.theme import Palette, Ruler
from station.screens.widgets.live_figure import LiveFigure, live
from station.screens.widgets.load_list import LoadList
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.touch_button import TouchButton

_ENDS = {
    CheckResult.GOOD: "THE SCALE HOLDS",
    CheckResult.WARN: "THE SCALE HOLDS, beyond its first limit: have it adjusted soon",
    CheckResult.FAILED: "THE SCALE FAILS: its bags are held, call maintenance",
}


class ScalePanel(QWidget):
    """Leads through a check and records it with its last load, whatever it says.

    Args:
        intents: takes the record of the check.
        source: knows the loads.
        bar: keeps bags out meanwhile.
        palette: colours.
    """

    def __init__(
        self,
        intents: Intents,
        source: ChecksSource,
        bar: PanBar,
        palette: Palette,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._intents, self._source, self._bar = intents, source, bar
        self._state: LineState | None = None
        self._run: Run | None = None
        self._guided: GuidedCheck | None = None
        self._uid = ""
        self._ended = ""
        self.verb = Sentence(palette, 8.0)
        self.figure = LiveFigure(palette)
        self.loads = LoadList(palette)
        self.message = Sentence(palette, 4.6)
        self.start_button = TouchButton(palette, "START CHECK", small="S")
        self.take_button = TouchButton(palette, "TAKE READING", small="T")
        self.again_button = TouchButton(palette, "LOAD AGAIN", small="A")
        self.stop_button = TouchButton(palette, "GIVE UP", small="hold down", hold=True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._compose()
        self.start_button.clicked.connect(self.start)
        self.take_button.clicked.connect(self.take)
        self.again_button.clicked.connect(self.again)
        self.stop_button.held.connect(self.give_up)
        self._show()

    def _compose(self) -> None:
        right = QVBoxLayout()
        right.addWidget(self.loads)
        self.loads.set_unit(Ruler.of(self.screen()).px(1))
        buttons = (
            (self.start_button, 3),
            (self.take_button, 4),
            (self.again_button, 2),
            (self.stop_button, 2),
        )
        lay_out(self, (self.verb, self.figure, self.message), right, buttons)

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        return (self.start_button, self.take_button, self.again_button)

    @property
    def under_way(self) -> bool:
        """Whether a check has begun and is not recorded yet."""
        return self._guided is not None

    def show_state(self, state: LineState) -> None:
        """Follow the line; a load that stands is taken, and after the last the check is kept."""
        self._state = state
        self.figure.set(live(state))
        if self._guided is not None and (state.run is None or state.run != self._run):
            self._drop("The run ended: the check was given up.")
        elif self._guided is not None:
            self._guided.see(state)
            if self._guided.wanted is None and not self._uid:
                self._record()
        self._show()

    @Slot()
    def start(self) -> None:
        """Begin a check at the loads of the open run."""
        if self._state is None or self._state.run is None:
            self._ended = "Open a run first: a check is made at its loads."
        else:
            self._run = self._state.run
            try:
                self._guided = self._source.guided(self._run)
            except RuleRefused as refused:
                self._ended = str(refused)
            else:
                self._bar.begin()
                self._uid = self._ended = ""
        self._show()

    @Slot()
    def take(self) -> None:
        """Take what the scale shows for the wanted load."""
        if self._guided is not None and self._state is not None:
            self._ended = self._guided.take(self._state)
            self.show_state(self._state)

    @Slot()
    def again(self) -> None:
        """Put the last load on once more."""
        if self._guided is not None:
            self._guided.again()
            self._show()

    @Slot()
    def give_up(self) -> None:
        """End the check before its last load; where a load failed it is recorded all the same."""
        if self._guided is None:
            return
        if any(load.result is CheckResult.FAILED for load in self._guided.judged()):
            self._record()
        else:
            self._drop("Given up: nothing is recorded.")
        self._show()

    def entered(self, answer: EntryAnswer) -> None:
        """Say what became of the check."""
        if not self._uid or self._uid not in answer.uids:
            return
        self._drop(self._ended if answer.recorded else f"Not recorded: {answer.words}")
        self._show()

    def _record(self) -> None:
        assert self._guided is not None
        assert self._run is not None
        check = self._source.judge(self._guided)
        self._ended = _ENDS[check.result]
        fact = self._source.check(check, self._run)
        self._uid = fact.uid
        self.loads.set(load_rows(self._guided))
        self._intents.enter((fact,), self._run.lead)

    def _drop(self, words: str) -> None:
        self._guided, self._uid, self._ended = None, "", words
        self._bar.end()

    def _show(self) -> None:
        guided, open_run = self._guided, self._state is not None and self._state.run is not None
        stage = self._source.stage
        if guided is not None:
            self.verb.set(put_on(guided))
            self.loads.set(load_rows(guided))
            self.message.set(self._ended or f"Checked {stage}. Bags wait meanwhile.")
        else:
            self.verb.set(self._ended or ("CHECK THE SCALE" if open_run else "NO RUN IS OPEN"))
            left = "as left, after its adjustment" if stage is CheckStage.AS_LEFT else "as found"
            self.message.set(
                f"The next check is {left}. {due_words(self._state, self._source.zone)}".strip()
            )
        going = guided is not None
        self.start_button.setEnabled(open_run and not going)
        self.start_button.strong = open_run and not going
        self.take_button.setEnabled(going and guided is not None and guided.wanted is not None)
        self.take_button.strong = self.take_button.isEnabled() and self.figure.view.steady
        self.again_button.setEnabled(going and guided is not None and bool(guided.readings))
        self.stop_button.setEnabled(going)
        for button in (self.start_button, self.take_button, self.again_button):
            button.update()
