"""The wizard for a new scale: which it is, its check with weights, its marks, and a signature."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from station.core.metrology.clause import RuleRefused
from station.core.metrology.scale_suitability import Level
from station.line.guided import GuidedCheck
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.checks_words import load_rows, put_on
from station.screens.offer import Person
from station.screens.pan_bar import PanBar
from station.screens.service_source import SwapSource
from station.screens.theme import KEY_MM, Palette, Ruler
from station.screens.widgets.entry_field import EntryField
from station.screens.widgets.fact_page import FactPage
from station.screens.widgets.live_figure import LiveFigure, live
from station.screens.widgets.load_list import LoadList
from station.screens.widgets.sheet import Message, Page
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

_LEVELS = {Level.GOOD: "suits", Level.WARN: "only just suits", Level.REFUSE: "DOES NOT SUIT"}
_FIRST = "A new scale: connect it, touch LOOK, then check it with the test weights."


class SwapPanel(QWidget):
    """Leads through taking a scale into use.

    Args:
        intents: takes the entry.
        source: knows the scale.
        people: who may sign.
        palette: colours.
        bar: keeps bags out meanwhile; its owner lets it see the line.
    """

    def __init__(
        self,
        intents: Intents,
        source: SwapSource,
        people: Sequence[Person],
        palette: Palette,
        bar: PanBar,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._intents, self._source, self._bar = intents, source, bar
        self._guided: GuidedCheck | None = None
        self._state: LineState | None = None
        self._uid = self._ending = self._who = ""
        self.message = Message(palette, 5.0)
        self.figure = LiveFigure(palette)
        self.loads = LoadList(palette)
        self.facts = FactPage(palette)
        self.serial = EntryField(palette, "serial number on its plate")
        self.verified = EntryField(palette, "verified, as in 2026-03-31")
        self.people = Tiles(palette, [Tile(one.id, one.name, one.role) for one in people], 3)
        self._signers = Page.around(palette, self.people)
        self.look_button = TouchButton(palette, "LOOK", small="O")
        self.check_button = TouchButton(palette, "CHECK IT", small="X")
        self.take_button = TouchButton(palette, "TAKE READING", small="T")
        self.sign_button = TouchButton(palette, "TAKE INTO USE", small="hold down", hold=True)
        self._compose()
        self.look_button.clicked.connect(self.look)
        self.check_button.clicked.connect(self.check)
        self.take_button.clicked.connect(self.take)
        self.sign_button.held.connect(self.sign)
        self.people.touched.connect(self._choose)
        self.message.say(_FIRST)
        self._enable()

    @property
    def keyed(self) -> tuple[TouchButton, ...]:
        """Buttons that their own key presses."""
        return (self.look_button, self.check_button, self.take_button)

    @property
    def under_way(self) -> bool:
        """Whether weights are on the scale."""
        return self._guided is not None and self._guided.wanted is not None

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        for part in (self.figure, self.loads):
            part.set_unit(ruler.px(1))
        left = QVBoxLayout()
        left.addWidget(self.figure, 2)
        left.addWidget(self.loads, 4)
        right = QVBoxLayout()
        right.addWidget(self.facts, 3)
        marks = QHBoxLayout()
        marks.addWidget(self.serial, 1)
        marks.addWidget(self.verified, 1)
        right.addLayout(marks)
        right.addWidget(self._signers, 2)
        middle = QHBoxLayout()
        middle.setSpacing(ruler.touch(6))
        middle.addLayout(left, 1)
        middle.addLayout(right, 1)
        foot = QHBoxLayout()
        foot.setSpacing(ruler.touch(6))
        for button in (*self.keyed, self.sign_button):
            button.cap_px = ruler.px(4.6)
            button.setMinimumHeight(ruler.touch(KEY_MM))
            foot.addWidget(button, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(round(ruler.px(3)))
        whole.addWidget(self.message)
        whole.addLayout(middle, 1)
        whole.addLayout(foot)

    def refresh(self) -> None:
        """Show which scale is there and what it suits."""
        fitness = self._source.fitness()
        self.facts.set(
            (
                ("In use", self._source.in_use),
                ("Here", self._source.here),
                *((code, f"{_LEVELS[level]}: {why}") for code, (level, why) in fitness.items()),
            )
        )

    def show_state(self, state: LineState) -> None:
        """Follow the line; a load that stands is taken."""
        self._state = state
        self.figure.set(live(state))
        if self._guided is not None and self._guided.see(state):
            self._show_check()

    @Slot()
    def look(self) -> None:
        """Open the port again, whatever device is there, and ask the scale about itself.

        A check that goes on was of the scale before, and is given up.
        """
        self.stop()
        self._source.look()
        self.message.say("The port is opened again. What the scale says of itself stands beside.")

    @Slot()
    def check(self) -> None:
        """Begin the check, or begin it again."""
        try:
            self._guided = self._source.guided()
        except RuleRefused as refused:
            self.message.say(str(refused), refused=True)
            return
        self._bar.begin()
        self._show_check()

    @Slot()
    def take(self) -> None:
        """Take what the scale shows for the wanted load."""
        if self._guided is not None and self._state is not None:
            why_not = self._guided.take(self._state)
            self._show_check()
            if why_not:
                self.message.say(why_not, refused=True)

    def _choose(self, person: str) -> None:
        self._who = person
        self.people.check([person])
        self._enable()

    @Slot()
    def sign(self) -> None:
        """Record the scale as taken into use, or as refused."""
        assert self._guided is not None
        try:
            swap = self._source.swap(self._guided, self.serial.text(), self.verified.text())
        except (ValueError, RuleRefused) as refused:
            self.message.say(str(refused), refused=True)
            return
        fact = self._source.fact(swap)
        self._uid, self._ending = fact.uid, swap.refusal
        self._intents.enter((fact,), self._who)

    def entered(self, answer: EntryAnswer) -> None:
        """Say what became of it."""
        if not self._uid or self._uid not in answer.uids:
            return
        self._uid = ""
        if not answer.recorded:
            self.message.say(f"Not recorded: {answer.words}", refused=True)
        elif self._ending:
            self.message.say(f"Recorded as refused: {self._ending}", refused=True)
        else:
            self.message.say(
                "IN USE. Bags since the last good check of the scale before are covered by no check"
                " of it any more: QA decides about them. Put its number into station.toml."
            )
            self.serial.clear()
            self.verified.clear()
        self._guided = None
        self._bar.end()
        self.loads.set(())
        self._enable()

    def stop(self) -> None:
        """Give up a check that goes on; bags are taken again once the pan is empty."""
        self._guided = None
        self._bar.end()
        self.loads.set(())
        self._enable()

    def _show_check(self) -> None:
        assert self._guided is not None
        self.loads.set(load_rows(self._guided))
        done = self._guided.wanted is None
        ending = ", then its number, its verification and who answers for it" if done else ""
        self.message.say(put_on(self._guided) + ending)
        self._enable()

    def _enable(self) -> None:
        whole = self._guided is not None and self._guided.wanted is None
        self.take_button.setEnabled(self.under_way)
        self.sign_button.setEnabled(whole and bool(self._who))
        self.check_button.strong = self._guided is None
        self.sign_button.strong = self.sign_button.isEnabled()
        for button in (self.check_button, self.sign_button):
            button.update()
