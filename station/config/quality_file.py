"""``[quality]`` of station.toml, and ``checks`` of a product: what QA looks at."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import time, timedelta
from typing import Annotated

from pydantic import Field

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, Rule, one_of, whole
from station.config.quality import QualitySettings
from station.config.settings import ProductRow, QaRow, Shape
from station.config.toml_file import Table
from station.core.checks.qa import UNITS, QaError, QaKind, QaLimit
from station.core.dispositions import Disposition

KEY = "quality"
_WORDS = tuple(str(one) for one in Disposition)


class _Table(Shape):
    """``[quality]``."""

    reject_tickets: Flag = False
    grace_minutes: Annotated[int, whole(0, 120, "minutes")] = 10
    witness_for: list[Annotated[str, one_of(*_WORDS)]] = Field(default_factory=list)
    release_needs_two: Flag = True
    shifts_begin: list[
        Annotated[time, Rule("times of day without quotes, such as 04:00:00", lambda at: at)]
    ] = Field(default_factory=list)


def read_quality(table: Table, file: str, faults: Faults) -> QualitySettings | None:
    """Return ``[quality]``, the usual where there is none, or None after noting what is wrong."""
    if KEY not in table:
        return QualitySettings()
    read = check_table(_Table, table, KEY, file, faults)
    if read is None:
        return None
    shifts = tuple(read.shifts_begin)
    if list(shifts) != sorted(set(shifts)):
        faults.add(file, f"{KEY}.shifts_begin", "do not rise", "each time once, rising")
        return None
    return QualitySettings(
        tickets=read.reject_tickets,
        grace=timedelta(minutes=read.grace_minutes),
        witnessed=frozenset(Disposition(one) for one in read.witness_for),
        release_two=read.release_needs_two,
        shifts=shifts,
    )


def limit_of(row: QaRow) -> QaLimit:
    """The check of a row; a measured one without a unit has the first its kind may have.

    Raises:
        QaError: it cannot be.
    """
    kind = QaKind(row.check)
    every = row.every_minutes
    return QaLimit(
        kind=kind,
        unit=row.unit or UNITS.get(kind, ("",))[0],
        least=row.least,
        most=row.most,
        every=None if every is None else timedelta(minutes=every),
        at_start=row.at_start,
        pieces=tuple(row.pieces),
    )


def limits_of(row: ProductRow) -> tuple[QaLimit, ...]:
    """The checks of a product that has no problem."""
    return tuple(limit_of(one) for one in row.checks)


def qa_problems(row: ProductRow) -> Iterator[tuple[str, str, str]]:
    """What is wrong with the checks of a product: key, why, what is allowed."""
    seen: set[str] = set()
    for number, one in enumerate(row.checks, start=1):
        key = f"checks[{number}]"
        if one.check in seen:
            yield key, f'"{one.check}" stands twice', "each check once"
        seen.add(one.check)
        try:
            limit_of(one)
        except QaError as fault:
            yield key, str(fault), ""
