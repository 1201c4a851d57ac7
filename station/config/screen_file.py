"""``[screen]`` of station.toml: how the station looks and sounds; the table may be missing."""

from __future__ import annotations

from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, one_of
from station.config.screen import ScreenSettings
from station.config.settings import SPOKEN, Shape
from station.config.toml_file import Table
from station.core.languages import Language

KEY = "screen"


class ScreenTable(Shape):
    """``[screen]``."""

    theme: Annotated[str, one_of("light", "dark")] = "light"
    sounds: Flag = True
    language: Annotated[str, SPOKEN] = str(Language.ENGLISH)


def read_screen(table: Table, file: str, faults: Faults) -> ScreenSettings:
    """Return ``[screen]``, as it is without one after noting what is wrong with it."""
    given = check_table(ScreenTable, table, KEY, file, faults) if KEY in table else None
    if given is None:
        return ScreenSettings()
    return ScreenSettings(given.theme, given.sounds, Language(given.language))
