"""Questions to the record. Each opens the file read-only, takes one view of it and closes it."""

from __future__ import annotations

import difflib
from collections import Counter
from datetime import date, datetime, timedelta, timezone
from decimal import Decimal
from functools import lru_cache
from pathlib import Path

from sqlalchemy import ColumnElement, Connection, RowMapping, bindparam, case, func, select

from station.core.lots import InputLot
from station.core.mass import Mass, Unit
from station.core.metrology.verdict import Verdict
from station.core.pack import IN_THE_BATCH, LabelState, PackId, PackRecord, Quality
from station.errors import BadInput
from station.line.state import Tally
from station.store import journal as j
from station.store.answers import (
    LastRun,
    LotTrace,
    PackLine,
    PackTrace,
    RejectRow,
    RunLine,
    Summary,
)
from station.store.bodies import draft_of, run_of
from station.store.columns import mass_of
from station.store.engine import reading
from station.store.prepared import Prepared
from station.store.purged import refusal_of, refusal_of_bag
from station.store.tables import (
    LABEL_OPEN,
    OF_BLEND,
    REJECTED,
    blend,
    journal,
    lot,
    lot_use,
    pack,
    run,
)

NEIGHBOURS = 20
"""Bags shown before and after a traced one."""

_SHOWN = 5  # close matches named in an error
_MICRO_TO_KILO = Decimal("1e-9")

_PACK_LINE = (
    select(
        pack.c.serial,
        pack.c.judged_at,
        pack.c.offset_minutes,
        blend.c.code.label("blend_lot"),
        blend.c.use_by,
        pack.c.net_digits,
        pack.c.net_unit,
        pack.c.net_ug,
        pack.c.quality,
        pack.c.label,
    )
    .select_from(pack)
    .join(blend, OF_BLEND)
)


_REJECTS = Prepared(
    select(
        *(pack.c[name] for name in ("serial", "judged_at", "offset_minutes", "verdict", "quality")),
        *(pack.c[name] for name in ("net_digits", "net_unit", "reason", "label", "operator")),
        blend.c.code,
        *(run.c[name] for name in ("product", "version", "name", "nominal_digits", "nominal_unit")),
    )
    .select_from(pack)
    .join(blend, OF_BLEND)
    .join(run, blend.c.run_id == run.c.id)
    .where(blend.c.production_day == bindparam("day"), REJECTED)
    .order_by(pack.c.id)
)


def rejects_of_day(home: Path, day: date) -> tuple[RejectRow, ...]:
    """Return the bags set aside on a production day, in order, whatever became of them later."""
    with reading(home) as connection:
        rows = _REJECTS.execute(connection, {"day": day}).fetchall()
    return tuple(
        RejectRow(
            serial=serial,
            at=local_time(datetime.fromisoformat(at), offset),
            product=product,
            version=version,
            name=name,
            blend_lot=code,
            nominal=shown_mass(nominal_digits, nominal_unit),
            net=shown_mass(net_digits, net_unit),
            verdict=_VERDICTS[verdict],
            quality=_QUALITIES[quality],
            reason=reason,
            label=_LABELS[label],
            operator=operator,
        )
        for (
            serial, at, offset, verdict, quality, net_digits, net_unit, reason, label, operator,
            code, product, version, name, nominal_digits, nominal_unit,
        ) in rows
    )  # fmt: skip


_VERDICTS, _QUALITIES, _LABELS = (
    {str(word): word for word in Verdict},
    {str(word): word for word in Quality},
    {str(word): word for word in LabelState},
)


@lru_cache(maxsize=1024)
def shown_mass(digits: str, unit: str) -> Mass:
    """A mass as it stands in a row; many bags show the same."""
    return Mass(Decimal(digits), Unit(unit))


@lru_cache(maxsize=64)
def _zone(offset_minutes: int) -> timezone:
    return timezone(timedelta(minutes=offset_minutes))


def trace_lot(home: Path, code: str) -> LotTrace:
    """Return every bag that could hold an input lot, with their blends and runs.

    A blend that a lot left again before its first bag is not named.

    Raises:
        BadInput: no such input lot; the message names close ones.
    """
    with reading(home) as connection:
        found = connection.execute(select(lot).where(lot.c.code == code)).mappings().one_or_none()
        if found is None:
            raise _unknown_lot(connection, code)
        holding = select(lot_use.c.lot_set_id).where(lot_use.c.lot == code)
        has_bags = blend.c.first_bag.is_not(None)
        blends = connection.execute(
            select(blend.c.id, blend.c.code, blend.c.run_id)
            .where(blend.c.lot_set_id.in_(holding), has_bags)
            .order_by(blend.c.id)
        ).all()
        runs = run_lines(connection, run.c.id.in_({row.run_id for row in blends}))
        packs = (
            connection.execute(
                _PACK_LINE.where(blend.c.id.in_([row.id for row in blends])).order_by(pack.c.id)
            )
            .mappings()
            .all()
        )
    return LotTrace(
        lot=InputLot(**found),
        runs=runs,
        blend_lots=tuple(dict.fromkeys(row.code for row in blends)),
        packs=tuple(_pack_line(row) for row in packs),
        counts=dict(Counter(row["quality"] for row in packs)),
        kilograms=sum((row["net_ug"] for row in packs), 0) * _MICRO_TO_KILO,
    )


