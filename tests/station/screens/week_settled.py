"""What QA does on the evening after a simulated week, by hand on the pages, and what is then left.

Each planted fault is looked for where QA would see it, settled and signed for. Buttons that are
held are only told that they were held, since each would take a second.
"""

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from PySide6.QtCore import Qt

from station.app.week.plan import Planted
from station.app.week.tally import Plant, WeekMade
from station.core.dispositions import Disposition
from station.core.holds import Releasable, ScopeKind
from station.core.mass import Mass
from station.reports.period import period
from station.store.queries import summary
from tests.station.screens.week_rig import SIGNERS, WeekRig, touch, touch_row, write

INBOX, REJECTS, HOLDS, CHECKS, LOOK_UP = range(5)
ALL = "all days"
_BAGS = re.compile(r": (\d+) bags, (\d+) set aside")


@dataclass(frozen=True, slots=True)
class Totals:
    """Bags of the week, those set aside, labels, and exact grams of bags that may be sold."""

    packs: int
    rejects: int
    labels: int
    grams: Decimal


@dataclass(frozen=True, slots=True)
class Settled:
    """What was seen.

    Args:
        found: of each planted fault, the line of a page that shows it.
        before: totals before anything was settled: of the week's own count, of the report, and of
            the pages.
        after: totals of the report and of the pages at the end.
        dumped: grams of the bags that QA threw away.
        bags: how many those were.
        left: words of the inbox at the end.
        list: keys of the release list at the end.
    """

    found: dict[Planted, str]
    before: tuple[Totals, ...]
    after: tuple[Totals, ...]
    dumped: Decimal
    bags: int
    left: tuple[str, ...]
    list: tuple[str, ...]


def settle_week(rig: WeekRig, week: WeekMade, say: Callable[[str], None] = print) -> Settled:
    """Find and settle every planted fault; raises AssertionError where a page does not show one."""
    hands = _Hands(rig, week)
    rig.open_door(Qt.Key.Key_F10)
    touch(rig.page.tabs[-1])
    for who in SIGNERS:
        touch(rig.page.crew.buttons[who])
    before = (hands.counted(), hands.reported(), hands.shown())
    say(f"the pages show {before[-1]}")
    found = hands.find_all()
    for fault, words in found.items():
        say(f"{fault}: {words}")
    dumped = hands.dump(found[Planted.LOW_TARE])
    hands.hold_of_the_clock()
    for day in week.days:
        hands.decide_rejects(day)
    say("rejects are decided and the bins are counted")
    hands.release_holds()
    hands.release_runs()
    say("holds and runs are released")
    for day in week.days:
        hands.sign_day(day)
    left, listed = hands.left()
    bags = _bags(found[Planted.LOW_TARE])
    return Settled(found, before, (hands.reported(), hands.shown()), dumped, bags, left, listed)


