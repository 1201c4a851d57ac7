"""What a verb answers, and the one way it reaches the person or the program that asked.

Exit codes: 0 done, 1 the answer is no, 2 bad input, 3 a fault of the surroundings. An answer goes
to stdout, as a table or as one JSON document and nothing else; an error goes to stderr.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from enum import IntEnum
from typing import TYPE_CHECKING

import typer

from station.core.mass import Mass
from station.errors import BadInput, EnvironmentFault, StationBug, StationError

if TYPE_CHECKING:
    from rich.console import RenderableType

Json = str | int | float | bool | None | list["Json"] | dict[str, "Json"]


class Exit(IntEnum):
    """What the exit code of a verb means."""

    DONE = 0
    NO = 1
    BAD_INPUT = 2
    SURROUNDINGS = 3


_CODES: tuple[tuple[type[StationError], Exit], ...] = (
    (BadInput, Exit.BAD_INPUT),
    (EnvironmentFault, Exit.SURROUNDINGS),
    (StationBug, Exit.SURROUNDINGS),
)


@dataclass(frozen=True, slots=True)
class Answer:
    """An answer in both its forms.

    Args:
        document: what ``--json`` prints; masses are text with exact digits.
        page: what a person reads, from top to bottom.
        yes: False where the answer is no: a limit failed, a chain broke.
    """

    document: Mapping[str, Json]
    page: tuple[RenderableType, ...]
    yes: bool = True


def run_verb(as_json: bool, work: Callable[[], Answer]) -> None:
    """Do a verb's work, show its answer or its error, and leave with the right exit code.

    Raises:
        typer.Exit: with the exit code, unless it is 0.
    """
    try:
        answer = work()
    except StationError as fault:
        raise typer.Exit(show_error(fault, as_json)) from fault
    if as_json:
        sys.stdout.write(json.dumps(answer.document, ensure_ascii=False, indent=2) + "\n")
    else:
        from rich.console import Console, Group  # a station that starts shows no page

        Console(highlight=False).print(Group(*answer.page, ""))
    if not answer.yes:
        raise typer.Exit(Exit.NO)


def iso(at: date | None) -> str | None:
    """A day, or a moment with its offset, for a document."""
    return None if at is None else at.isoformat()


def digits(mass: Mass | None) -> str | None:
    """The exact digits of a mass, for a document that names its unit."""
    return None if mass is None else mass.digits


def show_error(fault: StationError, as_json: bool) -> Exit:
    """Write an error to stderr and return its exit code."""
    code = next((code for kind, code in _CODES if isinstance(fault, kind)), Exit.SURROUNDINGS)
    if as_json:
        error = {"title": fault.title, "detail": fault.detail.strip(), "exit": int(code)}
        sys.stderr.write(json.dumps({"error": error}, ensure_ascii=False, indent=2) + "\n")
    else:
        sys.stderr.write(f"{fault}\n")
    return code
