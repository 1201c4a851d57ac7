"""The lots: what is on the line, what comes in, and who says so."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.facts import Fact
from station.core.line_lots import LotMove
from station.core.lots import LotError, LotStatus
from station.core.receiving import Notes
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.lots_line import LineLotsPage
from station.screens.lots_receive import ReceivePage
from station.screens.lots_source import LotsSource
from station.screens.offer import Person
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.sheet import Message, Page
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

_TABS = ("LINE", "RECEIVE", "WHO")
_LOOK_MS = 1_000
_HELD_HERE, _RELEASED_HERE = "held at the line", "released at the line by QA"
_RELEASERS = ("qa", "manager")
"""Roles that may release a lot."""


class LotsPage(DoorPage):
    """Three pages under their tabs.

    Args:
        bridge: tells the newest state and what became of entered facts.
        intents: takes facts to the record.
        source: makes them, and knows the lots.
        people: who may say so.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: LotsSource,
        people: tuple[Person, ...],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._intents, self._source = intents, source
        self._waiting: frozenset[str] = frozenset()
        self._told, self._receiving = "", False
        self._people = people
        self.who = ""
        """Id of the person who acts."""
        self.line = LineLotsPage(palette, source)
        self.receive = ReceivePage(palette, source)
        self.crew = Tiles(palette, [Tile(one.id, one.name, one.id) for one in people], columns=3)
        self.pages = QStackedWidget()
        for page in (self.line, self.receive, Page.around(palette, self.crew)):
            self.pages.addWidget(page)
        self.tabs = tuple(TouchButton(palette, words) for words in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F6")
        self.message = Message(palette, 5.0)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._compose()
        self._connect(bridge)
        self.go_to(0)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = self.head_row((*self.tabs, self.back_button), 4.6)
        for button in (*self.tabs, self.back_button):
            button.setMinimumHeight(ruler.touch())
        for tab in self.tabs:
            tab.setCheckable(True)
        self.message.setMinimumHeight(round(ruler.px(7)))
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(gap // 2)
        whole.addLayout(top)
        whole.addWidget(self.message)
        whole.addWidget(self.pages, 1)

    def _connect(self, bridge: Bridge) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self.go_to(index))
        self.back_button.clicked.connect(self.left)
        self.line.moved.connect(self._move)
        self.line.hold.connect(self._hold)
        self.line.refused.connect(self._refuse)
        self.receive.taken.connect(self._take)
        self.receive.refused.connect(self._refuse)
        self.receive.noted.connect(lambda: self.message.say(""))
        self.crew.touched.connect(self.choose_person)
        self._look.timeout.connect(self.line.refresh)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- what the station says ----------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Whoever leads the run acts, until another person is chosen."""
        if not self.who and state.run is not None:
            self.choose_person(state.run.lead)

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of facts of this page."""
        if not self._waiting.intersection(answer.uids):
            return
        self._waiting = frozenset()
        if answer.recorded:
            self.message.say(self._told)
            self.line.begin()
            if self._receiving:
                self.receive.begin()
        else:
            self._refuse(answer.words)

    # --- what a person does -------------------------------------------------------------------

    def go_to(self, index: int) -> None:
        """Show one of the pages."""
        self.pages.setCurrentIndex(index)
        for place, tab in enumerate(self.tabs):
            tab.setChecked(place == index)
        self.message.say("")
        self._take_focus()

    def _take_focus(self) -> None:
        """Keys, and what a scanner types, go to the field of the page shown."""
        (self.line.scan, self.receive.scan, self.crew)[self.pages.currentIndex()].setFocus()

    @Slot(str)
    def choose_person(self, person: str) -> None:
        """Let one person act."""
        self.who = person
        self.crew.check([person])
        name = next((one.name for one in self._people if one.id == person), person)
        self.tabs[2].small = name
        self.tabs[2].update()

    @Slot(object)
    def _move(self, moves: tuple[LotMove, ...]) -> None:
        last = moves[-1]
        self._enter(self._source.moves(moves), f"Lot {last.lot}: {last.move}, on record.")

    @Slot(str)
    def _hold(self, lot: str) -> None:
        known = self._source.lot(lot)
        if known is not None and known.status is LotStatus.HELD:
            self._release(lot)
            return
        words = f"Lot {lot} is held, and every bag that may hold some of it."
        self._enter(self._source.hold(lot, _HELD_HERE), words)

    def _release(self, lot: str) -> None:
        if not any(one.id == self.who and one.role in _RELEASERS for one in self._people):
            self._refuse("QA or a manager releases a lot: touch WHO and choose your name")
            return
        try:
            facts = self._source.release(lot, _RELEASED_HERE)
        except LotError as why:
            self._refuse(str(why))
            return
        self._enter(facts, f"Lot {lot} is released, and the bags that were held with it.")

    @Slot(object, str)
    def _take(self, notes: Notes, hold: str) -> None:
        try:
            code, facts = self._source.received(notes, hold)
        except LotError as why:
            self._refuse(str(why))
            return
        told = f"Lot {code} received and held." if hold else f"Lot {code} received."
        self._enter(facts, told, receiving=True)

    def _enter(self, facts: tuple[Fact, ...], told: str, *, receiving: bool = False) -> None:
        if not self.who:
            self._refuse("who says so? Touch WHO and choose your name")
            return
        if self._waiting:
            return  # touched twice before the line answered: one is meant
        self._waiting, self._told = frozenset(fact.uid for fact in facts), told
        self._receiving = receiving
        self.message.say("asked the line …")
        self._intents.enter(facts, self.who)

    @Slot(str)
    def _refuse(self, words: str) -> None:
        self.message.say(f"Refused. {words[:1].upper()}{words[1:]}", refused=True)

    # --- Qt -----------------------------------------------------------------------------------

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.line.refresh()
        self._look.start()
        self._take_focus()

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        self._look.stop()
