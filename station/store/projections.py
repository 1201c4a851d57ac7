"""From journal bodies to the tables that answer questions.

One function for each kind of entry, used both when an entry is written and when the tables are
built again, so that a rebuilt table cannot differ from a live one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import Any

from sqlalchemy import Connection, Table, bindparam, insert, select, update
from sqlalchemy.dialects.sqlite import insert as upsert

from station.core.facts import FACT_KINDS
from station.core.journal import Entry, EntryKind
from station.core.lots import LotStatus
from station.core.pack import LabelState, Quality
from station.store import tables as t
from station.store.blend_sums import BlendSums
from station.store.bodies import lot_of, run_of
from station.store.columns import mass_values
from station.store.disposition_facts import DispositionFacts
from station.store.facts import fact_record
from station.store.hold_ranges import HoldRanges, UnknownFact
from station.store.label_steps import LabelCopies
from station.store.lot_facts import LotFacts, set_of_move
from station.store.pack_form import BLEND, pack_row_of
from station.store.prepared import Prepared, driver_of, insert_text
from station.store.purges import Gone
from station.store.shipping_facts import ShippingFacts
from station.store.standing import StandingFacts

_Body = Mapping[str, Any]

_ADD_PACK = insert_text(t.pack)
_LAST_BAG = "SELECT id, blend_id FROM pack ORDER BY id DESC LIMIT 1"
_FILL = """
    UPDATE blend SET first_bag = coalesce(first_bag, ?), last_bag = ?,
        kept_ug = NULL, aside_ug = NULL
    WHERE id = ?