def trace_pack(home: Path, serial: str) -> PackTrace:
    """Return one bag with all its facts, its input lots with suppliers, and its neighbours.

    Raises:
        BadInput: no such serial; the message names close ones.
    """
    with reading(home) as connection:
        row = connection.execute(
            select(
                pack,
                blend.c.run_id,
                blend.c.lot_set_id,
                journal.c.seq,
                journal.c.hash,
                journal.c.canonical,
            )
            .select_from(pack)
            .join(blend, OF_BLEND)
            .join(journal, pack.c.entry_id == journal.c.id)
            .where(pack.c.serial == serial)
        ).one_or_none()
        if row is None:
            raise unknown_serial(connection, serial)
        entry = j.read_entry(row.canonical)
        (its_run,) = run_lines(connection, run.c.id == row.run_id)
        lots = connection.execute(
            select(lot)
            .join(lot_use, lot_use.c.lot == lot.c.code)
            .where(lot_use.c.lot_set_id == row.lot_set_id)
            .order_by(lot.c.component, lot.c.code)
        ).mappings()
        near = connection.execute(
            _PACK_LINE.where(
                pack.c.id.between(row.id - NEIGHBOURS, row.id + NEIGHBOURS),
                pack.c.id != row.id,
                pack.c.epoch == row.epoch,
            ).order_by(pack.c.id)
        ).mappings()
        return PackTrace(
            record=PackRecord(
                PackId(entry.site, entry.station, entry.epoch, row.number),
                row.uid,
                draft_of(entry.body, entry.at),
                row.seq,
                row.hash.hex(),
            ),
            quality=row.quality,
            label=row.label,
            reason=row.reason,
            run=its_run,
            lots=tuple(InputLot(**each) for each in lots),
            neighbours=tuple(_pack_line(each) for each in near),
        )


def labels_in(home: Path, state: LabelState) -> tuple[str, ...]:
    """Return the serials whose label is in one state, oldest first; reads all bags."""
    statement = select(pack.c.serial).where(pack.c.label == state).order_by(pack.c.id)
    with reading(home) as connection:
        return tuple(connection.execute(statement).scalars())


def in_doubt(home: Path) -> tuple[str, ...]:
    """Return the serials of bags about whose label a person must answer, oldest first."""
    doubtful = (LABEL_OPEN, pack.c.label == LabelState.IN_DOUBT)
    statement = select(pack.c.serial).where(*doubtful).order_by(pack.c.id)
    with reading(home) as connection:
        return tuple(connection.execute(statement).scalars())


def known_lots(home: Path) -> tuple[InputLot, ...]:
    """Return all input lots, by code."""
    with reading(home) as connection:
        rows = connection.execute(select(lot).order_by(lot.c.code)).mappings()
        return tuple(InputLot(**row) for row in rows)


def run_tally(home: Path, run_id: str) -> Tally:
    """Return the running figures of a run; all zero for one without bags.

    Held and released bags are good ones, as on the packer's screen.

    Raises:
        BadInput: no such run.
    """
    with reading(home) as connection:
        row = connection.execute(select(run.c.id).where(run.c.uid == run_id)).one_or_none()
        if row is None:
            raise refusal_of(connection, run_id) or BadInput(
                f"run {run_id} is not in the record", "give the id of a run"
            )
        return _tally(connection, row.id)


