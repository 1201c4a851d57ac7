"""``[lots]`` of station.toml: how input lots are followed; every key may be left out."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, Percent, whole
from station.config.lot_rules import LotSettings
from station.config.settings import Shape
from station.config.toml_file import Table
from station.core.balance import Water
from station.core.line_lots import Overlap
from station.line.lot_change import LotRules
from station.line.lot_duty import LONG_OVERLAP

KEY = "lots"
_MINUTE = timedelta(minutes=1)


class _Table(Shape):
    """``[lots]``."""

    on: Flag = True
    overlap_bags: Annotated[int, whole(1, 10_000, "bags")] | None = None
    overlap_minutes: Annotated[int, whole(1, 720, "minutes")] | None = None
    overlap_alarm_minutes: Annotated[int, whole(1, 720, "minutes")] = LONG_OVERLAP // _MINUTE
    rework_hours: Annotated[int, whole(1, 48, "hours")] = 2
    water_least_percent: Percent | None = None
    water_most_percent: Percent | None = None


def read_lot_rules(table: Table, file: str, faults: Faults) -> LotSettings | None:
    """Return ``[lots]``, the usual where there is none, or None after noting what is wrong."""
    if KEY not in table:
        return LotSettings()
    read = check_table(_Table, table, KEY, file, faults)
    if read is None:
        return None
    least = read.water_least_percent or Decimal(0)
    most = read.water_most_percent or least
    try:
        water = Water(least, most)
    except ValueError as fault:
        faults.add(file, f"{KEY}.water_most_percent", str(fault), f"{least} or more, below 100")
        return None
    minutes = read.overlap_minutes
    overlap = Overlap(read.overlap_bags, None if minutes is None else timedelta(minutes=minutes))
    rules = LotRules(overlap, timedelta(hours=read.rework_hours))
    return LotSettings(read.on, rules, water, read.overlap_alarm_minutes * _MINUTE)
