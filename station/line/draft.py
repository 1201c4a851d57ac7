"""From a judged bag and its run to what the store is asked to record."""

from __future__ import annotations

from datetime import timedelta

from drivers.steady import Reading
from station.core.mass import Mass
from station.core.pack import Moment, PackDraft, Residue
from station.core.run import Run
from station.line.effects import Record


def draft_of(judged: Record, run: Run, now: Moment) -> PackDraft:
    """The bag with the blend, lots and dates that the run has at this moment."""
    return PackDraft(
        run=run.id,
        weighing=judged.weighing,
        verdict=judged.verdict,
        quality=judged.quality,
        reason=judged.reason,
        blend_lot=run.blend_lot,
        lot_set=run.lot_set.key,
        use_by=run.dating.use_by,
        production_day=run.dating.production_day,
        operator=run.operator,
        judged_at=now,
        residue=_residue(judged.residue, now),
    )


def _residue(reading: Reading | None, now: Moment) -> Residue | None:
    """The reading of the empty pan with its time on the clock."""
    if reading is None:
        return None
    age = timedelta(microseconds=(now.monotonic_ns - reading.seen_at_ns) // 1000)
    return Residue(now.utc - age, Mass.of(reading.digits, reading.unit))
