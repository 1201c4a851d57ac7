"""The page of QA: inbox, rejects, holds, checks, complaints, reference tests, and who signs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol, TypeVar

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.facts import Fact
from station.core.inbox_items import Where
from station.errors import StationError
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.pan_bar import PanBar
from station.screens.quality_checks import QaPanel
from station.screens.quality_holds import HoldsPanel
from station.screens.quality_host import Asked
from station.screens.quality_inbox import InboxPanel
from station.screens.quality_inspector import InspectorPanel
from station.screens.quality_look_up import LookUpPanel
from station.screens.quality_rejects import RejectsPanel
from station.screens.quality_sources import (
    HoldsSource,
    InboxSource,
    InspectorSource,
    QaSource,
    RejectsSource,
)
from station.screens.theme import KEY_MM, LIGHT, Face, Palette, Ruler
from station.screens.widgets.sheet import Message, Page, Text
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton
from station.screens.widgets.wait_card import WaitCard

T = TypeVar("T")
_TABS = ("INBOX", "REJECTS", "HOLDS", "CHECKS", "LOOK UP", "INSPECTOR", "WHO")
_INBOX, _REJECTS, _HOLDS, _CHECKS, _LOOK_UP, _INSPECTOR, _WHO = range(len(_TABS))
SIGNERS = ("lead", "qa", "manager")
"""Roles of those who sign here."""
_ELSEWHERE = {Where.LABELS: "LABELS (F5) settles it.", Where.SCALE: "CHECKS (F4) settles it."}
_TWO = 2
_WHO_SIGNS = "Who is touched first signs; who is touched second witnesses or releases too"


@dataclass(frozen=True, slots=True)
class QualitySources:
    """Whom the panels ask."""

    inbox: InboxSource
    rejects: RejectsSource
    holds: HoldsSource
    checks: QaSource
    inspector: InspectorSource


class Panel(Protocol):
    """One panel of the page."""

    def look(self) -> None:
        """It is seen: read anew what it shows."""
        ...

    def recorded(self) -> None:
        """What it entered is durable."""
        ...


class QualityPage(DoorPage):
    """Seven panels under their tabs; implements station.screens.quality_host.Host.

    Args:
        bridge: tells the newest state and what became of entries.
        intents: takes facts to the record.
        sources: whom the panels ask.
        people: of the packhouse; those with a role of :data:`SIGNERS` sign.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        sources: QualitySources,
        people: tuple[Person, ...],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._intents = intents
        self._people = tuple(one for one in people if one.role in SIGNERS)
        self._signing: list[str] = []
        self._waiting: frozenset[str] = frozenset()
        self._told = ""
        self._asked = Asked(self)
        self.bar = PanBar(intents)
        self.inbox = InboxPanel(self, sources.inbox, palette)
        self.rejects = RejectsPanel(self, sources.rejects, sources.inbox, palette)
        self.holds = HoldsPanel(self, sources.holds, sources.inbox, palette)
        self.checks = QaPanel(self, sources.checks, palette)
        self.look_up = LookUpPanel(self, sources.inbox, palette)
        self.inspector = InspectorPanel(self, sources.inspector, self.bar, palette)
        names = [Tile(one.id, one.name, f"{one.id}, {one.role}") for one in self._people]
        self.crew = Tiles(palette, names, columns=3)
        crew = Page.around(palette, Text(palette, _WHO_SIGNS, Face.VERB, 5.2), self.crew)
        self.panels: tuple[Panel, ...] = (
            *(self.inbox, self.rejects, self.holds),
            *(self.checks, self.look_up, self.inspector),
        )
        self.pages = QStackedWidget()
        for page in (
            *(self.inbox, self.rejects, self.holds),
            *(self.checks, self.look_up, self.inspector, crew),
        ):
            self.pages.addWidget(page)
        self.tabs = tuple(
            TouchButton(palette, words, small=f"Ctrl {n}", least_mm=KEY_MM)
            for n, words in enumerate(_TABS, 1)
        )
        self.back_button = TouchButton(palette, "LEAD", small="F10", least_mm=KEY_MM)
        self.message = Message(palette, 4.6)
        self.wait_card = WaitCard(palette, self, self.pages)
        self.wait_card.follow(self._asked.work, self._asked.give_up)
        self.wait_card.given_up.connect(lambda: self.say("Given up."))
        self._compose()
        self._connect(bridge)
        self.go_to(_INBOX)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        top = self.head_row((*self.tabs, self.back_button), 4.0)
        for tab in self.tabs:
            tab.setCheckable(True)
        for button in (*self.tabs, self.back_button):
            button.setMinimumHeight(ruler.touch(KEY_MM))
        whole = QVBoxLayout(self)
        margin = round(ruler.px(5))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(2)))
        whole.addLayout(top)
        whole.addWidget(self.message)
        whole.addWidget(self.pages, 1)
        self.message.hide()

    def _connect(self, bridge: Bridge) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self.go_to(index))
            shortcut = QShortcut(QKeySequence(f"Ctrl+{index + 1}"), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(tab.click)
        self.back_button.clicked.connect(self.left)
        self.crew.touched.connect(self.choose_person)
        self.inbox.wanted.connect(self._settle)
        self._asked.failed.connect(lambda words: self.say(words, refused=True))
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- the host of its panels ---------------------------------------------------------------

    @property
    def who(self) -> str:
        """Id of who signs; empty while nobody is chosen."""
        return self._signing[0] if self._signing else ""

    @property
    def second(self) -> str:
        """Id of the second person; empty while nobody is chosen."""
        return self._signing[1] if len(self._signing) == _TWO else ""

    @property
    def busy(self) -> bool:
        """Whether the record is being asked."""
        return self._asked.busy

    def ask(self, question: Callable[[], T], then: Callable[[T], None]) -> None:
        """Ask the record off Qt's thread."""
        self._asked.ask(question, then)  # type: ignore[arg-type]

    def enter(self, make: Callable[[], tuple[Fact, ...]], told: str) -> None:
        """Make facts and enter them in one commit."""
        if not self.who:
            self.say("Refused. Who signs? Touch WHO and choose your name.", refused=True)
            return
        if self._waiting:
            return  # touched twice before the line answered: one is meant
        try:
            facts = make()
        except (ValueError, StationError) as refused:
            words = str(refused)
            self.say(f"Refused. {words[:1].upper()}{words[1:]}", refused=True)
            return
        self._waiting, self._told = frozenset(fact.uid for fact in facts), told
        self.say("asked the line …")
        self._intents.enter(facts, self.who)

    def say(self, words: str, *, refused: bool = False) -> None:
        """Say something under the tabs."""
        self.message.say(words, refused=refused)
        self.message.setVisible(bool(words))

    # --- what the station says ----------------------------------------------------------------

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of facts of this page."""
        if not self._waiting.intersection(answer.uids):
            return
        self._waiting = frozenset()
        if not answer.recorded:
            self.say(f"Refused. {answer.words[:1].upper()}{answer.words[1:]}", refused=True)
            return
        self.say(self._told)
        index = self.pages.currentIndex()
        if index != _WHO:
            self.panels[index].recorded()

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line: what is on the pan must be known while a test goes on."""
        self.bar.see(state)
        self.checks.show_state(state)
        if self.isVisible() or self.inspector.under_way:
            self.inspector.show_state(state)

    # --- what a person does -------------------------------------------------------------------

    def go_to(self, index: int) -> None:
        """Show one of the panels, read anew."""
        self.pages.setCurrentIndex(index)
        for place, tab in enumerate(self.tabs):
            tab.setChecked(place == index)
        self.say("")
        if index != _WHO and self.isVisible():
            self.panels[index].look()

    @Slot(str)
    def choose_person(self, person: str) -> None:
        """The first who is touched signs, the second one witnesses; a touch again lets one go."""
        if person in self._signing:
            self._signing.remove(person)
        else:
            self._signing = [*self._signing, person][-_TWO:]
        self.crew.check(self._signing)
        self.tabs[_WHO].small = " + ".join(self._signing) or f"Ctrl {_WHO + 1}"
        self.tabs[_WHO].update()

    @Slot(str, str)
    def _settle(self, where: str, key: str) -> None:
        """Go where an open thing is settled."""
        match Where(where):
            case Where.REJECTS:
                self.rejects.day = self.rejects.day.fromisoformat(key)
                self.go_to(_REJECTS)
            case Where.HOLDS:
                self.go_to(_HOLDS)
            case Where.CHECKS:
                self.go_to(_CHECKS)
            case Where.DAY:
                self.inbox.go_to(self.inbox.day.fromisoformat(key))
            case elsewhere:
                self.say(_ELSEWHERE[elsewhere])

    @override
    def stop(self) -> None:
        self.bar.lift()
        self._asked.stop()

    # --- Qt -----------------------------------------------------------------------------------

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.go_to(self.pages.currentIndex())

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        if not self.inspector.under_way:
            self.bar.end()
