"""The verb ``run``: the station on its own scale, in its window."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from drivers.errors import PortError, RecordingError
from station.cli.answer import Answer, run_verb
from station.cli.options import AsJson
from station.errors import BadInput

Settings = Annotated[
    Path, typer.Option("--config", metavar="DIR", envvar="STATION_CONFIG", help="The settings.")
]
HomeFolder = Annotated[
    Path | None,
    typer.Option(
        "--home", metavar="DIR", envvar="STATION_HOME", help="Folder of the record, if another."
    ),
]


Recording = Annotated[
    Path | None,
    typer.Option("--record", metavar="FILE", help="Keep everything the scale sends."),
]


def run(
    config: Settings,
    home: HomeFolder = None,
    record: Recording = None,
    as_json: AsJson = False,
) -> None:
    """Run the station: read the scale, check, label and record every bag."""
    run_verb(as_json, lambda: _run(config, home, record))


def _run(config: Path, home: Path | None, record: Path | None) -> Answer:
    from station.app.places import home_folder, packhouse  # slow to load, as Qt is
    from station.app.window import show_station

    house = packhouse(config, home)
    place = home_folder(home or house.settings.home)
    try:
        show_station(house, place, record, config)
    except (PortError, RecordingError) as refused:  # as the settings or --record have it
        raise BadInput(refused.title, refused.detail) from refused
    return Answer({"home": str(place)}, ())
