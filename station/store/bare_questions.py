"""The floor of the questions: the same rows by one plain statement, opened and closed as bare."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from contextlib import closing
from datetime import date
from pathlib import Path

from station.store.engine import database

_LOT = """
    SELECT serial, judged_at, offset_minutes, blend_id, net_digits, net_unit, net_ug, quality, label
    FROM blend CROSS JOIN pack ON pack.id BETWEEN first_bag AND last_bag AND blend_id = blend.id
    WHERE lot_set_id IN (SELECT lot_set_id FROM lot_use WHERE lot = ?) ORDER BY pack.id
"""
_REJECTS = """
    SELECT pack.serial, pack.judged_at, pack.offset_minutes, pack.verdict, pack.quality,
        pack.net_digits, pack.net_unit, pack.reason, pack.label, pack.operator, blend.code,
        run.product, run.version, run.name, run.nominal_digits, run.nominal_unit
    FROM pack JOIN blend ON pack.blend_id = blend.id JOIN run ON blend.run_id = run.id
    WHERE blend.production_day = ? AND pack.rejected = 1 ORDER BY pack.id
"""


def packs_of_lot(home: Path, code: str) -> Sequence[tuple[object, ...]]:
    """Every bag that could hold a lot, as bare rows."""
    return _asked(home, _LOT, code)


def rejects_on(home: Path, day: date) -> Sequence[tuple[object, ...]]:
    """The rejects of a production day, as bare rows."""
    return _asked(home, _REJECTS, day.isoformat())


def newest_bag(home: Path) -> Sequence[tuple[object, ...]]:
    """The last bag of the record, as a bare row."""
    return _asked(home, "SELECT * FROM pack ORDER BY id DESC LIMIT ?", 1)


def _asked(home: Path, statement: str, value: str | int) -> Sequence[tuple[object, ...]]:
    address = f"{database(home).resolve().as_uri()}?mode=ro"
    with closing(sqlite3.connect(address, uri=True)) as connection:
        return connection.execute(statement, (value,)).fetchall()
