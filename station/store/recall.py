"""How far a lot, a blend or a day reaches: its blends, and every bag as it stands in the table.

A recall may mean ten thousand bags and must not keep anyone waiting, so a bag stays the row it is
in the file and is read only where it is shown.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta, timezone
from decimal import Decimal
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import ColumnElement, Connection, select

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.lot_set import LotUse
from station.core.lots import InputLot
from station.core.mass import Mass
from station.core.run import Run
from station.errors import BadInput
from station.store import journal as j
from station.store.answers import RunLine
from station.store.bodies import run_of
from station.store.engine import reading
from station.store.facts import read_facts
from station.store.prepared import driver_of
from station.store.purged import refusal_between, refusal_of
from station.store.queries import run_lines, unknown, unknown_serial
from station.store.shipping_tables import shipment, unit
from station.store.tables import blend, fact, identity, journal, lot, lot_use, pack, run

_COLUMNS = (
    "serial", "judged_at", "offset_minutes", "blend_id", "net_digits", "net_unit", "net_ug",
    "quality", "label",
)  # fmt: skip
_MANY = 400
_OF_BLENDS = (
    f"SELECT {', '.join(f'pack.{name}' for name in _COLUMNS)} FROM blend CROSS JOIN pack"
    " ON pack.id BETWEEN blend.first_bag AND blend.last_bag AND pack.blend_id = blend.id"
    " WHERE blend.id IN (%s) ORDER BY pack.id"
)


class PackRow(NamedTuple):
    """One bag as it stands in the table; words and digits as text."""

    serial: str
    judged_at: str
    offset_minutes: int
    blend_id: int
    net_digits: str
    net_unit: str
    net_ug: int
    quality: str
    label: str

    @property
    def at(self) -> datetime:
        """When it was judged, in the plant's time of that moment."""
        utc = datetime.fromisoformat(self.judged_at)
        return utc.astimezone(timezone(timedelta(minutes=self.offset_minutes)))

    @property
    def net(self) -> Mass:
        """Its net as shown."""
        return Mass(Decimal(self.net_digits), self.net_unit)  # type: ignore[arg-type]


@dataclass(frozen=True, slots=True)
class BlendLine:
    """Bags of one run that share a lot set, a code and dates.

    Args:
        id: its row number, which its bags carry.
        run: its run.
        code: blend lot code as printed.
        production_day, use_by: its dates.
        uses: every lot that could be in it.
    """

    id: int
    run: RunLine
    code: str
    production_day: date
    use_by: date
    uses: tuple[LotUse, ...]


@dataclass(frozen=True, slots=True)
class Reach:
    """What one record says.

    Args:
        site, station: whose record it is.
        head: last entry of the record, and its hash as hex digits.
        lots: every lot in the blends, and the one asked for.
        blends: in the order they were begun.
        packs: every bag of them, in the order of packing.
    """

    site: str
    station: str
    head: tuple[int, str]
    lots: tuple[InputLot, ...]
    blends: tuple[BlendLine, ...]
    packs: tuple[PackRow, ...]


def reach_of_lot(home: Path, code: str) -> Reach:
    """Return how far an input lot reaches.

    Raises:
        BadInput: no such input lot; the message names close ones.
    """
    with reading(home) as connection:
        if connection.execute(select(lot.c.code).where(lot.c.code == code)).first() is None:
            known = connection.execute(select(lot.c.code)).scalars().all()
            raise refusal_of(connection, code) or unknown(
                f"input lot {code!r}", code.upper(), list(known)
            )
        holding = select(lot_use.c.lot_set_id).where(lot_use.c.lot == code)
        return _reach(connection, blend.c.lot_set_id.in_(holding), code)


def reach_of_blend(home: Path, code: str) -> Reach:
    """Return how far a blend lot reaches.

    Raises:
        BadInput: no such blend lot; the message names close ones.
    """
    with reading(home) as connection:
        found = _reach(connection, blend.c.code == code)
        if not found.blends:
            newest = select(blend.c.code).distinct().order_by(blend.c.id.desc()).limit(1000)
            codes = connection.execute(newest).scalars().all()
            raise refusal_of(connection, code) or unknown(
                f"blend lot {code!r}", code.upper(), list(codes)
            )
        return found


def reach_of_day(home: Path, day: date) -> Reach:
    """Return everything packed on a production day.

    Raises:
        BadInput: nothing was packed then.
    """
    with reading(home) as connection:
        found = _reach(connection, blend.c.production_day == day)
        if not found.blends:
            raise refusal_between(home, day, day) or BadInput(
                f"day {day}", "nothing was packed on it: name another production day"
            )
        return found


