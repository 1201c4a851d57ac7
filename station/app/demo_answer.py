"""What the verb ``demo`` does and answers, in a window or headless."""

from __future__ import annotations

from pathlib import Path

from station.app.headless import pack_headless
from station.app.places import demo_settings, home_folder, packhouse
from station.app.summary import DemoSummary
from station.cli.answer import Answer, Json
from station.cli.page import Weight, facts, heading, note
from station.cli.progress import progress
from station.errors import BadInput

_MOST_PACKS = 1_000_000


def headless(
    packs: int | None, home: Path | None, config: Path | None, seed: int, quiet: bool
) -> Answer:
    """Pack without a window and answer with the figures.

    Args:
        packs: good bags to pack; 40 where None.
        home: folder of the record; a fresh one where None.
        config: folder of settings; the demo packhouse where None.
        seed: same seed, same bags.
        quiet: show no progress.

    Raises:
        StationError: an option is wrong, or the line stopped or stood still.
    """
    wanted = 40 if packs is None else packs
    if not 1 <= wanted <= _MOST_PACKS:
        raise BadInput("--packs", f"{wanted} bags: give 1 to {_MOST_PACKS}")
    house = packhouse(config or demo_settings())
    place = home_folder(home)
    with progress("packing", wanted, quiet=quiet) as tell:
        figures = pack_headless(house, place, wanted, seed, tell)
    return _answer(figures)


def _answer(figures: DemoSummary) -> Answer:
    document, holds = figures.judged()
    words = "All labels read back equal, the record is whole."
    if not holds:
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


def window(packs: int | None, home: Path | None, config: Path | None, seed: int) -> Answer:
    """Show the demo until its window is closed, or ``packs`` bags are done, and answer likewise.

    Raises:
        StationError: an option is wrong, or the record or the screen does not serve.
    """
    from station.app.practice_window import show_demo  # a headless station needs no Qt

    house = packhouse(config or demo_settings())
    return _answer(show_demo(house, home_folder(home), packs, seed))
