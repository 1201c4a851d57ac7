"""Options that several verbs share, and how their words are read."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path
from typing import Annotated

import typer

from station.core.mass import Mass, MassError
from station.errors import BadInput

AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON document.")]
Rules = Annotated[
    str, typer.Option("--rules", metavar="ID", help="Net-quantity rules, such as eu-76-211.")
]
Nominal = Annotated[
    str, typer.Option("--nominal", metavar="MASS", help="Declared net quantity, such as 250g.")
]
Home = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", envvar="STATION_HOME", help="Folder of the record."),
]
Config = Annotated[
    Path | None,
    typer.Option(
        "--config",
        metavar="DIR",
        envvar="STATION_CONFIG",
        help="Folder of the settings; names the home where --home does not.",
    ),
]
NeededConfig = Annotated[
    Path,
    typer.Option(
        "--config", metavar="DIR", envvar="STATION_CONFIG", help="Folder of the settings."
    ),
]
Force = Annotated[bool, typer.Option("--force", help="Write over files that are there.")]

_DAY = re.compile(r"\d{4}-\d{2}-\d{2}", re.ASCII)


def read_mass(option: str, text: str) -> Mass:
    """Return the mass an option gives.

    Raises:
        BadInput: it is none; names the option and the forms allowed.
    """
    try:
        return Mass.parse(text)
    except MassError as fault:
        raise BadInput(option, str(fault)) from fault


def read_day(option: str, text: str) -> date:
    """Return the day an option gives.

    Raises:
        BadInput: it is no day, or in another form than YYYY-MM-DD.
    """
    try:
        if _DAY.fullmatch(text):
            return date.fromisoformat(text)
    except ValueError:
        pass
    raise BadInput(option, f"{text!r} is no day: write it as YYYY-MM-DD, such as 2026-11-24")


def home_of(home: Path | None, config: Path | None) -> Path:
    """Return the folder of the record, as named by the home or else by the settings.

    Raises:
        BadInput: neither names one, the folder is not there, or the settings are faulty.
    """
    if home is None and config is None:
        raise BadInput(
            "no home is named",
            "give --home DIR or set STATION_HOME, or name the settings with --config DIR or "
            "STATION_CONFIG",
        )
    found = home
    if found is None:
        assert config is not None
        from station.config.load import load_settings  # slow to load

        found = load_settings(config).home
    if not found.is_dir():
        raise BadInput(
            f"home {found}", "is no folder: name the one the station keeps its record in"
        )
    return found
