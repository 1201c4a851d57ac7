"""The page of alarms: a short list, gravest first, with its two answers."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, tzinfo
from typing import Protocol

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.alarms import SHELVES_MINUTES, Alarm, Priority
from station.core.facts import Fact
from station.line.state import EntryAnswer, Intents
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.offer import Person
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.alarm_list import AlarmList, AlarmRow, AlarmsView
from station.screens.widgets.sheet import Message, Page
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

NONE = mark("No alarm stands. What needs nobody is kept as an event.")
SEEN, SHELVE = mark("I HAVE SEEN IT"), mark("SHELVE")
CHOOSE = mark("touch an alarm first")
WHO = mark("touch who you are first")
_LOOK_MS = 1_000
_COLUMNS = 5


class AlarmSource(Protocol):
    """Knows the alarms that stand, and makes entries about them."""

    @property
    def open(self) -> tuple[Alarm, ...]:
        """The alarms that stand, the gravest first."""
        ...

    @property
    def now(self) -> datetime:
        """The time, in UTC."""
        ...

    def acknowledge(self, alarm: Alarm) -> Fact:
        """The entry that somebody has seen an alarm."""
        ...

    def shelve(self, alarm: Alarm, minutes: int) -> Fact:
        """The entry that an alarm is put off.

        Raises:
            ValueError: it may not be, or not for so long.
        """
        ...


class AlarmsPage(DoorPage):
    """Who answers, a list, and the answers.

    Args:
        bridge: tells what became of entries.
        intents: takes them.
        source: knows the alarms.
        people: who may answer.
        zone: of the plant, for times of day.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: AlarmSource,
        people: Sequence[Person],
        zone: tzinfo,
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._intents, self._source, self._zone = intents, source, zone
        self._chosen = self._who = ""
        self._asked: set[str] = set()
        self.list = AlarmList(palette)
        self.people = Tiles(palette, [Tile(one.id, one.name, one.id) for one in people], _COLUMNS)
        self.message = Message(palette, 4.6)
        self.seen_button = TouchButton(palette, SEEN)
        self.shelve_buttons = {
            minutes: TouchButton(palette, SHELVE, small=f"{minutes} min")
            for minutes in SHELVES_MINUTES
        }
        self.back_button = TouchButton(palette, "LEAD", small="F2")
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self.refresh)
        self._compose()
        self.list.touched.connect(self.choose)
        self.people.touched.connect(self._choose_person)
        self.seen_button.clicked.connect(self._acknowledge)
        for minutes, button in self.shelve_buttons.items():
            button.clicked.connect(lambda _=False, minutes=minutes: self._shelve(minutes))
        self.back_button.clicked.connect(self.left)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        margin, gap = round(ruler.px(7)), ruler.touch(6)
        top = QHBoxLayout()
        top.setSpacing(gap)
        top.addWidget(Page.around(self._palette, self.people), 1)
        self.back_button.cap_px = ruler.px(4.8)
        top.addWidget(self.back_button, 0, Qt.AlignmentFlag.AlignTop)
        foot = QHBoxLayout()
        foot.setSpacing(gap)
        for button in (self.seen_button, *self.shelve_buttons.values()):
            button.cap_px = ruler.px(4.8)
            button.setMinimumHeight(ruler.touch())
            foot.addWidget(button, 2 if button is self.seen_button else 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(margin, margin, margin, margin)
        whole.setSpacing(round(ruler.px(4)))
        whole.addLayout(top)
        whole.addWidget(self.list, 1)
        whole.addWidget(self.message)
        whole.addLayout(foot)

    @Slot()
    def refresh(self) -> None:
        """Show the alarms as they stand."""
        now, alarms = self._source.now, self._source.open
        if all(alarm.uid != self._chosen for alarm in alarms):
            self._chosen = alarms[0].uid if len(alarms) == 1 else ""
        rows = tuple(sorted((self._row(alarm, now) for alarm in alarms), key=lambda row: row.quiet))
        self.list.set(AlarmsView(rows, self._chosen, NONE))
        one = self._alarm()
        self.seen_button.setEnabled(one is not None and not one.acknowledged)
        self.seen_button.strong = self.seen_button.isEnabled()
        high = one is not None and one.rule.priority is Priority.HIGH
        for button in self.shelve_buttons.values():
            button.setEnabled(one is not None and not high and not one.shelved(now))
        self.people.check([self._who])

    def _row(self, alarm: Alarm, now: datetime) -> AlarmRow:
        state = f"since {alarm.since.astimezone(self._zone):%H:%M}"
        if alarm.shelved_until is not None and alarm.shelved(now):
            state = f"shelved until {alarm.shelved_until.astimezone(self._zone):%H:%M}"
        elif alarm.acknowledged:
            state += f", seen by {alarm.acknowledged}"
        quiet = bool(alarm.acknowledged) or alarm.shelved(now)
        rule = alarm.rule
        return AlarmRow(
            alarm.uid, rule.priority, alarm.kind, alarm.words, rule.answer, state, quiet
        )

    @Slot(str)
    def choose(self, uid: str) -> None:
        """Choose an alarm to answer."""
        self._chosen = uid
        self.message.say("")
        self.refresh()

    @Slot(str)
    def _choose_person(self, who: str) -> None:
        self._who = who
        self.people.check([who])

    def _alarm(self) -> Alarm | None:
        return next((one for one in self._source.open if one.uid == self._chosen), None)

    @Slot()
    def _acknowledge(self) -> None:
        alarm = self._alarm()
        if alarm is not None:
            self._enter(self._source.acknowledge(alarm))

    def _shelve(self, minutes: int) -> None:
        alarm = self._alarm()
        if alarm is None:
            self.message.say(CHOOSE, refused=True)
            return
        try:
            self._enter(self._source.shelve(alarm, minutes))
        except ValueError as refused:
            self.message.say(str(refused), refused=True)

    def _enter(self, fact: Fact) -> None:
        if not self._who:
            self.message.say(WHO, refused=True)
            return
        self._asked.add(fact.uid)
        self._intents.enter((fact,), self._who)

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of an entry of this page."""
        if self._asked.isdisjoint(answer.uids):
            return
        self._asked.difference_update(answer.uids)
        self.message.say("" if answer.recorded else answer.words, refused=not answer.recorded)
        self.refresh()

    @override
    def stop(self) -> None:
        self._look.stop()

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self.message.say("")
        self.refresh()
        self._look.start()

    @override
    def hideEvent(self, event: QHideEvent) -> None:
        self._look.stop()
