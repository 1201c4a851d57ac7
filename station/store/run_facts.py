"""What a bag takes from its run and lot set, read once and remembered."""

from __future__ import annotations

from datetime import date

from sqlalchemy import Connection, bindparam, select

from station.core.journal import EntryKind, Value
from station.core.lot_set import LotSet, LotUse
from station.core.lots import LotStatus
from station.core.pack import PackDraft
from station.line.ports import StoreFault
from station.store import bodies
from station.store.journal import read_entry
from station.store.pack_form import BlendKey, PackForm, blend_key
from station.store.prepared import Prepared
from station.store.tables import blend, journal, lot, lot_set, lot_use, run

_HELD_IN = Prepared(
    select(lot.c.code)
    .join(lot_use, lot_use.c.lot == lot.c.code)
    .join(lot_set, lot_use.c.lot_set_id == lot_set.c.id)
    .where(lot_set.c.key == bindparam("its"), lot.c.status == bindparam("held"))
)


class RunFacts:
    """Answers on the writer's connection, inside its transactions.

    Only committed facts are remembered: a run or lot set is met here after the transaction that
    recorded it.
    """

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._frames: dict[str, bodies.Body] = {}
        self._members: dict[str, list[Value]] = {}
        self._forms: dict[BlendKey, PackForm] = {}
        self._usable: set[str] = set()

    def known(self, run_id: str) -> bool:
        """Whether the run is in the record."""
        found = self._connection.execute(select(run.c.id).where(run.c.uid == run_id))
        return found.first() is not None

    def check_open(self, run_id: str) -> int:
        """Return the journal row of an open run.

        Raises:
            StoreFault: the run is unknown or has ended.
        """
        found = self._connection.execute(
            select(run.c.entry_id, run.c.ended_at).where(run.c.uid == run_id)
        ).one_or_none()
        if found is None:
            raise StoreFault(f"run {run_id} is not in the record: start it first")
        if found.ended_at is not None:
            raise StoreFault(f"run {run_id} has ended: start a new one")
        return int(found.entry_id)

    def frame(self, run_id: str) -> bodies.Body:
        """The part of a bag's journal body that its open run fixes."""
        frame = self._frames.get(run_id)
        if frame is None:
            row = self.check_open(run_id)
            kept = self._connection.execute(
                select(journal.c.canonical).where(journal.c.id == row)
            ).scalar_one()
            frame = self._frames[run_id] = bodies.run_frame(bodies.run_of(read_entry(kept).body))
        return frame

    def form(self, chain: tuple[str, str, int], draft: PackDraft) -> PackForm:
        """The form of the entries of a bag's blend.

        Args:
            chain: site, station and epoch of the journal.
            draft: the bag.
        """
        key = blend_key(draft)
        form = self._forms.get(key)
        if form is None:
            frame, members = self.frame(draft.run), self.members(draft.lot_set)
            form = self._forms[key] = PackForm(chain, frame, members, draft)
        return form

    def members(self, key: str) -> list[Value]:
        """The members of a lot set, as a bag's journal body names them.

        Raises:
            StoreFault: no run was started with this lot set, and no change of lots brought it.
        """
        members = self._members.get(key)
        if members is None:
            uses = self._connection.execute(
                select(lot_use.c.component, lot_use.c.lot).join(lot_set).where(lot_set.c.key == key)
            ).all()
            if not uses:
                raise StoreFault(
                    f"lot set {key} is not in the record: start a run with it or load it"
                )
            lots = LotSet.of(LotUse(use.component, use.lot) for use in uses)
            members = self._members[key] = bodies.lot_set_body(lots)
        return members

    def check_usable(self, key: str) -> None:
        """Refuse a lot set in which a lot is held.

        Raises:
            StoreFault: one is; names it.
        """
        if key in self._usable:
            return
        values = {"its": key, "held": LotStatus.HELD}
        row = _HELD_IN.execute(self._connection, values).fetchone()
        if row is not None:
            raise StoreFault(f"lot {row[0]} is held: set the bag aside and take the lot off")
        self._usable.add(key)

    def changed(self, kind: EntryKind) -> None:
        """An entry of this kind was added: only bags and labels leave the lots as they are."""
        if kind not in (EntryKind.PACK, EntryKind.LABEL):
            self._usable.clear()

    def forget(self) -> None:
        """Drop what a transaction that was rolled back may have taught."""
        self._usable.clear()

    def ended(self, run_id: str) -> None:
        """Forget a run that has ended."""
        self._frames.pop(run_id, None)
        self._forms = {key: form for key, form in self._forms.items() if key[0] != run_id}


def next_blend_number(connection: Connection, line: str, day: date) -> int:
    """The number, from 1, of the next blend lot of a line and production day."""
    start = f"{line}{day:%y%j}"
    codes = (
        select(blend.c.code)
        .join(run)
        .where(run.c.line == line, blend.c.production_day == day)
        .where(blend.c.code.startswith(start, autoescape=True))
    )
    found = connection.execute(codes).scalars().all()
    numbers = [int(code[len(start) :]) for code in found if code[len(start) :].isdigit()]
    return max(numbers, default=0) + 1
