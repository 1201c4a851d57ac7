"""From the words of a command line to an exit code, without a traceback."""

from __future__ import annotations

import io
import logging
import sys
from collections.abc import Sequence

import typer
from typer.exceptions import TyperException

from station.cli.answer import Exit, show_error
from station.errors import BadInput, StationBug, StationError

_LOG = logging.getLogger(__name__)


def run(app: typer.Typer, arguments: Sequence[str]) -> int:
    """Carry out a command line and return its exit code.

    A wrong call is bad input like any other. What nobody foresaw is a fault of the station: it is
    told in one line, and in full to whoever turned logging on.
    """
    _speak_utf8()
    as_json = "--json" in arguments
    command = typer.main.get_command(app)
    try:
        code = command.main(list(arguments), prog_name="station", standalone_mode=False)
    except TyperException as wrong:
        words = wrong.format_message().strip().rstrip(".")
        # Without words the help was shown already, in place of a verb.
        return (
            show_error(BadInput(words, "see station --help"), as_json) if words else Exit.BAD_INPUT
        )
    except typer.Abort:
        return Exit.NO
    except StationError as fault:
        return show_error(fault, as_json)
    except Exception as bug:  # noqa: BLE001 - the last place that can say it in words
        _LOG.debug("unforeseen", exc_info=True)
        said = StationBug(f"fault of the station, {type(bug).__name__}", str(bug))
        return show_error(said, as_json)
    return code if isinstance(code, int) else Exit.DONE


def _speak_utf8() -> None:
    """Names, lots and units come out whole whatever the machine's own encoding is."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(encoding="utf-8", errors="replace")
