"""Clocks that are set, sleep, change their offset or lie, through the whole chain.

`python -m tests.campaigns clock --full` goes through every case; the short form through one of each
kind. In each, bags are packed before and after by the simulated packer on a real tty. Counted as
faults: a finding that is missing or too much, bags taken while date and time are not confirmed, a
run that opens then, a use-by that the calendar rule does not give, a journal that is not whole.
"""

import sqlite3
import tempfile
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.places import demo_settings
from station.app.practice import run_choice
from station.config.load import load
from station.core.clock_guard import CONFIRMED, Found, Reason
from station.core.journal import EntryKind
from station.line.lot_offer import free_lots
from station.line.opening import calendar_day
from station.line.state import LineState, Phase
from station.store.facts import facts
from station.store.verify import verify
from tests.end_to_end.line import PATIENCE_S, Bench, bench_line
from tests.end_to_end.shifted_clock import ShiftedClock

NOON = datetime(2026, 11, 25, 12, tzinfo=UTC)
AUTUMN = datetime(2026, 10, 25, 1, tzinfo=UTC)
"""Summer time ends in the Union and in Ireland (Directive 2000/84/EC, article 3)."""
SPRING = datetime(2027, 3, 28, 1, tzinfo=UTC)
"""Summer time begins (article 2)."""
SECONDS = timedelta(seconds=1)
DAY = timedelta(days=1)
PRODUCT = "ROCKET-SPINACH-200"


@dataclass(frozen=True, slots=True)
class Case:
    """What a clock does between two bags.

    Args:
        name: short.
        start: what it shows when the station starts.
        step: how far it is set.
        sleep: how long the machine sleeps.
        found: what must be found, in order.
        closes: acceptance must close until somebody confirms.
        restart: it happens while the station is down.
        ends: the run is past its use-by afterwards and takes no bag, confirmed or not.
    """

    name: str
    start: datetime = NOON
    step: timedelta = timedelta(0)
    sleep: timedelta = timedelta(0)
    found: tuple[Found, ...] = (Found.STEPPED,)
    closes: bool = True
    restart: bool = False
    ends: bool = False


SHORT = (
    Case("an hour ahead", step=timedelta(hours=1)),
    Case("autumn, offset back", AUTUMN - 4 * SECONDS, found=(Found.OFFSET,), closes=False),
    Case("a day back, down", step=-DAY, found=(Found.BACK_DATED,), restart=True),
)
CASES = (
    *SHORT,
    Case("an hour back", step=-timedelta(hours=1)),
    Case("a day back", step=-DAY),
    Case("a day ahead", step=DAY),
    Case("a year ahead", step=365 * DAY, ends=True),
    Case("a second ahead", step=SECONDS, found=(), closes=False),
    Case("ten seconds ahead", step=10 * SECONDS, closes=False),
    Case("ten seconds back", step=-10 * SECONDS, closes=False),
    Case("over midnight by a step", NOON.replace(hour=23, minute=59, second=40), step=30 * SECONDS),
    Case("over the cut-off by a step", NOON.replace(hour=3, minute=59, second=40), 30 * SECONDS),
    Case("over midnight by itself", NOON.replace(hour=23, minute=59, second=57), found=(),
         closes=False),
    Case("spring, offset ahead", SPRING - 4 * SECONDS, found=(Found.OFFSET,), closes=False),
    Case("ten minutes of sleep", sleep=timedelta(minutes=10), found=(Found.SLEPT,), closes=False),
    Case("sleep and a wrong clock", step=-timedelta(hours=2), sleep=timedelta(minutes=10),
         found=(Found.SLEPT, Found.STEPPED)),
    Case("nine days down", step=9 * DAY, found=(Found.LONG_AWAY,), restart=True),
    Case("a night down", step=timedelta(hours=10), found=(), closes=False, restart=True),
    Case("an hour back, down", step=-timedelta(hours=1), found=(Found.BACK_DATED,), restart=True),
    Case("the year 2019, down", step=-7 * 365 * DAY, found=(Found.YEAR, Found.BACK_DATED),
         restart=True),
)  # fmt: skip


def go_through(case: Case, home: Path) -> list[str]:
    """Pack around what one clock does; return what was wrong."""
    clock = ShiftedClock(case.start)
    faults: list[str] = []
    with bench_line(home, clock=clock) as line:
        start(line)
        pack(line, 1)
        if not case.restart:
            clock.step(case.step)
            clock.sleep(case.sleep)
            faults += _held(line, case)
            if not case.ends:
                pack(line, 2)
        end(line)
    if case.restart:
        clock.step(case.step)
        with bench_line(home, clock=clock) as line:
            faults += _held_at_start(line, case)
            start(line)
            pack(line, 1)
            end(line)
    return [f"{case.name}: {fault}" for fault in (*faults, *_record(home, case))]


