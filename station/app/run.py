"""The verb ``run``: the station on its own scale, in its window."""

from __future__ import annotations

import secrets
from pathlib import Path
from typing import Annotated

import typer

from drivers.errors import PortError, RecordingError
from station.app.memory import loading
from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson
from station.errors import BadInput

_NO_PINS = 'needs PINs, or anybody could leave it: set pins = "required" under [people]'
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


Training = Annotated[
    bool,
    typer.Option(
        "--training",
        help="Train on a simulated scale; the record is one of its own and no bag a product.",
    ),
]
FullScreen = Annotated[
    bool,
    typer.Option("--kiosk", help="Fill the screen; only somebody with the right leaves it."),
]
Tiles = Annotated[
    bool | None,
    typer.Option(
        "--tiles/--no-tiles",
        help="With --training: show what is missing as tiles; else on the first day alone.",
    ),
]


def run(
    config: Settings,
    home: HomeFolder = None,
    record: Recording = None,
    training: Training = False,
    tiles: Tiles = None,
    kiosk: FullScreen = False,
    as_json: AsJson = False,
) -> None:
    """Run the station: read the scale, check, label and record every bag."""

    def work() -> Answer:
        if training:
            if record is not None:
                raise BadInput("--record", "goes with a real scale: leave out --training")
            if kiosk:
                raise BadInput("--kiosk", "leaves no room for the simulated scale of --training")
            return _train(config, home, tiles)
        if tiles is not None:
            raise BadInput("--tiles", "goes with --training")
        return _run(config, home, record, kiosk)

    run_verb(as_json, work)


def _train(config: Path, home: Path | None, tiles: bool | None) -> Answer:
    with loading():
        from station.app.places import home_folder, packhouse  # slow to load, as Qt is
        from station.app.practice_window import show_training
        from station.app.training import training_house
    from station.clock import SystemClock
    from station.line.opening import calendar_day

    house = packhouse(config, home)
    today = calendar_day(SystemClock(house.settings.zone).now())
    house = training_house(house, home or house.settings.home, today)
    place = home_folder(house.settings.home)
    done = show_training(house, place, seed=secrets.randbits(31), tiles=tiles)
    document: dict[str, Json] = {
        "home": str(place),
        "training": True,
        "packs": done.good,
        "rejects": done.rejects,
        "tiles": done.tiles,
    }
    from station.cli.page import heading

    words = f"Training is over: {done.good} good bags, {done.rejects} set aside, none a product."
    return Answer(document, (heading(words),))


def _run(config: Path, home: Path | None, record: Path | None, kiosk: bool) -> Answer:
    with loading():
        from station.app.starting import starting  # slow to load, as Qt is
    with starting(config, full=kiosk) as begun:
        with loading():
            from station.app.places import home_folder, packhouse
            from station.app.window import show_station

            house = packhouse(config, home)
        if kiosk and not house.settings.people.pins:
            raise BadInput("--kiosk", _NO_PINS)
        place = home_folder(home or house.settings.home)
        try:
            shown = None if begun is None else begun.leave
            show_station(house, place, record, config, kiosk=kiosk, shown=shown)
        except (PortError, RecordingError) as refused:  # as the settings or --record have it
            raise BadInput(refused.title, refused.detail) from refused
    return Answer({"home": str(place)}, ())
