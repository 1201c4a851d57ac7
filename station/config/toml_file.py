"""Reads one TOML file; what cannot be read is named with its place."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal

from station.config.faults import Faults
from station.errors import EnvironmentFault

_PLACE = re.compile(r"(.*) \(at (?:line (\d+), column (\d+)|(end of document))\)", re.DOTALL)

Table = dict[str, object]


def read_toml(file: str, faults: Faults) -> Table | None:
    """Return what a file of the folder says, or None after noting why it cannot be read.

    A number with a decimal point arrives as an exact Decimal, never as a binary float.

    Raises:
        EnvironmentFault: the file is there and the machine does not let it be read.
    """
    path = faults.path_of(file)
    try:
        raw = path.read_bytes()
    except FileNotFoundError:
        faults.add(file, "file", "is missing", f"a file {path}")
        return None
    except OSError as fault:
        raise EnvironmentFault(f"{path} cannot be read", fault.strerror or str(fault)) from fault
    try:
        return tomllib.loads(raw.decode("utf-8-sig"), parse_float=Decimal)
    except UnicodeDecodeError as fault:
        line = raw.count(b"\n", 0, fault.start) + 1
        faults.add(file, f"line {line}", "is not UTF-8 text", "a file saved as UTF-8")
    except tomllib.TOMLDecodeError as fault:
        faults.add(file, *_placed(str(fault)), allowed="TOML 1.0")
    except RecursionError:
        faults.add(file, "file", "is nested too deeply", "TOML 1.0")
    except (ValueError, ArithmeticError):
        faults.add(file, "file", "holds a number beyond all measure", "numbers of a packhouse")
    return None


def _placed(message: str) -> tuple[str, str]:
    """Split a parser's message into its place and its words."""
    match = _PLACE.fullmatch(message)
    if match is None:
        return "file", message
    words, line, column, _ = match.groups()
    return (f"line {line}, column {column}" if line else "end of file"), words
