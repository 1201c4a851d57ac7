"""Empty bags on the scale: one before bags are packed, or a study of many; taken by themselves."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from station.core.run import Run
from station.line.guided import BagSeries
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.checks_panel import lay_out
from station.screens.checks_source import ChecksSource
from station.screens.pan_bar import PanBar
from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.live_figure import LiveFigure, live
from station.screens.widgets.sentence import Sentence
from station.screens.widgets.sheet import ScanField, Text
from station.screens.widgets.touch_button import TouchButton

_A_LINE = 9
"""Tares on one line."""


class TarePanel(QWidget):
    """Film lot by scan, then bag after bag: zero, bag, zero.

    Args:
        intents: takes what was weighed to the record.
        source: judges it.
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
        self._palette = palette
        self._state: LineState | None = None
        self._run: Run | None = None
        self._series: BagSeries | None = None
        self._uid = ""
        self._said = ""
        self._film_in_use = ""
        self.film = ScanField(palette, "scan or type the film lot")
        self.film.replaced = True
        self.verb = Sentence(palette, 8.0)
        self.figure = LiveFigure(palette)
        self.message = Sentence(palette, 4.6)
        self.count = Sentence(palette, 12.0)
        self.tares = Text(palette, "", Face.CODE, 4.6)
        self.one_button = TouchButton(palette, "WEIGH ONE BAG", small="W")
        self.study_button = TouchButton(palette, f"STUDY {source.study_bags} BAGS", small="Y")
        self.again_button = TouchButton(palette, "BAG AGAIN", small="A")
        self.stop_button = TouchButton(palette, "GIVE UP", small="hold down", hold=True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._compose()
        self.one_button.clicked.connect(self.weigh_one)
        self.study_button.clicked.connect(self.study)
        self.again_button.clicked.connect(self.again)
        self.stop_button.held.connect(self.give_up)
        self.film.textChanged.connect(self._show)
        self.film.returnPressed.connect(self.setFocus)  # keys press the buttons again
        self._show()

    def _compose(self) -> None:
        right = QVBoxLayout()
        right.addWidget(self.film)
        right.addWidget(self.count, 1)
        right.addWidget(self.tares)
        right.addStretch(1)
        self.count.set_unit(Ruler.of(self.screen()).px(1))
        buttons = (
            (self.one_button, 4),
            (self.study_button, 4),
            (self.again_button, 2),
            (self.stop_button, 2),
        )
        lay_out(self, (self.verb, self.figure, self.message), right, buttons)

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        return (self.one_button, self.study_button, self.again_button)

    @property
    def under_way(self) -> bool:
        """Whether bags are being weighed and not recorded yet."""
        return self._series is not None

    @property
    def film_lot(self) -> str:
        """The film lot as scanned."""
        return self.film.text().strip().upper()

    def show_state(self, state: LineState) -> None:
        """Follow the line; a bag that stands after zero is taken."""
        self._state = state
        self.figure.set(live(state))
        if self._source.film_lot != self._film_in_use:
            self._film_in_use = self._source.film_lot
            self.film.setText(self._film_in_use)
        if self._series is not None and (state.run is None or state.run != self._run):
            self._drop("The run ended: nothing is recorded.")
        elif self._series is not None and self._series.see(state) and self._series.done:
            self._record()
        self._show()

    @Slot()
    def weigh_one(self) -> None:
        """Weigh one empty bag of the run."""
        self._begin(1)

    @Slot()
    def study(self) -> None:
        """Weigh as many as a study needs."""
        self._begin(self._source.study_bags)

    @Slot()
    def again(self) -> None:
        """Drop the last bag and weigh another."""
        if self._series is not None:
            self._series.again()
            self._show()

    @Slot()
    def give_up(self) -> None:
        """End without a record."""
        if self._series is not None:
            self._drop("Given up: nothing is recorded.")
            self._show()

    def entered(self, answer: EntryAnswer) -> None:
        """Say what became of it."""
        if not self._uid or self._uid not in answer.uids:
            return
        if answer.recorded:
            self._drop(self._said)
        else:
            self._drop(f"Not recorded: {answer.words}")
        self._show()

    def _begin(self, bags: int) -> None:
        if self._state is None or self._state.run is None or not self.film_lot:
            return
        self._run = self._state.run
        self._series = BagSeries(bags, self._source.dwell_ns)
        self._uid = self._said = ""
        self._bar.begin()
        self._show()

    def _record(self) -> None:
        assert self._series is not None
        assert self._run is not None
        if self._series.wanted == 1:
            bag, fact = self._source.empty_bag(self._run, self.film_lot, self._series.tares[0])
            word = "FITS" if bag.fits else "DOES NOT FIT"
            self._said = f"{bag.shown} {word} ({bag.against})"
        else:
            study, fact = self._source.study(self._run, self.film_lot, self._series.tares)
            self._said = f"Study kept: {study.shown()}"
        self._uid = fact.uid
        self._intents.enter((fact,), self._run.lead)

    def _drop(self, words: str) -> None:
        self._series, self._uid, self._said = None, "", words
        self._bar.end()

    @Slot()
    def _show(self) -> None:
        series = self._series
        run = None if self._state is None else self._state.run
        ready = run is not None and bool(self.film_lot) and series is None
        self.film.setEnabled(series is None)
        self.verb.set(self._verb(run))
        self.message.set("" if run is None else f"{run.product.bag.name}, {run.product.bag.code}")
        self.count.set("" if series is None else f"{len(series.tares)} of {series.wanted}")
        taken = [] if series is None else [one.digits for one in series.tares]
        lines = [taken[at : at + _A_LINE] for at in range(0, len(taken), _A_LINE)]
        self.tares.setText("\n".join("  ".join(line) for line in lines))
        for button in (self.one_button, self.study_button):
            button.setEnabled(ready)
        self.one_button.strong = ready
        self.again_button.setEnabled(series is not None and bool(series.tares))
        self.stop_button.setEnabled(series is not None)
        self.one_button.update()

    def _verb(self, run: Run | None) -> str:
        series = self._series
        if series is not None:
            if series.done:
                return "LIFT THE BAG OFF"
            return "PUT AN EMPTY BAG ON" if series.waits_for_bag else "EMPTY THE PAN"
        if run is None:
            return "NO RUN IS OPEN"
        return self._said or ("WEIGH AN EMPTY BAG" if self.film_lot else "SCAN THE FILM LOT")