class _Hands:
    """QA's hands on the pages."""

    def __init__(self, rig: WeekRig, week: WeekMade) -> None:
        self.rig, self.week, self.page = rig, week, rig.page

    # --- totals -------------------------------------------------------------------------------

    def counted(self) -> Totals:
        whole = self.week.whole
        return Totals(whole.bags, whole.rejects, whole.labels, whole.grams)

    def reported(self) -> Totals:
        home = self.rig.home
        whole, counts = period(home, None, None, {}).sums.whole, summary(home)
        assert counts.packs == whole.packs
        return Totals(whole.packs, whole.set_aside, whole.labels, Decimal(whole.net) / 10**6)

    def shown(self) -> Totals:
        """Bags by the inbox, rejects by their list, labels and kilograms by the manager's page."""
        packs = rejects = listed = 0
        for day in self.week.days:
            self.page.inbox.day = day
            self.tab(INBOX)
            said = _BAGS.search(self.page.inbox.state.text())
            packs, rejects = packs + int(said[1]), rejects + int(said[2])
            self.page.rejects.day = day
            self.tab(REJECTS)
            listed += len(self.page.rejects.table.rows)
        assert rejects == listed
        self.rig.open_door(Qt.Key.Key_F11)
        manager = self.rig.manager
        while manager.period_button.text().lower() != ALL:
            touch(manager.period_button)
            self.rig.settle()
        rows = {row.name: row for row in manager.figures.view}
        assert (rows["bags"].value, rows["bags"].note) == (str(packs), f"{rejects} set aside")
        net = Mass.parse(rows["net"].value)
        labels = int(rows["net"].note.split()[0])
        self.rig.open_door(Qt.Key.Key_F10)
        return Totals(packs, rejects, labels, net.grams)

    # --- finding ------------------------------------------------------------------------------

    def find_all(self) -> dict[Planted, str]:
        lines = [*self.open_things(), *(line for day in self.week.days for line in self.story(day))]
        holds = [f"{one.bags} bags: {one.reason} ({one.subject})" for one in self.holds()]
        plants = {one.fault: one for one in self.week.planted}
        assert set(plants) == set(Planted)
        roll, jump = plants[Planted.WRONG_ROLL], plants[Planted.CLOCK_JUMP]
        lot, check = plants[Planted.HELD_LOT], plants[Planted.SCALE_CHECK]
        found = {
            Planted.SCALE_CHECK: _one(lines, f"{check.bags} bags became suspect: bench scale 1"),
            Planted.HELD_LOT: _one(holds, f"({lot.name})", "foreign body"),
            Planted.BURST_SEAL: self.reject_line(plants[Planted.BURST_SEAL], "burst seal"),
            Planted.WRONG_ROLL: _one(lines, f"Scan of label {roll.first}: differs"),
            Planted.CLOCK_JUMP: _one(lines, "The clock went back"),
            Planted.LOW_TARE: _one(holds, "an empty bag weighs", "6 g more"),
        }
        self.look_up(roll.first, "scan back")
        self.look_up(jump.first, "THE BAG")
        return found

    def open_things(self) -> list[str]:
        self.tab(INBOX)
        return [row.cells[1] for row in self.page.inbox.table.rows]

    def story(self, day) -> list[str]:
        inbox = self.page.inbox
        inbox.day = day
        self.tab(INBOX)
        touch(inbox.story_button)
        lines = [row.cells[1] for row in inbox.table.rows]
        touch(inbox.story_button)
        return lines

    def holds(self) -> list[Releasable]:
        self.tab(HOLDS)
        return [one for one in self.page.holds.list.values() if one.hold]

    def reject_line(self, plant: Plant, reason: str) -> str:
        """Scan the ticket of a bag that was set aside: its row and its reason are shown."""
        self.tab(REJECTS)
        panel = self.page.rejects
        panel.scan.take("]d2", f"90REJECT/{plant.first}")
        self.rig.settle()
        assert panel.table.chosen == (plant.first,)
        return _one(panel.words.text().splitlines(), f"set aside: {reason}")

    def look_up(self, serial: str, around: str) -> None:
        self.tab(LOOK_UP)
        panel = self.page.look_up
        write(panel.scan, serial)
        touch(panel.go_button)
        self.rig.settle()
        assert panel.found.bag.serial == serial
        assert around in panel.around.text()

    # --- settling -----------------------------------------------------------------------------

    def dump(self, why: str) -> Decimal:
        """Throw the bags with the low tare away: nobody knows what is in each."""
        bags = _bags(why)
        one = next(one for one in self.holds() if "an empty bag weighs" in one.reason)
        before = self.reported()
        panel = self.page.holds
        touch_row(panel.table, one.key)
        touch(panel.ready_release.buttons["not fit to sell"])
        self.held(panel.dump_button)
        self.said(f"{bags} bags are dumped")
        after = self.reported()
        assert after.rejects == before.rejects + bags
        return before.grams - after.grams

    def hold_of_the_clock(self) -> None:
        """Hold what was packed while the clock was wrong, until its times were looked at."""
        plant = next(one for one in self.week.planted if one.fault is Planted.CLOCK_JUMP)
        self.tab(HOLDS)
        panel = self.page.holds
        touch(panel.hold_button)
        touch(panel.scopes.buttons[str(ScopeKind.SERIALS)])
        for field, words in (
            (panel.first, plant.first),
            (panel.last, plant.last),
            (panel.why_hold, "clock was 47 min on"),
        ):
            write(field, words)
        self.held(panel.enter_button)
        self.said("Held: serials")

    def decide_rejects(self, day) -> None:
        panel = self.page.rejects
        panel.day = day
        self.tab(REJECTS)
        if not panel.open_button.isChecked():
            touch(panel.open_button)
        serials = [row.key for row in panel.table.rows]
        for serial in set(serials) - set(panel.table.chosen):
            touch_row(panel.table, serial)
        self.rig.settle()
        if serials:
            touch(panel.decide_button)
            touch(panel.decide.ends.buttons[str(Disposition.DUMP)])
            write(panel.decide.reason, "opened")
            self.held(panel.decide.enter_button)
            self.said("dumped")
        touch(panel.open_button)
        touch(panel.bin_button)
        for digit in str(len(panel.rows)):
            touch(panel.bin.pad.keys[digit])
        self.held(panel.bin.enter_button)
        assert f"counted {len(panel.rows)}, agrees" in panel.bin_state.text(), (
            panel.bin_state.text()
        )
        panel.bin.pad.digits = ""

    def release_holds(self) -> None:
        while held := self.holds():
            self.release(held[0], "checked again, good")

    def release_runs(self) -> None:
        self.tab(HOLDS)
        runs = list(self.page.holds.list.values())
        assert len(runs) == len(self.week.runs)
        for run in runs:
            self.release(run, "complete")

    def release(self, one: Releasable, why: str) -> None:
        panel = self.page.holds
        touch_row(panel.table, one.key)
        assert panel.words.text().endswith("Nothing keeps it."), panel.words.text()
        touch(panel.ready_release.buttons[why])
        self.held(panel.release_button)
        self.said("are released")

    def sign_day(self, day) -> None:
        inbox = self.page.inbox
        inbox.day = day
        self.tab(INBOX)
        self.held(inbox.sign_button)
        assert "by Q01" in inbox.state.text(), (inbox.state.text(), self.page.message.text())

    def left(self) -> tuple[tuple[str, ...], tuple[str, ...]]:
        words = tuple(self.open_things())
        self.tab(HOLDS)
        return words, tuple(row.key for row in self.page.holds.table.rows)

    # --- hands --------------------------------------------------------------------------------

    def tab(self, index: int) -> None:
        touch(self.page.tabs[index])
        self.rig.settle()

    def held(self, button) -> None:
        assert button.isVisible()
        assert button.isEnabled()
        button.held.emit()
        self.rig.settle()

    def said(self, words: str) -> None:
        assert words in self.page.message.text(), self.page.message.text()


def _bags(hold: str) -> int:
    return int(hold.split()[0])


def _one(lines: list[str], *parts: str) -> str:
    """The first line with all these parts."""
    found = next((line for line in lines if all(part in line for part in parts)), None)
    assert found is not None, (parts, lines)
    return found