"""
_BAG = "SELECT id, quality FROM pack WHERE serial = ?"
_SET_LABEL = Prepared(
    update(t.pack).where(t.pack.c.serial == bindparam("its")).values(label=bindparam("to"))
)
_TAKE_BACK = Prepared(
    update(t.pack)
    .where(t.pack.c.serial == bindparam("its"))
    .values(
        label=bindparam("to"),
        quality=bindparam("worth"),
        reason=bindparam("why"),
        rejected=bindparam("out"),
    )
)


class Projections:
    """Applies entries to the tables of one connection.

    It remembers row numbers it has met. Call :meth:`forget` after a rollback, because rows it
    remembers may be gone.

    Args:
        connection: to the tables.
        gone: what was purged and is not looked for, when a journal is read again.
    """

    def __init__(self, connection: Connection, gone: Gone | None = None) -> None:
        self._connection = connection
        self._execute = driver_of(connection).cursor().execute
        self._gone = gone or Gone()
        self.lots = LotFacts(connection, HoldRanges(connection), self._gone)
        self._copies = LabelCopies(connection)
        shipping = ShippingFacts(connection, self._gone)
        self._sums = BlendSums(connection)
        self._rejects = DispositionFacts(connection, self._sums)
        self._standing = StandingFacts(connection)
        self._filling: int | None = None
        self._blends: dict[tuple[object, ...], int] = {}
        self._apply: dict[EntryKind, Callable[[Entry, int], None]] = {
            EntryKind.LOT: self._lot,
            EntryKind.RUN: self._run,
            EntryKind.RUN_END: self._run_end,
            EntryKind.PACK: self._pack,
            EntryKind.LABEL: self._label,
            EntryKind.START: lambda _, row: self._standing.started(row),
        }
        self._consequences: dict[EntryKind, Callable[[Entry], None]] = {
            EntryKind.DELIVERY: self.lots.deliver,
            EntryKind.LOT_MOVE: self._lot_move,
            EntryKind.HOLD: self.lots.hold,
            EntryKind.RELEASE: self.lots.release,
            EntryKind.REPRINT: self._copies.reprint,
            EntryKind.CASE: shipping.fill,
            EntryKind.PALLET: shipping.close_pallet,
            EntryKind.SHIPMENT: shipping.ship,
            EntryKind.CORRECTION: shipping.correct,
            EntryKind.UNIT_LABEL: shipping.label,
            EntryKind.DISPOSITION: self._rejects.decide,
        }

    def apply(self, entry: Entry, row: int) -> None:
        """Bring the tables up to this entry.

        Args:
            entry: the next entry of the journal.
            row: its row number in the journal table.

        Raises:
            UnknownFact: it refers to a lot, run, lot set or bag that is not there.
        """
        if entry.kind in FACT_KINDS:
            self._fact(entry, row)
        elif (step := self._apply.get(entry.kind)) is not None:
            step(entry, row)

    def forget(self) -> None:
        """Drop what was remembered of rows."""
        self._blends.clear()
        self._filling = None

    def _lot(self, entry: Entry, row: int) -> None:
        lot = lot_of(entry.body)
        values = {
            "code": lot.code,
            "component": lot.component,
            "supplier": lot.supplier,
            "received": lot.received,
            "harvested": lot.harvested,
            "use_by": lot.use_by,
            "status": lot.status,
        }
        statement = upsert(t.lot).values(values)
        changed = {"status": LotStatus(lot.status)}
        self._connection.execute(
            statement.on_conflict_do_update(index_elements=[t.lot.c.code], set_=changed)
        )

    def _run(self, entry: Entry, row: int) -> None:
        body: _Body = entry.body
        run = run_of(body)
        limits = run.window.limits
        run_id = self._insert(
            t.run,
            uid=run.id,
            entry_id=row,
            line=run.line,
            product=run.product.code,
            version=run.product.version,
            name=run.product.name,
            gtin=run.product.gtin,
            rule_set=limits.rule_set,
            rule_version=limits.version,
            **mass_values("nominal", limits.nominal),
            lead=run.lead,
            operator=run.operator,
            scale=run.scale,
            software=run.software,
            order_size=run.order_size,
            started_at=entry.at.utc,
            offset_minutes=entry.at.offset_minutes,
        )
        lot_set_id = self._lot_set(body["lot_set"], body["members"])
        self._blend(run_id, lot_set_id, body)

    def _run_end(self, entry: Entry, row: int) -> None:
        uid = entry.body["run"]
        ended = (
            update(t.run)
            .where(t.run.c.uid == uid)
            .values(ended_at=entry.at.utc, ended_by=entry.who)
        )
        if self._connection.execute(ended).rowcount != 1:
            raise UnknownFact(f"run {uid} is not in the record")

    def _pack(self, entry: Entry, row: int) -> None:
        body: _Body = entry.body
        blend_id = self.blend_of(tuple(body[name] for name in BLEND), body)
        self.add_pack(pack_row_of(entry, row, blend_id), blend_id)

    def add_pack(self, row: tuple[object, ...], blend_id: int) -> None:
        """Add the row of a bag, made by ``pack_row``, of a blend."""
        if blend_id != self._filling:
            self.fill(blend_id)
        self._execute(_ADD_PACK, row)

    def fill(self, blend_id: int) -> None:
        """Let the next bags be of a blend: it has no last one now, and the one before has."""
        last = self._execute(_LAST_BAG).fetchone()
        if last is not None and last[1] != blend_id:
            self._execute("UPDATE blend SET last_bag = ? WHERE id = ?", last)
            self._sums.ended(last[1])
        next_row = 1 if last is None else last[0] + 1
        self._execute(_FILL, (next_row, t.FILLING, blend_id))
        self._filling = blend_id

    def _label(self, entry: Entry, row: int) -> None:
        body: _Body = entry.body
        values = {"its": body["serial"], "to": LabelState(body["label"])}
        statement = _SET_LABEL
        if "quality" in body:
            statement = _TAKE_BACK
            values |= {"worth": Quality(body["quality"]), "why": body["why"], "out": 1}
            for bag, worth in self._execute(_BAG, (body["serial"],)).fetchall():
                self._sums.judged(bag, worth, body["quality"])
        if statement.execute(self._connection, values).rowcount != 1:
            raise UnknownFact(f"bag {body['serial']} is not in the record")

    def _fact(self, entry: Entry, row: int) -> None:
        body: _Body = entry.body
        self._insert(
            t.fact,
            uid=body["uid"],
            entry_id=row,
            kind=entry.kind,
            subject=body["subject"],
            result=body["result"],
            run=body["run"],
            who=entry.who,
            at=entry.at.utc,
            offset_minutes=entry.at.offset_minutes,
        )
        if (consequence := self._consequences.get(entry.kind)) is not None:
            consequence(entry)
        if entry.kind is EntryKind.HEAD:
            self._standing.day_ended(row)
        else:
            self._standing.noted(fact_record(entry).fact, row)

    def _lot_move(self, entry: Entry) -> None:
        moved = fact_record(entry).fact
        self.lots.rework(moved)
        changed = set_of_move(moved)
        if changed is not None and not self._gone.run(moved.run):
            self.blend_of(tuple(changed[name] for name in BLEND), changed)

    def blend_of(self, key: tuple[object, ...], body: _Body) -> int:
        """The row of a bag's blend, which it begins where there is none yet.

        Args:
            key: what names it: the values of ``BLEND`` in the body.
            body: of a bag.
        """
        known = self._blends.get(key)
        if known is None:
            run_id = self._connection.execute(
                select(t.run.c.id).where(t.run.c.uid == body["run"])
            ).scalar_one_or_none()
            if run_id is None:
                raise UnknownFact(f"run {body['run']} is not in the record")
            lot_set_id = self._lot_set(body["lot_set"], body["members"])
            known = self._blends[key] = self._blend(run_id, lot_set_id, body)
        return known

    def _blend(self, run_id: int, lot_set_id: int, body: _Body) -> int:
        values = {
            "run_id": run_id,
            "lot_set_id": lot_set_id,
            "code": body["blend_lot"],
            "production_day": date.fromisoformat(body["production_day"]),
            "use_by": date.fromisoformat(body["use_by"]),
        }
        same = (t.blend.c[name] == value for name, value in values.items())
        found = self._connection.execute(select(t.blend.c.id).where(*same)).scalar_one_or_none()
        return self._insert(t.blend, **values) if found is None else found

    def _lot_set(self, key: str, members: list[list[str]]) -> int:
        found = self._connection.execute(
            select(t.lot_set.c.id).where(t.lot_set.c.key == key)
        ).scalar_one_or_none()
        if found is not None:
            return int(found)
        lot_set_id = self._insert(t.lot_set, key=key)
        self._connection.execute(
            insert(t.lot_use),
            [
                {"lot_set_id": lot_set_id, "component": component, "lot": lot}
                for component, lot in members
            ],
        )
        return lot_set_id

    def _insert(self, table: Table, **values: object) -> int:
        key = self._connection.execute(insert(table).values(values)).inserted_primary_key
        assert key is not None, "SQLite gives the row number of an insert"
        return int(key[0])
