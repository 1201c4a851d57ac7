"""What one crew hands to the next: runs, counts, stops, checks, and everything still open."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, time
from pathlib import Path
from zoneinfo import ZoneInfo

from station.core.checks.rolls import RollAccount
from station.core.dating import MIDNIGHT, span_of_days
from station.core.facts import FACT_KINDS, FactRecord
from station.core.line_lots import LineLots
from station.core.pauses import Pause
from station.core.run import Run
from station.line.state import Tally
from station.store.facts import facts
from station.store.head_now import HeadNow, head_now
from station.store.label_doubts import open_labels
from station.store.label_rolls import roll_accounts
from station.store.ledger import ledger
from station.store.line_past import lots_on_lines
from station.store.open_holds import OpenHold, open_holds
from station.store.purged import GoneRun, gone_between
from station.store.queries import run_tally
from station.store.run_counts import count_run
from station.store.run_evidence import runs_of_day
from station.store.stops import standing_stops, stops_begun
from station.store.weighed import packs_of_run, plant_zone


@dataclass(frozen=True, slots=True)
class RunOfDay:
    """One run of the day.

    Args:
        run: the frozen run.
        open: bags are still packed.
        tally: bags by present quality, and their net.
        on_pallet: bags that left the line labelled.
    """

    run: Run
    open: bool
    tally: Tally
    on_pallet: int


@dataclass(frozen=True, slots=True)
class Handover:
    """The sheet of a production day.

    Args:
        day: the production day.
        zone: of the plant.
        runs: its runs, in order.
        entered: facts of the day, in order.
        stops: stops that began on it, in order, each with its end.
        in_doubt: serials of labels that wait for an answer, copies too; of any day.
        holds: holds that are open; of any day.
        undecided: bags of the day set aside that nobody decided about.
        lots: what is on each line now, by its short code.
        roll: the label roll in the printer now; None where none is.
        head: head of the record when the sheet was made.
        gone: runs of the day that were purged.
        standing: stops that go on now; of any day.
    """

    day: date
    zone: ZoneInfo
    runs: tuple[RunOfDay, ...]
    entered: tuple[FactRecord, ...]
    stops: tuple[Pause, ...]
    in_doubt: tuple[str, ...]
    holds: tuple[OpenHold, ...]
    undecided: int
    lots: Mapping[str, LineLots]
    roll: RollAccount | None
    head: HeadNow
    gone: tuple[GoneRun, ...] = ()
    standing: tuple[Pause, ...] = ()

    @property
    def open_points(self) -> tuple[str, ...]:
        """What the next crew must see to, in words."""
        points = [f"run open: {one.run.product.name}" for one in self.runs if one.open]
        points += [f"the line stands: {stop.reason}" for stop in self.standing]
        if self.in_doubt:
            points.append(f"{len(self.in_doubt)} labels in doubt")
        points += [f"hold open: {hold.subject}, {hold.bags} bags" for hold in self.holds]
        if self.undecided:
            points.append(f"rejects that wait for a decision: {self.undecided}")
        return tuple(points)


def handover(home: Path, day: date, key: Path | None = None, cut_off: time = MIDNIGHT) -> Handover:
    """Gather the sheet of a production day.

    Args:
        home: folder of the record.
        day: the production day.
        key: file of the station's key, which signs the head on the sheet; None for none.
        cut_off: when the day changes at the plant, for facts and stops.
    """
    zone = plant_zone(home)
    found = [packs_of_run(home, uid) for uid in runs_of_day(home, day)]
    runs = tuple(
        RunOfDay(
            packs.run, packs.open, run_tally(home, packs.run.id), _on_pallet(home, packs.run.id)
        )
        for packs in found
    )
    start, end = span_of_days(day, day, zone, cut_off)
    entered = facts(home, FACT_KINDS, since=start, until=end)
    rolls = [one for one in roll_accounts(home, 1) if one.taken_out is None]
    head = head_now(home, key)
    return Handover(
        day,
        zone,
        runs,
        entered,
        stops_begun(home, start, end),
        tuple(label.serial for label in open_labels(home)),
        open_holds(home),
        sum(row.open for row in ledger(home, day)),
        lots_on_lines(home),
        rolls[0] if rolls else None,
        head,
        gone_between(home, day, day),
        standing_stops(home),
    )


def _on_pallet(home: Path, uid: str) -> int:
    count = count_run(home, uid)
    return 0 if count is None else count.bags
