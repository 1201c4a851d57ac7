"""The changeover: seals of the run, the count of the run before, a clear line, stops."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.clearance import Gate
from station.core.facts import Fact
from station.core.pauses import Reason
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.change_pages import ClearPage, ClockPage, CountPage, LookPage, StopPage
from station.screens.change_source import ChangeSource, ClockSource
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.seal_strip import SealStrip
from station.screens.widgets.sheet import Message, Page
from station.screens.widgets.touch_button import TouchButton

_TABS = ("COUNT", "CLEAR LINE", "STOP")
_LOOK_MS = 500


class ChangePage(DoorPage):
    """Three pages under the seals of the run; who signs is chosen beside the signature.

    Args:
        bridge: tells the newest state and what became of a signature.
        intents: takes facts to the record.
        source: makes them, and tells what is to be signed.
        leads: who may sign.
        palette: colours.
        clock: knows whether date and time must be confirmed; None leaves that page out.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: ChangeSource,
        leads: tuple[Person, ...],
        palette: Palette = LIGHT,
        clock: ClockSource | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._intents, self._source = intents, source
        self._uid = ""
        self._who = ""
        self.seals = SealStrip(palette)
        self.count, self.clear, self.pause = (
            CountPage(palette),
            ClearPage(palette),
            StopPage(palette),
        )
        self.pages = QStackedWidget()
        for page in (self.count, self.clear, self.pause):
            self.pages.addWidget(page)
            page.changed.connect(self._refresh)
        self._clock = clock
        self.clock = ClockPage(palette)
        self.pages.addWidget(self.clock)
        self.clock.changed.connect(self._refresh)
        names = _TABS if clock is None else (*_TABS, "CLOCK")
        self.tabs = tuple(TouchButton(palette, words) for words in names)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._show_clock)
        self.back_button = TouchButton(palette, "LEAD", small="F8")
        self.people = tuple(TouchButton(palette, one.name, small=one.id) for one in leads)
        self.sign_button = TouchButton(palette, "SIGN", small="hold down", hold=True)
        self.message = Message(palette, 4.4)
        self._compose()
        self._connect(bridge)
        self._refresh()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = self.head_row((*self.tabs, self.back_button), 4.6)
        for button in (*self.tabs, *self.people):
            button.setCheckable(True)
        self.seals.set_unit(ruler.px(1))
        self.seals.setFixedHeight(round(ruler.px(19)))
        side = QVBoxLayout()
        side.setSpacing(gap)
        for button in self.people:
            button.cap_px = ruler.px(4.4)
            button.setMinimumHeight(ruler.touch())
        side.addWidget(Page.around(self._palette, *self.people, gap=gap), 1)
        side.addWidget(self.message)
        self.sign_button.cap_px = ruler.px(7.0)
        self.sign_button.setMinimumHeight(ruler.touch(30))
        side.addWidget(self.sign_button)
        body = QHBoxLayout()
        body.setSpacing(gap)
        body.addWidget(self.pages, 7)
        body.addLayout(side, 3)
        whole = QVBoxLayout(self)
        margin = round(ruler.px(7))
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(gap)
        whole.addLayout(top)
        whole.addWidget(self.seals)
        whole.addLayout(body, 1)

    def _connect(self, bridge: Bridge) -> None:
        for tab in self.tabs:
            tab.clicked.connect(self._go_to_tab)
        for person in self.people:
            person.clicked.connect(self._choose_person)
        self.back_button.clicked.connect(self.left)
        self.sign_button.held.connect(self._sign)
        self.pause.chosen.connect(self._stop)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- what the station says ----------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the seals of the run."""
        self.seals.set(state.seals)

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of a signature of this page."""
        if self._uid not in answer.uids:
            return
        self._uid = ""
        if answer.recorded:
            self._begin()
            self.message.say("Signed and on record.")
        else:
            self.message.say(f"Refused. {answer.words}", refused=True)

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self._begin()
        self._look.start()
        self.message.say("")

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        self._look.stop()

    def _begin(self) -> None:
        """Show what is to be done next."""
        self.count.show_before(self._source.before())
        self.count.clear_count()
        self.clear.begin()
        self.pause.show_pause(self._source.standing)
        wanting = self._source.wanting
        self.clock.begin()
        self._show_clock()
        page: LookPage | CountPage | ClockPage = self.pause
        if self._source.standing is None and wanting:
            page = self.count if wanting[0] is Gate.RECONCILED else self.clear
        if self._clock is not None and self._clock.wanting:
            page = self.clock
        self.pages.setCurrentWidget(page)
        self._refresh()

    @Slot()
    def _show_clock(self) -> None:
        if self._clock is not None:
            self.clock.show_clock(self._clock.shown, self._clock.wanting)

    # --- what a lead does -----------------------------------------------------------------------

    @Slot()
    def _go_to_tab(self) -> None:
        tab = self.sender()
        if isinstance(tab, TouchButton):
            self.pages.setCurrentIndex(self.tabs.index(tab))
        self._refresh()

    @Slot()
    def _choose_person(self) -> None:
        person = self.sender()
        if isinstance(person, TouchButton):
            self._who = person.small
        self._refresh()

    @Slot(str)
    def _stop(self, reason: str) -> None:
        self._enter(lambda: self._source.stop(Reason(reason)))

    @Slot()
    def _sign(self) -> None:
        page = self.pages.currentWidget()
        if page is self.count:
            counted = self.count.counted
            if counted is None:
                self.message.say("Refused. Count the bags first.", refused=True)
                return
            self._enter(lambda: self._source.counted(counted, self.count.explanation))
        elif page is self.clock:
            self._confirm_clock()
        elif page is self.clear:
            self._enter(lambda: self._source.cleared(self.clear.points))
        else:
            self._enter(lambda: self._source.go_on(self.pause.looked))

    def _confirm_clock(self) -> None:
        clock, reason = self._clock, self.clock.reason
        if clock is None or reason is None:
            self.message.say("Refused. Look at another clock and say why first.", refused=True)
            return
        self._enter(lambda: clock.confirmed(reason))

    def _enter(self, make: Callable[[], Fact]) -> None:
        if not self._who:
            self.message.say("Refused. Touch who signs.", refused=True)
            return
        if self._uid:
            return  # touched twice before the line answered: one is meant
        try:
            fact = make()
        except ValueError as refused:
            self.message.say(
                f"Refused. {str(refused)[:1].upper()}{str(refused)[1:]}.", refused=True
            )
            return
        self._uid = fact.uid
        self.message.say("asked the line …")
        self._intents.enter((fact,), self._who)

    # --- showing it -----------------------------------------------------------------------------

    @Slot()
    def _refresh(self) -> None:
        page = self.pages.currentWidget()
        for index, tab in enumerate(self.tabs):
            tab.setChecked(self.pages.currentIndex() == index)
        for person in self.people:
            person.setChecked(person.small == self._who)
        reasons = page is self.pause and self._source.standing is None
        self.sign_button.setEnabled(not reasons)
        self.sign_button.setText("GO ON" if page is self.pause else "SIGN")
