"""The verb ``demo``: the station on the demo packhouse, in a window or headless."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

from station.app.headless import pack_headless
from station.app.practice import demo_settings
from station.app.summary import DemoSummary
from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson
from station.cli.page import Weight, facts, heading, note
from station.clock import SystemClock
from station.config.load import load, load_settings
from station.config.packhouse import Packhouse
from station.errors import BadInput, EnvironmentFault
from station.line.opening import calendar_day

_MOST_PACKS = 1_000_000

Packs = Annotated[
    int | None,
    typer.Option("--packs", metavar="N", help="A simulated packer packs N good bags."),
]
Headless = Annotated[bool, typer.Option("--headless", help="Without a window.")]
HomeFolder = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", help="Where store and labels go; else a fresh folder."),
]
Settings = Annotated[
    Path | None,
    typer.Option("--config", metavar="DIR", help="Folder of settings; else the demo packhouse."),
]
Seed = Annotated[int, typer.Option("--seed", help="Same seed, same bags.")]


def demo(
    packs: Packs = None,
    headless: Headless = False,
    home: HomeFolder = None,
    config: Settings = None,
    seed: Seed = 1,
    as_json: AsJson = False,
) -> None:
    """Run the station on the demo packhouse with a simulated scale."""
    if headless:
        run_verb(as_json, lambda: _headless(packs, home, config, seed, as_json))
    else:
        run_verb(as_json, lambda: _window(packs, home, config, seed))


def packhouse(config: Path) -> Packhouse:
    """Read settings, counting days from today on the calendar of their plant."""
    settings = load_settings(config)
    today = calendar_day(SystemClock(settings.zone).now())
    return load(config, today)


def home_folder(home: Path | None) -> Path:
    """The folder given, made where it is missing, or a fresh one.

    Raises:
        EnvironmentFault: it cannot be made.
        BadInput: a file stands in its place.
    """
    if home is None:
        return Path(tempfile.mkdtemp(prefix="packhouse-"))
    if home.exists() and not home.is_dir():
        raise BadInput(f"home {home}", "is a file: name a folder")
    try:
        home.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise EnvironmentFault(f"home {home} cannot be made", fault.strerror or "") from fault
    return home


def _headless(
    packs: int | None, home: Path | None, config: Path | None, seed: int, as_json: bool
) -> Answer:
    wanted = 40 if packs is None else packs
    if not 1 <= wanted <= _MOST_PACKS:
        raise BadInput("--packs", f"{wanted} bags: give 1 to {_MOST_PACKS}")
    house = packhouse(config or demo_settings())
    place = home_folder(home)
    bar = Progress(
        TextColumn("packing"),
        BarColumn(),
        MofNCompleteColumn(),
        console=Console(stderr=True),
        disable=as_json,
        transient=True,
    )
    with bar:
        task = bar.add_task("packing", total=wanted)
        figures = pack_headless(
            house, place, wanted, seed, lambda done: bar.update(task, completed=done)
        )
    return _answer(figures)


def _answer(figures: DemoSummary) -> Answer:
    document = figures.document()
    words = "All labels read back equal, the record is whole."
    if not (holds := figures.holds()):
        words = "A label is missing or the record does not hold."
    rows = [(name.replace("_", " "), _said(value)) for name, value in document.items()]
    asked = f"station rejects --day {figures.day} --home {figures.home}"
    page = (
        heading(words, Weight.PLAIN if holds else Weight.STOP),
        facts(rows),
        note(f"Ask the record, for example: {asked}"),
    )
    return Answer(document, page, holds)


def _said(value: Json) -> str:
    if isinstance(value, dict):
        return ", ".join(f"{name.replace('_', ' ')} {_said(one)}" for name, one in value.items())
    return "–" if value is None else str(value)


def _window(packs: int | None, home: Path | None, config: Path | None, seed: int) -> Answer:
    from station.app.window import show_demo

    house = packhouse(config or demo_settings())
    return _answer(show_demo(house, home_folder(home), packs, seed))