def reach_of_run(home: Path, uid: str) -> Reach:
    """Return everything packed in a run.

    Raises:
        BadInput: no such run.
    """
    with reading(home) as connection:
        its = select(run.c.id).where(run.c.uid == uid).scalar_subquery()
        found = _reach(connection, blend.c.run_id == its)
        if not found.blends:
            raise refusal_of(connection, uid) or BadInput(
                f"run {uid} is not in the record", "give the id of a run"
            )
        return found


def reach_of_serials(home: Path, serials: Sequence[str]) -> Reach:
    """Return some bags with their blends and lots, and no others.

    Args:
        home: folder of the record.
        serials: of bags on record.
    """
    wanted = frozenset(serials)
    with reading(home) as connection:
        ids: set[int] = set()
        for at in range(0, len(serials), _MANY):
            some = pack.c.serial.in_(serials[at : at + _MANY])
            ids |= set(connection.execute(select(pack.c.blend_id).where(some)).scalars())
        found = _reach(connection, blend.c.id.in_(ids))
    return replace(found, packs=tuple(row for row in found.packs if row.serial in wanted))


def frozen_runs(home: Path, uids: Collection[str]) -> dict[str, Run]:
    """Return runs by their id as they were frozen at their start."""
    statement = (
        select(journal.c.canonical)
        .join(run, run.c.entry_id == journal.c.id)
        .where(run.c.uid.in_(uids))
    )
    with reading(home) as connection:
        found = connection.execute(statement).scalars()
        runs = [run_of(j.read_entry(kept).body) for kept in found]
    return {one.id: one for one in runs}


def pack_rows(connection: Connection, blends: tuple[int, ...]) -> tuple[PackRow, ...]:
    """Return the bags of blends by their row numbers, in the order of packing."""
    marks = ", ".join("?" * len(blends))
    rows = driver_of(connection).execute(_OF_BLENDS % marks, blends)
    return tuple(map(PackRow._make, rows))


def _reach(connection: Connection, condition: ColumnElement[bool], code: str = "") -> Reach:
    rows = connection.execute(select(blend).where(condition).order_by(blend.c.id)).all()
    sets = {row.lot_set_id for row in rows}
    uses: dict[int, tuple[LotUse, ...]] = dict.fromkeys(sets, ())
    members = select(lot_use).where(lot_use.c.lot_set_id.in_(sets))
    for row in connection.execute(members.order_by(lot_use.c.component, lot_use.c.lot)):
        uses[row.lot_set_id] += (LotUse(row.component, row.lot),)
    in_them = {use.lot for each in uses.values() for use in each} | ({code} if code else set())
    lots = connection.execute(
        select(lot).where(lot.c.code.in_(in_them)).order_by(lot.c.component, lot.c.code)
    ).mappings()
    ids = {row.run_id for row in rows}
    runs = connection.execute(select(run.c.id).where(run.c.id.in_(ids)).order_by(run.c.id))
    by_id = dict(zip(runs.scalars(), run_lines(connection, run.c.id.in_(ids)), strict=True))
    owner = connection.execute(select(identity)).one()
    last = j.last_head(connection, owner.epoch)
    return Reach(
        site=owner.site,
        station=owner.station,
        head=(last.seq, last.hash.hex()),
        lots=tuple(InputLot(**each) for each in lots),
        blends=tuple(
            BlendLine(
                row.id,
                by_id[row.run_id],
                row.code,
                row.production_day,
                row.use_by,
                uses[row.lot_set_id],
            )
            for row in rows
        ),
        packs=pack_rows(connection, tuple(row.id for row in rows)),
    )


def entries_about(home: Path, subjects: Collection[str]) -> tuple[FactRecord, ...]:
    """Return deliveries, moves, holds and releases of lots or blends by code, oldest first."""
    kinds = (EntryKind.DELIVERY, EntryKind.LOT_MOVE, EntryKind.HOLD, EntryKind.RELEASE)
    statement = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.subject.in_(subjects), fact.c.kind.in_(kinds))
        .order_by(fact.c.id.desc())
    )
    with reading(home) as connection:
        return read_facts(connection, statement)


def is_named(home: Path, text: str) -> str:
    """Return what the record knows by a name: pack, lot, blend, run, unit, shipment or nothing."""
    names = (("pack", pack.c.serial), ("lot", lot.c.code), ("blend", blend.c.code),
             ("run", run.c.uid), ("unit", unit.c.sscc),
             ("shipment", shipment.c.number))  # fmt: skip
    with reading(home) as connection:
        for what, column in names:
            if connection.execute(select(column).where(column == text).limit(1)).first():
                return what
    return ""


def blend_of_pack(home: Path, serial: str) -> str:
    """Return the blend lot code of a bag.

    Raises:
        BadInput: no such serial; the message names close ones.
    """
    statement = select(blend.c.code).join(pack).where(pack.c.serial == serial)
    with reading(home) as connection:
        code = connection.execute(statement).scalar_one_or_none()
        if code is None:
            raise unknown_serial(connection, serial)
        return str(code)
