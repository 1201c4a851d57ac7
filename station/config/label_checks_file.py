"""``[label_checks]`` of station.toml: what about labels is looked at before bags are taken."""

from __future__ import annotations

from datetime import timedelta
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, whole
from station.config.label_checks import LabelChecks
from station.config.settings import Shape
from station.config.toml_file import Table

KEY = "label_checks"


class _Table(Shape):
    """``[label_checks]``."""

    rolls: Flag
    first_off: Flag
    first_off_each_roll: Flag = False
    scan_back_every_minutes: Annotated[int, whole(0, 720, "minutes, 0 for none")] = 60
    grace_minutes: Annotated[int, whole(0, 60, "minutes")] = 10
    copies_without_lead: Annotated[int, whole(0, 9, "copies")] = 1


def read_label_checks(table: Table, file: str, faults: Faults) -> LabelChecks | None:
    """Return ``[label_checks]``, or None after noting what is wrong with it."""
    read = check_table(_Table, table, KEY, file, faults)
    if read is None:
        return None
    every = read.scan_back_every_minutes
    return LabelChecks(
        rolls=read.rolls,
        first_off=read.first_off,
        first_off_each_roll=read.first_off_each_roll,
        scan_every=timedelta(minutes=every) if every else None,
        grace=timedelta(minutes=read.grace_minutes),
        copies_alone=read.copies_without_lead,
    )
