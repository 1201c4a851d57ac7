"""What lies under an open hold does not get out by way of the reject bin.

A bag that was set aside is a reject, and no hold makes it anything else. But whatever the hold is
about, a foreign body or a lot that is called back, may be in it too. So while an open hold covers
its number, its content goes into no other bag and to nobody; it may be dumped or sampled. Asked
before an entry is made, and not of entries on record.
"""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection, select

from station.core.dispositions import Disposition
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import move_of
from station.line.ports import StoreFault
from station.store.hold_ranges import COVERS
from station.store.tables import fact, hold_range, pack

STAYS = frozenset(map(str, (Disposition.DUMP, Disposition.SAMPLE)))
"""Decisions that let nothing of a bag go on."""


def refuse_held(connection: Connection, facts: Iterable[Fact]) -> None:
    """Pass when no fact lets the content of a bag go on that an open hold covers.

    Raises:
        StoreFault: one does; names the bag and the hold.
    """
    for serial in dict.fromkeys(serial for one in facts for serial in _passed_on(one)):
        covering = (
            select(fact.c.subject)
            .join(hold_range, hold_range.c.hold == fact.c.uid)
            .join(pack, COVERS)
            .where(pack.c.serial == serial)
            .limit(1)
        )
        held = connection.execute(covering).scalar_one_or_none()
        if held is not None:
            raise StoreFault(
                f"bag {serial} lies under the hold of {held}: have it released first, or dump it"
            )


def _passed_on(one: Fact) -> tuple[str, ...]:
    if one.kind is EntryKind.DISPOSITION:
        return () if one.result in STAYS else (one.subject,)
    return move_of(one).serials if one.kind is EntryKind.LOT_MOVE else ()
