"""Net weights from one column of a CSV file (RFC 4180, in UTF-8); every fault has its line."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from pathlib import Path

from station.core.mass import Mass, MassError, Unit
from station.errors import BadInput, EnvironmentFault

_FORM = (
    "the file must be plain UTF-8 with commas between columns, the columns' names in line 1, "
    "and decimal points"
)
_MARKS = (  # first bytes of a file, what they are
    (b"\xef\xbb\xbf", "a UTF-8 byte-order mark"),
    (b"\xff\xfe", "the byte-order mark of UTF-16"),
    (b"\xfe\xff", "the byte-order mark of UTF-16"),
)
_SEPARATORS = ((";", "semicolons"), ("\t", "tabs"), ("|", "upright bars"))


def read_nets(path: Path, column: str, unit: Unit) -> tuple[Mass, ...]:
    """Read the net weights of a column, in order.

    Args:
        path: the file.
        column: name of the column, as in line 1.
        unit: unit of cells without one, and of the result; ``250.4`` or ``0.2504 kg``.

    Raises:
        BadInput: no such file or column, or a cell that is no weight; names line and column.
        EnvironmentFault: the file cannot be read.
    """
    rows = _rows(path)
    _, heading = next(rows, (1, []))
    place = _place_of(column, heading, path)
    nets = []
    for line, row in rows:
        if len(row) != len(heading):
            raise BadInput(f"{path}, line {line}", _wrong_count(row, heading, column))
        nets.append(_net(row[place], unit, f"{path}, line {line}, column {column}"))
    if not nets:
        raise BadInput(f"{path}, line 2", "there is no weight under the columns' names")
    return tuple(nets)


def _rows(path: Path) -> Iterator[tuple[int, list[str]]]:
    """Rows with the number of the line each ends in; empty lines at the end left out."""
    reader = csv.reader(io.StringIO(_text(path), newline=""), strict=True)
    empty: list[int] = []
    try:
        for row in reader:
            if not row:
                empty.append(reader.line_num)
                continue
            if empty:
                raise BadInput(f"{path}, line {empty[0]}", "is empty: take it out, or fill it")
            yield reader.line_num, [cell.strip() for cell in row]
    except csv.Error as fault:
        raise BadInput(f"{path}, line {reader.line_num}", f"{fault}; {_FORM}") from fault


def _text(path: Path) -> str:
    try:
        kept = path.read_bytes()
    except (FileNotFoundError, IsADirectoryError, NotADirectoryError) as fault:
        raise BadInput(f"--csv {path}", "is no file: give a CSV file") from fault
    except OSError as fault:
        raise EnvironmentFault(f"cannot read {path}", str(fault.strerror)) from fault
    for mark, words in _MARKS:
        if kept.startswith(mark):
            raise BadInput(
                f"{path}, line 1, column 1", f"begins with {words}: save it without; {_FORM}"
            )
    try:
        return kept.decode("utf-8")
    except UnicodeDecodeError as fault:
        line = kept.count(b"\n", 0, fault.start) + 1
        before = kept.rfind(b"\n", 0, fault.start) + 1
        where = f"{path}, line {line}, byte {fault.start - before + 1}"
        raise BadInput(where, f"is not UTF-8; {_FORM}") from fault


def _place_of(column: str, heading: list[str], path: Path) -> int:
    where = f"{path}, line 1"
    if heading.count(column) == 1:
        return heading.index(column)
    if heading.count(column) > 1:
        raise BadInput(where, f"two columns are called {column}: give each its own name")
    for sign, words in _SEPARATORS:
        if any(sign in name for name in heading):
            raise BadInput(where, f"has {words} between its columns; {_FORM}")
    known = ", ".join(heading)
    said = f"its columns are {known}" if known else "it is empty"
    raise BadInput(where, f"there is no column {column}: {said}; name one with --column")


def _wrong_count(row: list[str], heading: list[str], column: str) -> str:
    words = f"cells: {len(row)}, but line 1 has {len(heading)}"
    for sign, name in _SEPARATORS:
        if any(sign in cell for cell in row):
            return f"{words}, with {name} between them; {_FORM}"
    if len(row) > len(heading):
        return f"{words}: a decimal comma in column {column} or another? {_FORM}"
    return f"{words}; {_FORM}"


def _net(cell: str, unit: Unit, where: str) -> Mass:
    try:
        net = _mass(cell, unit).in_unit(unit)
    except MassError as fault:
        raise BadInput(where, _why(cell, unit, fault)) from fault
    if net.amount < 0:
        raise BadInput(where, f"{cell} is below zero: a net weight is zero or more")
    return net


def _mass(cell: str, unit: Unit) -> Mass:
    bare = cell[-1:].isdigit()
    return Mass.parse(f"{cell} {unit}" if bare else cell)


def _why(cell: str, unit: Unit, fault: MassError) -> str:
    if not cell:
        return "is empty: every row needs a weight"
    if "," in cell:
        return f"{cell!r} has a comma: write a decimal point, as in {cell.replace(',', '.')}"
    for sign, words in _SEPARATORS:
        if sign in cell:
            return f"{cell!r} has {words}; {_FORM}"
    if "no exact value" in str(fault):
        return f"{fault}: give it in {unit}, as the nominal quantity"
    return (
        f"{cell!r} is not a weight: write a number with a decimal point, such as 250.4 (in {unit}) "
        "or 0.2504 kg"
    )