def start(line: Bench) -> str:
    """Ask for a run; returns the line's words."""
    product = line.house.products[PRODUCT]
    day = calendar_day(line.station.clock.now())
    line.station.line.start_run(run_choice(line.house, product, day, None))
    return line.watch.next_answer(PATIENCE_S).words


def pack(line: Bench, bags: int) -> None:
    """Let the packer work until the run has so many good bags, and clear the pan."""
    with line.packer(line.house.products[PRODUCT]):
        line.until(lambda state: state.tally.good >= bags)
    clear(line)


def clear(line: Bench) -> None:
    """Lift what lies on the pan."""
    line.bench.lift()
    line.until(lambda state: state.phase in (Phase.READY, Phase.STOPPED))


def end(line: Bench) -> None:
    """End the run."""
    clear(line)
    line.station.line.end_run("L01")
    line.watch.next_answer(PATIENCE_S)


def _found(line: Bench) -> tuple[str, ...]:
    every = facts(line.station.home, (EntryKind.CLOCK,))
    return tuple(one.fact.result for one in every if one.fact.result != CONFIRMED)


def _held(line: Bench, case: Case) -> list[str]:
    """Whether acceptance closed, stayed closed with a bag on the pan, and opened when confirmed."""
    expected = tuple(str(one) for one in case.found)
    line.until(lambda _: len(_found(line)) >= len(expected))
    if not case.closes:
        return []
    line.until(lambda state: _wants(state))
    before = line.watch.newest
    assert before is not None
    line.bench.put_bag(212.0)
    waited = line.until(lambda state: state.shown is not None and state.shown.steady)
    line.until(lambda state: state.shown is not None and state.shown != waited.shown)
    taken = line.until(_wants).tally.good - before.tally.good
    line.bench.lift()
    line.station.line.enter((line.station.clock_desk.confirmed(Reason.SET_RIGHT),), "L01")
    answer = line.watch.next_entry(PATIENCE_S)
    line.until(lambda state: not _wants(state))
    faults = [f"{taken} bags were taken before it was confirmed"] if taken else []
    return faults if answer.recorded else [*faults, answer.words]


def _held_at_start(line: Bench, case: Case) -> list[str]:
    refused = start(line) if case.closes else ""
    if not case.closes:
        return []
    if "look at date and time" not in refused:
        return [f"a run was answered with {refused!r}"]
    line.station.line.enter((line.station.clock_desk.confirmed(Reason.LONG_STOP),), "L01")
    return [] if line.watch.next_entry(PATIENCE_S).recorded else ["not confirmed"]


def _wants(state: LineState) -> bool:
    return any("look at date and time" in words for words in state.closed)


def _record(home: Path, case: Case) -> list[str]:
    """Whether findings, dates and order on record are as they must be."""
    found = facts(home, (EntryKind.CLOCK,))
    named = tuple(one.fact.result for one in found if one.fact.result != CONFIRMED)
    faults = []
    if named != tuple(str(one) for one in case.found):
        faults.append(f"found {named}")
    if not verify(home).whole:
        faults.append("the journal is not whole")
    return faults + _dates(home, case)


def _dates(home: Path, case: Case) -> list[str]:
    """Whether each run's dates are those of the calendar in the plant's zone, by the rule alone."""
    starts = [case.start] + ([case.start + case.step] if case.restart else [])
    expected = []
    for at in starts:
        house = load(demo_settings(), at.date())
        product = house.products[PRODUCT]
        local = at.astimezone(ZoneInfo(house.settings.zone))
        day = local.date() - (DAY if local.time() < house.settings.cut_off else 0 * DAY)
        lots = [house.lots[code] for code in free_lots(product, house.lots, local.date())]
        latest = [lot.use_by for lot in lots if lot.use_by is not None]
        expected.append(
            (day.isoformat(), min([day + product.life_days * DAY, *latest]).isoformat())
        )
    with closing(sqlite3.connect(home / "station.sqlite")) as record:
        asked = "SELECT production_day, use_by FROM blend ORDER BY id"
        found = record.execute(asked).fetchall()
        bags, last = record.execute("SELECT count(*), max(number) FROM pack").fetchone()
    faults = [] if found == expected else [f"dates {found}, by the rule {expected}"]
    least = 1 if case.ends else 2  # a run past its use-by takes no bag after the clock was set
    return faults if bags == last >= least else [*faults, f"{bags} bags, the last is number {last}"]


def run(full: bool) -> int:
    """Run the campaign; print each case and the verdict, and return the number of faults."""
    faults: list[str] = []
    cases = CASES if full else SHORT
    for case in cases:
        with tempfile.TemporaryDirectory() as home:
            wrong = go_through(case, Path(home))
        print(f"{case.name}: {'; '.join(wrong) or 'as it must be'}", flush=True)
        faults += wrong
    print(f"{len(cases)} clocks, {len(faults)} faults")
    return len(faults)
