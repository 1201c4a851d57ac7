"""A whole week, with every planted fault, six years later: what is settled goes, the rest stays."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from shutil import copytree
from sqlite3 import connect
from types import SimpleNamespace

import pytest

from station.app.week.tally import WeekMade
from station.clock import SystemClock
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.store.engine import database, reading
from station.store.label_rolls import roll_accounts
from station.store.purge import Order, purge
from station.store.rebuild import rebuild
from station.store.recall import frozen_runs
from station.store.suspects import filed_windows
from station.store.verify import verify
from station.store.writer import StationStore
from tests.station.app.test_start import Watched, started

NAMES = ("QH", "A1")


class LaterClock:
    """The plant's clock in some years."""

    def __init__(self) -> None:
        self._clock = SystemClock("Europe/Dublin")

    def now(self) -> Moment:
        now = self._clock.now()
        return replace(now, utc=now.utc + timedelta(days=6 * 366))

    def monotonic_ns(self) -> int:
        return self._clock.monotonic_ns()


@pytest.fixture(scope="module")
def gone(week: WeekMade, tmp_path_factory) -> SimpleNamespace:
    """The week purged, and a copy as it was before."""
    folder = tmp_path_factory.mktemp("later")
    home, key, clock = copytree(week.home, folder / "home"), folder / "home.key", LaterClock()
    (given,) = week.home.parent.glob(f"{week.home.name}.key")
    key.write_bytes(given.read_bytes())
    key.chmod(0o600)
    with StationStore.open(home, *NAMES, clock, key) as store:
        calls = [Fact(EntryKind.CALL, f"call-{n}", f"call {n}", "made") for n in range(1300)]
        store.record(calls, clock.now(), "L01")
        last = frozen_runs(home, (week.runs[-1],))[week.runs[-1]]
        today = replace(last, id=new_uid(clock.now()))  # years are counted back from it
        store.start_run(today, clock.now())
        store.end_run(today.id, clock.now(), "L01")
    before = copytree(home, folder / "before")
    (folder / "out").mkdir()
    order = Order(5, None, folder / "out", "M01", "the years are over")
    done = purge(home, NAMES, clock, key, order, lambda *_: None)
    return SimpleNamespace(home=home, before=before, done=done, today=today.id)


def rows(home: Path, statement: str) -> list[tuple]:
    with closing(connect(database(home))) as file:
        return file.execute(statement).fetchall()


def test_what_is_settled_went_and_the_record_is_whole(gone, week):
    going, staying = gone.done.plan.going, gone.done.plan.staying
    assert len(going) + len(staying) == len(week.runs)
    assert len(going) >= 4
    assert verify(gone.home).whole
    rebuild(gone.home)
    assert verify(gone.home).whole


def test_what_keeps_the_others_is_said_in_words(gone):
    words = " ".join(why for one in gone.done.plan.staying for why in one.stops)
    for reason in ("nobody decided about reject", "is open", "held is bag", "is held", "newest"):
        assert reason in words, reason


def test_lots_holds_windows_and_cases_are_as_they_were(gone):
    for statement in (
        "SELECT * FROM lot ORDER BY code",
        "SELECT hold, epoch, first, last, released FROM hold_range ORDER BY id",
        "SELECT sscc, bags, net_ug, label, undone FROM unit ORDER BY id",
        "SELECT number, customer, state FROM shipment ORDER BY id",
        "SELECT kind, key FROM standing WHERE kind <> 'label' ORDER BY 1, 2",
        "SELECT kind, count(*) FROM fact WHERE kind IN ('suspect window', 'pause', 'setting')"
        " GROUP BY kind",
    ):
        assert rows(gone.home, statement) == rows(gone.before, statement), statement
    assert [one for one, _ in filed_windows(gone.home)] == [
        one for one, _ in filed_windows(gone.before)
    ]


def test_no_roll_comes_out_short_because_its_labels_went(gone):
    before = {one.uid: one for one in roll_accounts(gone.before)}
    for one in roll_accounts(gone.home):
        assert one == before[one.uid]


def test_a_start_takes_no_more_steps_than_before(gone, monkeypatch, tmp_path):
    steps = []
    for home in (gone.before, gone.home):
        started(copytree(home, tmp_path / home.name), tmp_path)
        with monkeypatch.context() as patched:
            watched = Watched(patched)
            started(tmp_path / home.name, tmp_path)
            steps.append(watched.steps)
    assert steps[1] < steps[0] * 1.05, steps


def test_a_reader_sees_nothing_of_what_went(gone):
    with reading(gone.home) as connection:
        left = connection.exec_driver_sql("SELECT uid FROM run").scalars().all()
    assert set(left) == {one.uid for one in gone.done.plan.staying} | {gone.today}
