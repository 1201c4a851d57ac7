"""What each duty of the line needs of the record when the station starts, and no more.

Every question here goes through an index and ends with the first fact that still counts, so a start
takes as long after ten years as after ten days.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from sqlalchemy import select

from station.core.approvals import digest_of
from station.core.checks.qa import GOOD, QaKind
from station.core.clearance import FIRST
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.product import Product
from station.core.scale_swap import SUBJECT, TAKEN
from station.core.standing import approval_key, study_key
from station.store.engine import reading
from station.store.facts import facts, read_facts
from station.store.standing import standing_facts, standing_from, standing_under
from station.store.tables import fact, journal

_CANONICAL = select(journal.c.canonical).join(fact, fact.c.entry_id == journal.c.id)


def scale_past(home: Path, scale: str) -> tuple[FactRecord, ...]:
    """The last check of a scale, and suspect windows nobody decided about."""
    last = facts(home, (EntryKind.SCALE_CHECK,), subject=scale, newest=1)
    return (*last, *standing_facts(home, EntryKind.SUSPECT))


def qa_past(home: Path) -> tuple[FactRecord, ...]:
    """The last check and the last good one of each kind, and windows nobody decided about."""
    newest = _CANONICAL.where(fact.c.kind == EntryKind.QA_CHECK).order_by(fact.c.id.desc()).limit(1)
    checks: list[FactRecord] = []
    with reading(home) as connection:  # one opening for all kinds
        for kind in QaKind:
            last = read_facts(connection, newest.where(fact.c.subject == kind))
            if last and last[0].fact.result != GOOD:
                good = newest.where(fact.c.subject == kind, fact.c.result == GOOD)
                checks += read_facts(connection, good)
            checks += last
    return (*checks, *standing_facts(home, EntryKind.SUSPECT))


def study_on_record(home: Path, bag_item: str, film_lot: str) -> FactRecord | None:
    """The newest study of a bag item and film lot."""
    return standing_under(home, EntryKind.TARE_STUDY, study_key(bag_item, film_lot))


def gates_after(home: Path, before: str | None) -> tuple[FactRecord, ...]:
    """What was signed after a run (None before the first)."""
    return facts(home, (EntryKind.GATE,), run="" if before in (None, FIRST) else before)


def scale_in_use(home: Path) -> tuple[FactRecord, ...]:
    """The scale that was taken into use last; empty before the first."""
    return facts(home, (EntryKind.SETTING,), subject=SUBJECT, result=TAKEN, newest=1)


def approvals_past(home: Path, products: Iterable[Product]) -> tuple[FactRecord, ...]:
    """Open proposals, the target in force of each product, and approvals of these versions."""
    keys = [approval_key(one.code, digest_of(one)) for one in products]
    approved = standing_from(home, EntryKind.SETTING, keys)
    return (*approved, *standing_facts(home, EntryKind.PROPOSAL))
