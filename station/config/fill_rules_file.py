"""``[fill]`` of station.toml: targets and approvals; every key may be left out."""

from __future__ import annotations

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, MassText
from station.config.fill_rules import FillSettings
from station.config.settings import Shape
from station.config.toml_file import Table

KEY = "fill"


class _Table(Shape):
    """``[fill]``."""

    approve_products: Flag = False
    most_target_step: MassText | None = None


def read_fill(table: Table, file: str, faults: Faults) -> FillSettings | None:
    """Return ``[fill]``, the usual where there is none, or None after noting what is wrong."""
    if KEY not in table:
        return FillSettings()
    read = check_table(_Table, table, KEY, file, faults)
    if read is None:
        return None
    step = read.most_target_step
    if step is not None and step.amount <= 0:
        why = f'"{step}" is no step'
        faults.add(file, f"{KEY}.most_target_step", why, "a mass above zero, or leave it out")
        return None
    return FillSettings(read.approve_products, step)
