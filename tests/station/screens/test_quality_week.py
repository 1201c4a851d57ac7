"""QA finds and settles each fault planted in a simulated week, on the pages alone."""

from shutil import copytree

import pytest
from argon2 import PasswordHasher

from station.access import hashing
from station.app.week.plan import Planted
from station.core.checks.suspect import Decision
from station.core.journal import EntryKind
from station.core.pack import Quality
from station.store.facts import facts
from station.store.queries import in_doubt, trace_pack
from station.store.verify import verify
from tests.station.screens.week_rig import WeekRig
from tests.station.screens.week_settled import settle_week

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture(scope="module")
def rig(qapp, week, tmp_path_factory):
    home = copytree(week.home, tmp_path_factory.mktemp("settled") / "home")
    last = max(one.at.utc for one in facts(home, (EntryKind.SCALE_CHECK,), newest=1))
    with pytest.MonkeyPatch.context() as quick:
        quick.setattr(hashing, "_HASHER", PasswordHasher(1, 64, 1))  # fifty PINs are signed here
        one = WeekRig(home, last)
        yield one
        one.close()


@pytest.fixture(scope="module")
def settled(rig, week):
    return settle_week(rig, week)


def plant(week, fault):
    return next(one for one in week.planted if one.fault is fault)


def test_every_planted_fault_is_found_on_the_pages(settled):
    assert set(settled.found) == set(Planted)


def test_week_report_and_pages_count_the_same(settled):
    assert len(set(settled.before)) == 1, settled.before


def test_what_was_dumped_and_nothing_else_left_the_totals(settled, week):
    reported, shown = settled.after
    assert reported == shown
    assert 0 < settled.bags <= plant(week, Planted.LOW_TARE).bags
    assert reported.packs == week.whole.bags
    assert reported.rejects == week.whole.rejects + settled.bags
    assert reported.labels == week.whole.labels
    assert reported.grams == week.whole.grams - settled.dumped
    assert settled.dumped > 0


def test_nothing_is_open_and_the_release_list_is_free(settled):
    assert settled.left == ()
    assert settled.list == ()


def test_every_bag_has_its_end(rig, settled, week):
    ends = {
        Planted.SCALE_CHECK: Quality.RELEASED,
        Planted.BURST_SEAL: Quality.DUMPED,
        Planted.WRONG_ROLL: Quality.DUMPED,
        Planted.CLOCK_JUMP: Quality.RELEASED,
        Planted.LOW_TARE: Quality.DUMPED,
    }
    for fault, quality in ends.items():
        assert trace_pack(rig.home, plant(week, fault).first).quality is quality, fault
    assert in_doubt(rig.home) == ()


def test_two_people_signed_each_release_and_qa_each_day(rig, settled, week):
    releases = facts(rig.home, (EntryKind.RELEASE,))
    assert len(releases) == len(week.runs) + 4
    assert {(one.who, one.fact.details["second"]) for one in releases} == {("Q01", "M01")}
    reviews = facts(rig.home, (EntryKind.REVIEW,))
    assert [one.fact.subject for one in reviews] == [day.isoformat() for day in week.days]
    told = [word for one in reviews for word in one.fact.details["happened"]]
    for part in ("failed its check", "clock went back", "differs", "foreign body", "does not fit"):
        assert any(part in word for word in told), part
    decided = [one.fact.result for one in facts(rig.home, (EntryKind.SUSPECT,))]
    assert decided.count(str(Decision.HOLD_STAYS)) == 2


def test_the_record_is_whole_after_all_that(rig, settled):
    assert verify(rig.home).whole
