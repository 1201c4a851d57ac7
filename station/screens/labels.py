"""The page of labels: doubts, the first-off, scans, rolls, and labels printed again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from station.core.facts import Fact
from station.core.label_life import Fate, OldLabel, Reprint, ReprintReason, Resolve
from station.core.pack import LabelState
from station.core.run import Run
from station.line.state import EntryAnswer, Intents, LineState
from station.screens.bridge import Bridge
from station.screens.doors import DoorPage
from station.screens.labels_doubt import AGAIN, DoubtPage, ReprintPage
from station.screens.labels_first_off import FirstOffPage
from station.screens.labels_roll import RollPage
from station.screens.labels_scan import ScanPage
from station.screens.labels_source import LabelsSource
from station.screens.offer import Person
from station.screens.theme import LIGHT, Palette, Ruler
from station.screens.widgets.sheet import Message, Page
from station.screens.widgets.tiles import Tile, Tiles
from station.screens.widgets.touch_button import TouchButton

_TABS = ("DOUBT", "FIRST-OFF", "SCAN", "ROLL", "REPRINT")
_TWO = 2


class LabelsPage(DoorPage):
    """Five pages; who signs is touched beside them, two people for a first-off.

    Args:
        bridge: tells the newest state and what became of entries.
        intents: takes facts, copies and answers to the line.
        source: draws, reads the record and makes facts.
        people: who may sign.
        palette: colours.
    """

    def __init__(
        self,
        bridge: Bridge,
        intents: Intents,
        source: LabelsSource,
        people: tuple[Person, ...],
        palette: Palette = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(palette, parent)
        self._intents, self._source = intents, source
        self._who: list[str] = []
        self._uid = ""
        self._run: Run | None = None
        self._last = ""
        self.doubt, self.first_off = DoubtPage(palette), FirstOffPage(palette)
        self.scan, self.roll, self.reprint = (
            ScanPage(palette),
            RollPage(palette),
            ReprintPage(palette),
        )
        self.pages = QStackedWidget()
        for page in (self.doubt, self.first_off, self.scan, self.roll, self.reprint):
            self.pages.addWidget(page)
        self.tabs = tuple(TouchButton(palette, words) for words in _TABS)
        self.back_button = TouchButton(palette, "LEAD", small="F5")
        self.people = Tiles(palette, [Tile(one.id, one.name, one.id) for one in people], columns=1)
        self.sign_button = TouchButton(palette, "SIGN", small="hold down", hold=True)
        self.message = Message(palette, 4.6)
        self._compose()
        self._connect(bridge)
        self._say("")
        self._refresh()

    def _compose(self) -> None:
        ruler = Ruler.of(self.screen())
        gap = ruler.touch(6)
        top = self.head_row((*self.tabs, self.back_button), 4.2)
        for tab in self.tabs:
            tab.setCheckable(True)
        signers = Page.around(self._palette, self.people)
        side = QVBoxLayout()
        side.setSpacing(round(ruler.px(4)))
        side.addWidget(signers, 1)
        side.addWidget(self.message)
        self.sign_button.cap_px = ruler.px(6.4)
        self.sign_button.setMinimumHeight(ruler.touch())
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
        whole.addLayout(body, 1)

    def _connect(self, bridge: Bridge) -> None:
        for index, tab in enumerate(self.tabs):
            tab.clicked.connect(lambda _=False, index=index: self.choose(index))
        self.people.touched.connect(self._choose_person)
        self.back_button.clicked.connect(self.left)
        self.sign_button.held.connect(self._sign)
        self.doubt.answered.connect(self._answer)
        self.first_off.refused.connect(self._refuse)
        self.scan.scanned.connect(self._scan)
        self.scan.cleared.connect(self._clear)
        self.roll.explained.connect(self._explain)
        bridge.followed.connect(self.show_state, Qt.ConnectionType.DirectConnection)
        bridge.entered.connect(self.show_answer, Qt.ConnectionType.DirectConnection)

    # --- what the station says ----------------------------------------------------------------

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the run and its last bag."""
        run, last = state.run, state.last.serial if state.last is not None else ""
        changed = (run and run.id) != (self._run and self._run.id)
        self._run, self._last = run, last
        self.reprint.follow(last)
        if changed and self.isVisible():
            self._look()

    @Slot(object)
    def show_answer(self, answer: EntryAnswer) -> None:
        """Say what became of something this page asked for."""
        if self._uid not in answer.uids:
            return
        self._uid = ""
        words = answer.words[:1].upper() + answer.words[1:]
        self._say(words if answer.recorded else f"Refused. {words}", refused=not answer.recorded)
        if answer.recorded:
            self._who = []
        self._look()

    @override
    def showEvent(self, event: QShowEvent) -> None:
        self._say("")
        self.scan.show_scan(None)
        self.reprint.begin(self._last)
        self.choose(self._first_wanted())

    def _first_wanted(self) -> int:
        """The page on which something is to be done, the gravest first."""
        wanted = (
            (bool(self._source.doubts()), self.doubt),
            (bool(self._source.mismatch), self.scan),
            (self._source.roll_wanted, self.roll),
            (self._run is not None and self._source.first_off_wanted, self.first_off),
        )
        page: QWidget = next((page for now, page in wanted if now), self.scan)
        return self.pages.indexOf(page)

    def choose(self, index: int) -> None:
        """Show a page."""
        self.pages.setCurrentIndex(index)
        self._look()

    def _look(self) -> None:
        """Read again what the shown page shows."""
        page = self.pages.currentWidget()
        if page is self.doubt:
            self.doubt.show_labels(self._source.doubts())
        elif page is self.roll:
            self.roll.show_rolls(self._source.roll_inside, self._source.rolls())
            self.roll.scan.setFocus()
        elif page is self.first_off:
            self._show_specimen()
        elif page is self.scan:
            self.scan.show_mismatch(self._source.mismatch)
            self.scan.take_focus()
        else:
            self.reprint.scan.setFocus()
        self._refresh()

    def _show_specimen(self) -> None:
        if self._run is None:
            self.first_off.show_run(None, None, "")
            return
        try:
            specimen = self._source.specimen(self._run)
        except ValueError as refused:
            self.first_off.show_run(self._run, None, str(refused))
            return
        words = "two people sign" if self._source.first_off_wanted else "approved"
        self.first_off.show_run(self._run, specimen, words)

    # --- what people do -----------------------------------------------------------------------

    @Slot(str)
    def _choose_person(self, who: str) -> None:
        if who in self._who:
            self._who.remove(who)
        else:
            two = self.pages.currentWidget() is self.first_off
            self._who = [*self._who, who][-_TWO:] if two else [who]
        self._refresh()
        if self.pages.currentWidget() is self.scan:
            self.scan.take_focus()

    @Slot()
    def _sign(self) -> None:
        page = self.pages.currentWidget()
        if page is self.first_off:
            self._approve()
        elif page is self.roll:
            self._change_roll()
        elif page is self.reprint:
            self._reprint()

    def _approve(self) -> None:
        run = self._run
        if run is None:
            self._say("Refused. No run is open.", refused=True)
        elif len(self._who) < _TWO:
            self._say("Refused. Touch the two who sign, the lead first.", refused=True)
        else:
            lead, second = self._who
            self._enter(lambda: self._source.first_off(run, lead, second))

    @Slot(str)
    def _refuse(self, why: str) -> None:
        run = self._run
        if run is not None:
            self._enter(lambda: self._source.first_off(run, self._who[0], "", why))

    def _change_roll(self) -> None:
        if self.roll.inside:
            self._enter(self._roll_out)
            return
        issued = self.roll.issued
        if not self.roll.roll or issued is None:
            self._say("Refused. Scan the roll and key in its labels first.", refused=True)
            return
        self._enter(lambda: self._source.put_in(self.roll.roll, issued, self._run))

    def _roll_out(self) -> Fact:
        count = self.roll.count
        if count is None:
            raise ValueError("touch and key in all three counts first")
        return self._source.take_out(count, self._run)

    @Slot(str)
    def _explain(self, words: str) -> None:
        account = self.roll.open_one
        if account is not None:
            self._enter(lambda: self._source.explain(account, words))

    @Slot(str)
    def _scan(self, text: str) -> None:
        run = self._run
        if run is None:
            self._say("Refused. No run is open.", refused=True)
            return
        try:
            scan, fact = self._source.scan(run, text, self._last)
        except ValueError as refused:
            self._say(f"Refused. {refused}", refused=True)
            return
        self.scan.show_scan(scan)
        self._ask(fact.uid)
        self._intents.enter((fact,), self._who[0] if self._who else run.operator)

    @Slot(str)
    def _clear(self, why: str) -> None:
        self._enter(lambda: self._source.clear(self._who[0], why))

    @Slot(str, str)
    def _answer(self, serial: str, answer: str) -> None:
        if not self._signed():
            return
        if answer != AGAIN:
            self._ask(serial)
            self._intents.resolve(Resolve(serial, Fate(answer), self._who[0]))
            return
        label = next(one for one in self.doubt.labels if one.serial == serial)
        doubtful = label.label is LabelState.IN_DOUBT
        reason = ReprintReason.NEVER_CAME_OUT if doubtful else ReprintReason.UNREADABLE
        old = OldLabel.NEVER_PRINTED if doubtful else OldLabel.DESTROYED
        self._ask(serial)
        self._intents.reprint(Reprint(serial, reason, old, self._who[0]))

    def _reprint(self) -> None:
        page = self.reprint
        if not page.serial or page.reason is None or page.old is None:
            self._say("Refused. Say which label, why, and where the old one is.", refused=True)
        elif self._signed():
            self._ask(page.serial)
            self._intents.reprint(Reprint(page.serial, page.reason, page.old, self._who[0]))

    def _enter(self, make: Callable[[], Fact]) -> None:
        if not self._signed():
            return
        try:
            fact = make()
        except ValueError as refused:
            words = str(refused)
            self._say(f"Refused. {words[:1].upper()}{words[1:]}.", refused=True)
            return
        self._ask(fact.uid)
        self._intents.enter((fact,), self._who[0])

    def _signed(self) -> bool:
        if not self._who:
            self._say("Refused. Touch who signs.", refused=True)
        return bool(self._who)

    def _ask(self, uid: str) -> None:
        self._uid = uid
        self._say("asked the line …")

    # --- showing it -----------------------------------------------------------------------------

    def _say(self, words: str, *, refused: bool = False) -> None:
        self.message.say(words, refused=refused)
        self.message.setVisible(bool(words))

    def _refresh(self) -> None:
        page = self.pages.currentWidget()
        for index, tab in enumerate(self.tabs):
            tab.setChecked(self.pages.currentIndex() == index)
        self.people.check(self._who)
        words = {
            self.first_off: "APPROVE",
            self.reprint: "PRINT",
            self.roll: "ROLL OUT" if self.roll.inside else "ROLL IN",
        }
        said = words.get(page, "") if page is not None else ""
        self.sign_button.setVisible(bool(said))
        self.sign_button.setText(said)
