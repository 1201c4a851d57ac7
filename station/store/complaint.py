"""From what a complaint says to the bag, its neighbours and the checks around it."""

from __future__ import annotations

from datetime import datetime, timedelta
from pathlib import Path

from sqlalchemy import func, select

from station.core.complaint import BagSeen, Complaint
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.store.engine import reading
from station.store.facts import facts
from station.store.purged import refusal_of
from station.store.queries import local_time, trace_pack, unknown
from station.store.tables import OF_BLEND, blend, pack

CHECKS = (
    EntryKind.SCALE_CHECK,
    EntryKind.QA_CHECK,
    EntryKind.EMPTY_BAG,
    EntryKind.TARE_STUDY,
    EntryKind.FIRST_OFF,
    EntryKind.SCAN_BACK,
    EntryKind.ROLL,
    EntryKind.SUSPECT,
    EntryKind.HOLD,
    EntryKind.RELEASE,
    EntryKind.REFERENCE,
)
"""Facts shown around a bag."""
AROUND = timedelta(hours=2)
"""How far from the bag checks are shown; the last one before and the first after always are."""


def complaint(home: Path, serial: str) -> Complaint:
    """Return a bag with the checks around it.

    Raises:
        BadInput: no such serial; the message names close ones.
    """
    bag = trace_pack(home, serial)
    at = bag.record.draft.judged_at.utc
    near = facts(home, CHECKS, since=at - AROUND, until=at + AROUND)
    before = {one.fact.uid: one for one in near if one.at.utc <= at}
    after = {one.fact.uid: one for one in near if one.at.utc > at}
    for kind in CHECKS:
        if not any(one.fact.kind is kind for one in before.values()):
            for one in facts(home, (kind,), until=at, newest=1):
                before[one.fact.uid] = one
    about = facts(
        home, (EntryKind.DISPOSITION, EntryKind.TICKET, EntryKind.REPRINT), subject=serial
    )
    draft = bag.record.draft
    seen = BagSeen(
        serial, local_time(at, draft.judged_at.offset_minutes), draft.weighing.net,
        bag.quality, bag.label,
    )  # fmt: skip
    return Complaint(
        bag=seen,
        product=bag.run.name,
        version=bag.run.version,
        run=bag.run.uid,
        blend_lot=draft.blend_lot,
        use_by=draft.use_by,
        production_day=draft.production_day,
        operator=draft.operator,
        reason=bag.reason,
        lots=tuple((one.component, one.code, one.supplier) for one in bag.lots),
        neighbours=tuple(
            BagSeen(one.serial, one.at, one.net, one.quality, one.label) for one in bag.neighbours
        ),
        before=_in_order(before),
        after=_in_order(after),
        about=about,
    )


def bag_at(home: Path, blend_lot: str, at: datetime) -> str:
    """Serial of the bag of a blend lot that was weighed next to a moment.

    Args:
        home: folder of the record.
        blend_lot: lot code as printed.
        at: aware.

    Raises:
        BadInput: no such blend lot.
    """
    off = func.abs(func.julianday(pack.c.judged_at) - func.julianday(at.isoformat()))
    statement = (
        select(pack.c.serial)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.code == blend_lot)
        .order_by(off)
        .limit(1)
    )
    with reading(home) as connection:
        found = connection.execute(statement).scalar_one_or_none()
        if found is None:
            codes = list(connection.execute(select(blend.c.code).distinct()).scalars())
            raise refusal_of(connection, blend_lot) or unknown(
                f"blend lot {blend_lot!r}", blend_lot.upper(), codes
            )
    return str(found)


def _in_order(kept: dict[str, FactRecord]) -> tuple[FactRecord, ...]:
    return tuple(sorted(kept.values(), key=lambda one: (one.at.utc, one.seq)))
