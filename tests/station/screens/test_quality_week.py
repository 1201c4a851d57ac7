"""QA finds and settles each fault planted in a simulated week, on the pages alone."""

from datetime import timedelta
from shutil import copytree

import pytest

from station.app.places import demo_settings
from station.app.quality_gates import Follows, quality_gates
from station.app.week.plan import Planted
from station.config.load import load
from station.core.dispositions import Disposition
from station.core.journal import EntryKind
from station.core.pack import Moment, Quality
from station.screens.bridge import Bridge
from station.screens.quality import QualityPage, QualitySources
from station.store.facts import facts
from station.store.ledger import ledger
from station.store.queries import in_doubt, trace_pack
from station.store.writer import StationStore
from tests.station.conftest import WEEK_ENDS
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.quality_rig import PEOPLE, QualityRig

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


class AfterTheWeek:
    """The morning after: later than everything on record."""

    def __init__(self, last):
        self.utc, self.looks = last + timedelta(hours=14), 0

    def now(self):
        self.looks += 1
        at = self.utc + timedelta(seconds=self.looks)
        return Moment(at, 0, "Europe/Dublin", 10**15 + self.looks)

    def monotonic_ns(self):
        return 10**15 + self.looks


class WeekRig(QualityRig):
    """The page over a copy of the week's record."""

    def __init__(self, home, last):
        self.home, self.clock = home, AfterTheWeek(last)
        self.house = load(demo_settings(), WEEK_ENDS)
        settings = self.house.settings
        self.store = StationStore.open(home, settings.site, settings.station, self.clock)
        gates = quality_gates(self.house, home, self.clock, 1)
        self.desks, self.duties, self.entered = gates.desks, gates.duties, []
        self._follow = Follows(home).follow
        self.bridge, self.intents = Bridge(), FakeIntents()
        self.intents.enter = self.enter
        self.page = QualityPage(self.bridge, self.intents, QualitySources(*self.desks), PEOPLE)
        self.page.resize(1024, 768)


@pytest.fixture
def rig(qtbot, week, tmp_path):
    home = copytree(week.home, tmp_path / "home")
    last = max(one.at.utc for one in facts(home, (EntryKind.SCALE_CHECK,), newest=1))
    one = WeekRig(home, last)
    qtbot.addWidget(one.page, before_close_func=lambda page: page.stop())
    one.page.show()
    one.settle()
    yield one
    one.close()


def plant(week, fault):
    return next(one for one in week.planted if one.fault is fault)


def story(rig, day):
    rig.page.inbox.day = day
    rig.tab(0)
    panel = rig.page.inbox
    panel.story_button.click()
    lines = [row.cells[1] for row in panel.table.rows]
    panel.story_button.click()
    return lines


def day_of_bag(rig, serial):
    return trace_pack(rig.home, serial).record.draft.production_day


def test_every_planted_fault_is_found_on_its_day(rig, week):
    checks = plant(week, Planted.SCALE_CHECK)
    lines = story(rig, day_of_bag(rig, checks.first))
    assert any("failed its check" in line for line in lines)
    assert any(line.startswith(f"{checks.bags} bags became suspect") for line in lines)
    held = plant(week, Planted.HELD_LOT)
    lines = story(rig, week.days[2])
    assert any(line.startswith("Held by input lot") for line in lines)
    roll = plant(week, Planted.WRONG_ROLL)
    lines = story(rig, day_of_bag(rig, roll.first))
    assert {f"Scan of label {roll.first}: {word}" for word in ("differs", "cleared")} <= set(lines)
    jump = plant(week, Planted.CLOCK_JUMP)
    lines = story(rig, day_of_bag(rig, jump.first))
    assert any(line.startswith("The clock went back") for line in lines)
    lines = story(rig, week.days[4])
    assert any(line.startswith("An empty bag") and "does not fit" in line for line in lines)
    open_now = [row.cells[1] for row in rig.page.inbox.table.rows]
    assert any(f"{held.bags} bags are held" in line for line in open_now)


def test_rejects_of_the_week_are_decided_and_every_count_reconciles(rig, week):
    burst = plant(week, Planted.BURST_SEAL)
    rig.sign("Q01", "M01")
    total = 0
    for day in week.days:
        rig.page.rejects.day = day
        rig.tab(1)
        panel = rig.page.rejects
        serials = [row.key for row in panel.table.rows]
        total += len(serials)
        if not serials:
            continue
        for serial in serials:
            panel.table.touch(serial)
        panel.decide_button.click()
        panel.decide.choose(Disposition.DUMP)
        panel.decide.reason.setText("opened bags")
        panel.decide.enter_button.held.emit()
        rig.settle()
        panel.bin_button.click()
        for digit in str(len(serials)):
            panel.bin.pad.keys[digit].click()
        panel.bin.enter_button.held.emit()
        rig.settle()
        assert f"counted {len(serials)}, agrees" in panel.bin_state.text()
        panel.bin.pad.digits = ""
    assert total == week.whole.rejects
    assert trace_pack(rig.home, burst.first).quality is Quality.DUMPED
    assert all(not row.open for day in week.days for row in ledger(rig.home, day))
    rig.tab(0)
    assert not any("rejects" in row.cells[1] for row in rig.page.inbox.table.rows)


def test_each_day_is_signed_and_the_holds_of_the_failed_check_stay_visible(rig, week):
    rig.sign("Q01", "M01")
    for day in week.days:
        rig.page.inbox.day = day
        rig.tab(0)
        rig.page.inbox.remark.setText("seen, settled on the rejects and holds pages")
        rig.page.inbox.sign_button.held.emit()
        rig.settle()
    reviews = facts(rig.home, (EntryKind.REVIEW,))
    assert [one.fact.subject for one in reviews] == [day.isoformat() for day in week.days]
    told = [word for one in reviews for word in one.fact.details["happened"]]
    for part in ("failed its check", "clock went back", "differs", "Held by input lot"):
        assert any(part in word for word in told), part
    rig.tab(2)
    held = {one.bags for one in rig.page.holds.list.values() if one.hold}
    assert plant(week, Planted.SCALE_CHECK).bags in held
    assert in_doubt(rig.home) == ()


def test_a_bag_of_the_wrong_roll_is_looked_up_with_its_scan(rig, week):
    roll = plant(week, Planted.WRONG_ROLL)
    rig.tab(4)
    rig.page.look_up.scan.setText(roll.first)
    rig.page.look_up.go_button.click()
    rig.settle()
    around = rig.page.look_up.around.text()
    assert "scan back" in around
    assert "differs" in around
