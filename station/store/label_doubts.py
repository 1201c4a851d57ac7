"""Labels a person must answer for: in doubt, or a copy that came out and is on no bag yet."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Text, and_, cast, func, literal, or_, select

from station.core.journal import EntryKind
from station.core.label_life import OpenLabel, copy_mark
from station.core.pack import LabelState
from station.store.engine import reading
from station.store.journal import read_entry
from station.store.tables import LABEL_OPEN, OF_BLEND, blend, journal, pack, run


def open_labels(home: Path) -> tuple[OpenLabel, ...]:
    """Return the labels that wait for an answer, oldest bag first."""
    copy_out = and_(pack.c.label == LabelState.SPOOLED, pack.c.copies > 0)
    statement = (
        select(pack, run.c.name)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(LABEL_OPEN, or_(pack.c.label == LabelState.IN_DOUBT, copy_out))
        .order_by(pack.c.id)
    )
    text = func.nullif(cast(journal.c.canonical, Text), "")  # of a purged entry nothing is left
    serial_of = func.json_extract(text, literal("$.body.serial"))
    found = []
    with reading(home) as connection:
        for row in connection.execute(statement).all():
            said = (
                select(journal.c.canonical)
                .where(journal.c.id > row.entry_id, journal.c.kind == EntryKind.LABEL)
                .where(serial_of == row.serial)
                .order_by(journal.c.id.desc())
                .limit(1)
            )
            entry = read_entry(connection.execute(said).scalar_one())
            why = str(entry.body["why"]) or "a copy was printed"
            found.append(
                OpenLabel(
                    serial=row.serial,
                    product=row.name,
                    mark=copy_mark(row.copies),
                    label=row.label,
                    why=why,
                    judged_at=row.judged_at,
                    offset_minutes=row.offset_minutes,
                )
            )
    return tuple(found)
