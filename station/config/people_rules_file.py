"""``[people]`` of station.toml: how people sign; the table and every key may be left out."""

from __future__ import annotations

from datetime import timedelta
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import one_of, whole
from station.config.people_rules import PeopleRules
from station.config.settings import Shape
from station.config.toml_file import Table

KEY = "people"
REQUIRED, OFF = "required", "off"


class _Table(Shape):
    """``[people]``."""

    pins: Annotated[str, one_of(REQUIRED, OFF)] = REQUIRED
    lock_minutes: Annotated[int, whole(1, 120, "minutes")] = 10


def read_people_rules(table: Table, file: str, faults: Faults) -> PeopleRules | None:
    """Return ``[people]``, PINs where there is none, or None after noting what is wrong."""
    if KEY not in table:
        return PeopleRules()
    read = check_table(_Table, table, KEY, file, faults)
    if read is None:
        return None
    return PeopleRules(read.pins == REQUIRED, timedelta(minutes=read.lock_minutes))