def last_run(home: Path) -> LastRun | None:
    """Return the run started last with its figures, or None before the first."""
    statement = (
        select(run.c.id, run.c.ended_at, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .order_by(run.c.id.desc())
        .limit(1)
    )
    with reading(home) as connection:
        row = connection.execute(statement).one_or_none()
        if row is None:
            return None
        entry = j.read_entry(row.canonical)
        return LastRun(run_of(entry.body), row.ended_at is None, _tally(connection, row.id))


def summary(home: Path) -> Summary:
    """Return counts over the whole record; reads all of it."""
    with reading(home) as connection:
        counted = connection.execute(
            select(pack.c.quality, pack.c.label, func.count(), func.sum(pack.c.net_ug)).group_by(
                pack.c.quality, pack.c.label
            )
        ).all()
        distinct = connection.execute(select(func.count(pack.c.serial.distinct()))).scalar_one()
        runs = connection.execute(select(func.count()).select_from(run)).scalar_one()
        entries = j.count(connection)
    qualities: Counter[Quality] = Counter()
    labels: Counter[LabelState] = Counter()
    for quality, label, number, _ in counted:
        qualities[quality] += number
        labels[label] += number
    return Summary(
        packs=qualities.total(),
        good=qualities[Quality.GOOD],
        rejects=qualities[Quality.REJECT],
        labels=dict(labels),
        duplicate_serials=qualities.total() - distinct,
        runs=runs,
        entries=entries,
        net_micrograms=sum(row[3] for row in counted if row[0] is Quality.GOOD),
    )


def _tally(connection: Connection, run_id: int) -> Tally:
    good = pack.c.quality.in_(IN_THE_BATCH)
    below = pack.c.verdict.in_((Verdict.BELOW_T1, Verdict.BELOW_T2))

    def number(condition: ColumnElement[bool]) -> ColumnElement[int]:
        return func.coalesce(func.sum(case((condition, 1), else_=0)), 0)

    row = connection.execute(
        select(
            number(good),
            number(pack.c.rejected == 1),
            func.coalesce(func.sum(case((good, pack.c.net_ug), else_=0)), 0),
            number(good & below),
        )
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.run_id == run_id)
    ).one()
    return Tally(*row)


def run_lines(connection: Connection, condition: ColumnElement[bool]) -> tuple[RunLine, ...]:
    """Return the runs a condition names, in the order they were started."""
    rows = connection.execute(select(run).where(condition).order_by(run.c.id)).mappings()
    return tuple(
        RunLine(
            uid=row["uid"],
            line=row["line"],
            product=row["product"],
            version=row["version"],
            name=row["name"],
            gtin=row["gtin"],
            nominal=mass_of(row, "nominal"),
            lead=row["lead"],
            operator=row["operator"],
            started=local_time(row["started_at"], row["offset_minutes"]),
            ended=row["ended_at"] and local_time(row["ended_at"], row["offset_minutes"]),
        )
        for row in rows
    )


def _pack_line(row: RowMapping) -> PackLine:
    return PackLine(
        serial=row["serial"],
        at=local_time(row["judged_at"], row["offset_minutes"]),
        blend_lot=row["blend_lot"],
        use_by=row["use_by"],
        net=mass_of(row, "net"),
        quality=row["quality"],
        label=row["label"],
    )


def local_time(utc: datetime, offset_minutes: int) -> datetime:
    """Return a stored moment in the plant's time of that moment."""
    return utc.astimezone(_zone(offset_minutes))


def _unknown_lot(connection: Connection, code: str) -> BadInput:
    if connection.execute(select(blend.c.id).where(blend.c.code == code).limit(1)).first():
        inputs = connection.execute(
            select(lot_use.c.lot)
            .distinct()
            .join(blend, blend.c.lot_set_id == lot_use.c.lot_set_id)
            .where(blend.c.code == code)
            .order_by(lot_use.c.lot)
        ).scalars()
        return BadInput(
            f"{code} is a blend lot, not an input lot", f"it is made from {', '.join(inputs)}"
        )
    codes = connection.execute(select(lot.c.code)).scalars().all()
    return unknown(f"input lot {code!r}", code.upper(), list(codes))


def unknown_serial(connection: Connection, serial: str) -> BadInput:
    """Return the refusal of a serial the record has not: its purge, or close ones."""
    if (gone := refusal_of_bag(connection, serial)) is not None:
        return gone
    head = serial[: serial.rfind("-") + 1] if "-" in serial else ""
    near = select(pack.c.serial).order_by(pack.c.serial.desc()).limit(1000)
    if head:
        starting = near.where(pack.c.serial.between(head.upper(), f"{head.upper()}~"))
        if found := connection.execute(starting).scalars().all():
            return unknown(f"serial {serial!r}", serial.upper(), list(found))
    return unknown(f"serial {serial!r}", serial.upper(), list(connection.execute(near).scalars()))


def unknown(what: str, given: str, known: list[str]) -> BadInput:
    """Return the refusal of a name the record has not, with close ones."""
    close = difflib.get_close_matches(given, known, _SHOWN, 0.6)
    if close:
        return BadInput(f"{what} is not in the record", f"close to it are {', '.join(close)}")
    detail = f"there are {len(known)} others, none alike" if known else "the record has none yet"
    return BadInput(f"{what} is not in the record", detail)
