"""The bags of one run, each row held to the entry it was made from.

What is compared is what the weighing fixed: serial, masses, verdict, operator, time and residue.
Quality, reason, label and copies follow later entries too, which only the whole verification
replays.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, bindparam, select

from station.core.journal import Entry, EntryKind
from station.store.damage import Damage
from station.store.pack_form import pack_row_of
from station.store.prepared import Prepared
from station.store.tables import OF_BLEND, blend, pack

_LATER = frozenset({"id", "entry_id", "blend_id", "quality", "rejected", "reason", "label",
                    "copies"})  # fmt: skip
"""Columns that number rows, or that later entries change."""
_PLACES = tuple(
    (place, column.name)
    for place, column in enumerate(column for column in pack.columns if column.name != "id")
    if column.name not in _LATER
)
_ROWS = Prepared(
    select(pack.c.entry_id, *(column for column in pack.columns if column.name != "id"))
    .select_from(pack)
    .join(blend, OF_BLEND)
    .where(blend.c.run_id == bindparam("run"))
)


class OwnBags:
    """Sees the entries of a run's bags.

    Args:
        connection: inside a transaction.
        uid: id of the run.
        run_id: row of the run.
    """

    def __init__(self, connection: Connection, uid: str, run_id: int) -> None:
        self._uid = uid
        rows = _ROWS.execute(connection, {"run": run_id})
        self._rows: dict[int, tuple[Any, ...]] = {row: tuple(its) for row, *its in rows}
        self.seen = 0
        """Bags whose row says what their entry says."""

    def take(self, entry: Entry, row: int) -> None:
        """See an entry with its row in the journal; all but bags of the run pass.

        Raises:
            Damage: the bag's row is missing or says something else.
        """
        if entry.kind is not EntryKind.PACK or entry.body["run"] != self._uid:
            return
        serial, found = entry.body["serial"], self._rows.pop(row, None)
        if found is None:
            raise Damage(None, f"bag {serial} is missing from its table")
        made = pack_row_of(entry, row, blend_id=0)
        for place, name in _PLACES:
            if found[place] != made[place]:
                raise Damage(
                    None,
                    f"bag {serial} was changed in its table: {name} is {found[place]!r}, "
                    f"the journal says {made[place]!r} in entry {entry.seq}",
                )
        self.seen += 1

    def done(self) -> None:
        """See that no bag stands in the table alone.

        Raises:
            Damage: one does.
        """
        place = next(place for place, name in _PLACES if name == "serial")
        for row in self._rows.values():
            raise Damage(
                None, f"bag {row[place]} stands in a table, but no entry of the run made it"
            )
