"""``[screen]`` of station.toml: how the station looks and sounds; the table may be missing."""

from __future__ import annotations

from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, one_of
from station.config.screen import ScreenSettings
from station.config.settings import Shape
from station.config.toml_file import Table

KEY = "screen"


class ScreenTable(Shape):
    """``[screen]``."""

    theme: Annotated[str, one_of("light", "dark")] = "light"
    sounds: Flag = True


def read_screen(table: Table, file: str, faults: Faults) -> ScreenSettings:
    """Return ``[screen]``, as it is without one after noting what is wrong with it."""
    given = check_table(ScreenTable, table, KEY, file, faults) if KEY in table else None
    return ScreenSettings() if given is None else ScreenSettings(given.theme, given.sounds)
