"""What came in and what became of it: the facts that leave the station in every form of record."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from decimal import Decimal
from pathlib import Path

from station.core.balance import PackedSum, Span, Water, balance
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.lot_set import LotSet
from station.core.lots import InputLot
from station.core.pack import LabelState, Quality
from station.core.receiving import Delivery, delivery_of
from station.core.run import Run
from station.reports.dispatch import Dispatch, dispatch_of
from station.store.blend_sums import NOT_KEPT
from station.store.lot_usage import taken_by
from station.store.recall import (
    BlendLine,
    PackRow,
    Reach,
    entries_about,
    frozen_runs,
    reach_of_day,
    reach_of_lot,
    reach_of_run,
)

GONE = (*NOT_KEPT, Quality.DUMPED, Quality.SAMPLED)
"""Bags that are no product any more; what was downgraded is given away, so it is still eaten."""
_MICRO_TO_KILO = Decimal("1e-9")


@dataclass(frozen=True, slots=True)
class Receipt:
    """One input lot as it came.

    Args:
        lot: as it is known.
        entry: its delivery's entry; None where the lot came with the settings.
    """

    lot: InputLot
    entry: FactRecord | None

    @property
    def delivery(self) -> Delivery | None:
        """What was taken in; None where nobody entered it."""
        return None if self.entry is None else delivery_of(self.entry.fact)


@dataclass(frozen=True, slots=True)
class Output:
    """Bags counted together: how many, and the exact sum of their net in micrograms."""

    bags: int
    micrograms: int

    @property
    def kilograms(self) -> Decimal:
        """Their net, exact."""
        return self.micrograms * _MICRO_TO_KILO


@dataclass(frozen=True, slots=True)
class Transformation:
    """One blend: bags of one run from one set of lots.

    Args:
        blend: code, dates and lots.
        run: its run as it was frozen.
        began, completed: first and last bag, in the plant's time.
        labelled: bags that got a label.
        kept: those of them that are product still.
        inputs: grams the bags took of each lot, an estimate between two bounds.
    """

    blend: BlendLine
    run: Run
    began: datetime
    completed: datetime
    labelled: Output
    kept: Output
    inputs: tuple[tuple[InputLot, Span], ...]


@dataclass(frozen=True, slots=True)
class Traceability:
    """What one station knows of a day, a run or a lot.

    Args:
        site, station: whose record it is.
        receipts: lots, by the day they came.
        transformations: blends in the order they were begun; one without a labelled bag is left
            out, because nothing of it went anywhere.
        dispatch: what became of the bags after the line.
    """

    site: str
    station: str
    receipts: tuple[Receipt, ...]
    transformations: tuple[Transformation, ...]
    dispatch: Dispatch = field(default_factory=Dispatch)


def of_day(home: Path, day: date, water: Water) -> Traceability:
    """Everything packed on a production day, from the lots it took.

    Raises:
        BadInput: nothing was packed then.
    """
    return _gathered(home, reach_of_day(home, day), water)


def of_run(home: Path, uid: str, water: Water) -> Traceability:
    """Everything packed in a run.

    Raises:
        BadInput: no such run.
    """
    return _gathered(home, reach_of_run(home, uid), water)


def of_lot(home: Path, code: str, water: Water) -> Traceability:
    """Everything that could hold an input lot.

    Raises:
        BadInput: no such lot.
    """
    return _gathered(home, reach_of_lot(home, code), water)


def _gathered(home: Path, reach: Reach, water: Water) -> Traceability:
    lots = {lot.code: lot for lot in reach.lots}
    entries = {
        one.fact.subject: one
        for one in entries_about(home, lots)
        if one.fact.kind is EntryKind.DELIVERY
    }
    runs = frozen_runs(home, {one.run.uid for one in reach.blends})
    packs: dict[int, list[PackRow]] = {one.id: [] for one in reach.blends}
    for row in reach.packs:
        packs[row.blend_id].append(row)
    taken = taken_by(home, packs.keys())
    made = []
    for each in reach.blends:
        run = runs[each.run.uid]
        summed = PackedSum(run.product, LotSet(each.uses), *taken[each.id])
        inputs = tuple(
            (lots[use.lot], balance(use.lot, use.component, (), (summed,), water).used)
            for use in each.uses
        )
        made.append(_made(each, run, packs[each.id], inputs))
    receipts = sorted(
        (Receipt(lot, entries.get(code)) for code, lot in lots.items()),
        key=lambda one: (one.lot.received, one.lot.code),
    )
    return Traceability(
        reach.site,
        reach.station,
        tuple(receipts),
        tuple(one for one in made if one is not None),
        dispatch_of(home, [row.serial for row in reach.packs]),
    )


def _made(
    blend: BlendLine,
    run: Run,
    packs: Sequence[PackRow],
    inputs: tuple[tuple[InputLot, Span], ...],
) -> Transformation | None:
    labelled = [row for row in packs if row.label != LabelState.NONE]
    if not labelled:
        return None
    kept = [row for row in labelled if row.quality not in GONE]
    return Transformation(
        blend=blend,
        run=run,
        began=labelled[0].at,
        completed=labelled[-1].at,
        labelled=Output(len(labelled), _net(labelled)),
        kept=Output(len(kept), _net(kept)),
        inputs=inputs,
    )


def _net(packs: Iterable[PackRow]) -> int:
    return sum(row.net_ug for row in packs)
