"""Back from one bag: its lots and suppliers, its neighbours, the checks around it, the people."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

from station.core.facts import FACT_KINDS, FactRecord
from station.core.journal import EntryKind
from station.core.shipping_lines import Place
from station.store.answers import PackTrace
from station.store.facts import facts
from station.store.queries import trace_pack
from station.store.shipping import places_of

CHECKS = (
    EntryKind.SCALE_CHECK,
    EntryKind.TARE_STUDY,
    EntryKind.EMPTY_BAG,
    EntryKind.QA_CHECK,
    EntryKind.FIRST_OFF,
    EntryKind.SCAN_BACK,
    EntryKind.ROLL,
)
_AFTER = timedelta(hours=24)


@dataclass(frozen=True, slots=True)
class PackBack:
    """Everything around one bag.

    Args:
        trace: the bag with its lots, suppliers and neighbours.
        around: for each kind of check the last before the bag and the first after it, in order.
        people: who had a hand in it and as what, in order.
        place: its case, pallet and shipment; None while it is in no case.
    """

    trace: PackTrace
    around: tuple[FactRecord, ...]
    people: tuple[tuple[str, str], ...]
    place: Place | None = None


def place_words(place: Place | None) -> str:
    """Where a bag is, in words."""
    if place is None:
        return "in no case"
    words = f"case {place.case}" + (f", pallet {place.pallet}" if place.pallet else "")
    gone = place.shipment
    if gone is None:
        return f"{words}, in the house"
    return f"{words}, left {gone.at:%Y-%m-%d} with {gone.number} to {gone.customer.name}"


def look_back(home: Path, serial: str) -> PackBack:
    """Return everything around a bag.

    Raises:
        BadInput: no such serial; the message names close ones.
    """
    trace = trace_pack(home, serial)
    at = trace.record.draft.judged_at.utc
    around: list[FactRecord] = []
    for kind in CHECKS:
        around += facts(home, (kind,), until=at, newest=1)
        around += facts(home, (kind,), since=at + _NEXT, until=at + _AFTER)[:1]
    of_run = facts(home, tuple(FACT_KINDS), run=trace.run.uid)
    return PackBack(
        trace,
        tuple(sorted(around, key=lambda one: (one.at.utc, one.seq))),
        tuple(_people(trace, (*around, *of_run))),
        places_of(home, (serial,)).get(serial),
    )


_NEXT = timedelta(microseconds=1)


def _people(trace: PackTrace, records: Sequence[FactRecord]) -> Iterable[tuple[str, str]]:
    """Each person once for each thing done."""
    rows = [(trace.run.lead, "led the run"), (trace.record.draft.operator, "packed the bag")]
    rows += [(one.who, str(one.fact.kind)) for one in records]
    return (row for row in dict.fromkeys(rows) if row[0] != "station")
