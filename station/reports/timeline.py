"""Which facts and stops a timeline shows, and which of them are no good sign."""

from __future__ import annotations

from collections.abc import Iterable
from zoneinfo import ZoneInfo

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pauses import Pause
from station.reports.period_charts import Mark

BAD = frozenset({"failed", "differs", "does not fit", "refused", "open", "held"})
"""Results that a timeline shows as no good sign."""
_ROWS: dict[EntryKind, str] = {
    EntryKind.SCALE_CHECK: "scale check",
    EntryKind.EMPTY_BAG: "empty bag",
    EntryKind.FIRST_OFF: "first-off",
    EntryKind.SCAN_BACK: "label scan",
    EntryKind.ROLL: "label roll",
    EntryKind.LOT_MOVE: "lots",
    EntryKind.QA_CHECK: "QA check",
    EntryKind.HOLD: "holds",
}


def marks_of(entered: Iterable[FactRecord], stops: Iterable[Pause], zone: ZoneInfo) -> list[Mark]:
    """What a timeline shows of facts and stops, in the plant's time."""
    marks = [
        Mark(
            _ROWS[one.fact.kind],
            one.at.utc.astimezone(zone),
            bad=one.fact.result in BAD,
            words=f"{one.fact.subject}: {one.fact.result}",
        )
        for one in entered
        if one.fact.kind in _ROWS
    ]
    marks += [
        Mark(
            "stops",
            stop.began.astimezone(zone),
            stop.ended.astimezone(zone),
            words=f"{stop.reason}, {stop.took(stop.ended).total_seconds() / 60:.0f} min",
        )
        for stop in stops
        if stop.ended is not None
    ]
    return marks
