"""``[scanner]`` of station.toml: a bar-code scanner, serial or USB; the table may be missing."""

from __future__ import annotations

from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import one_of, printable
from station.config.packhouse import ScalePort, ScannerSettings
from station.config.settings import BAUD_RATES, Shape
from station.config.toml_file import Table

KEY = "scanner"


class ScannerTable(Shape):
    """``[scanner]``."""

    url: Annotated[str, printable(200)]
    baud: Annotated[int, one_of(*BAUD_RATES)] = 9600
    bits: Annotated[int, one_of(7, 8)] = 8
    parity: Annotated[str, one_of("none", "even", "odd")] = "none"
    stop_bits: Annotated[int, one_of(1, 2)] = 1


def read_scanner(table: Table, file: str, faults: Faults) -> ScannerSettings | None:
    """Return ``[scanner]``; None where there is none, or after noting what is wrong with it."""
    if KEY not in table:
        return None
    given = check_table(ScannerTable, table, KEY, file, faults)
    if given is None:
        return None
    port = ScalePort(given.url, given.baud, given.bits, given.parity, given.stop_bits)
    return ScannerSettings(port)
