"""The verb ``week``: a practice record of a whole week, with faults planted in it."""

from __future__ import annotations

import time
from datetime import date, timedelta
from pathlib import Path
from typing import Annotated

import typer

from station.app.week.plan import LEAST_BAGS, plan_week
from station.app.week.tally import Count, Plant, WeekMade, kilograms
from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson
from station.cli.page import facts, heading, listing, note
from station.cli.progress import progress
from station.clock import SystemClock
from station.errors import BadInput
from station.line.opening import calendar_day

_USUAL, _MOST = 60_000, 500_000

Home = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", help="Folder of the record; else a fresh one."),
]
Config = Annotated[
    Path | None,
    typer.Option("--config", metavar="DIR", help="Folder of settings; else the demo packhouse."),
]
Packs = Annotated[int, typer.Option("--packs", metavar="N", help="Bags of the whole week.")]
Seed = Annotated[int, typer.Option("--seed", help="Same seed, same bags and faults.")]
Until = Annotated[
    str | None,
    typer.Option("--until", metavar="DATE", help="Latest day of the week; else yesterday."),
]


def week(
    home: Home = None,
    config: Config = None,
    packs: Packs = _USUAL,
    seed: Seed = 1,
    until: Until = None,
    as_json: AsJson = False,
) -> None:
    """Make the record of a simulated week of three products a day, with planted faults."""

    def work() -> Answer:
        from station.app.week.make import Week  # slow to load

        if packs > _MOST:
            raise BadInput("--packs", f"{packs} bags: give {LEAST_BAGS} to {_MOST}")
        from station.app.places import demo_settings, home_folder, packhouse  # slow to load

        house = packhouse(config or demo_settings())
        today = calendar_day(SystemClock(house.settings.zone).now())
        plan = plan_week(house, packs, seed, _last(until, today))
        place, began = home_folder(home), time.monotonic()
        with progress("packing", packs, quiet=as_json) as tell:
            made = Week(house, place, plan, seed, tell).make()
        return answer(made, seed, time.monotonic() - began)

    run_verb(as_json, work)


def answer(made: WeekMade, seed: int, seconds: float) -> Answer:
    """The answer about a week that was made.

    Args:
        made: the week.
        seed: its seed.
        seconds: what it took.
    """
    file = made.home / "station.sqlite"
    size = file.stat().st_size
    rows = [
        (one.fault.value, f"{one.run.day}", one.run.product, str(one.bags), one.words)
        for one in made.planted
    ]
    return Answer(
        {
            "home": str(made.home),
            "seed": seed,
            "days": [day.isoformat() for day in made.days],
            "runs": list(made.runs),
            "totals": _count(made.whole),
            "products": {code: _count(one) for code, one in made.products.items()},
            "planted": [_plant(one) for one in made.planted],
            "bytes": size,
            "seconds": round(seconds, 3),
        },
        (
            heading(f"A week of {made.whole.bags} practice bags is on record; no label printed."),
            facts(
                (
                    ("Home", str(made.home)),
                    ("Days", f"{made.days[0]} to {made.days[-1]}"),
                    ("Good", f"{made.whole.good} bags, {kilograms(made.whole.grams)} kg"),
                    ("Set aside", str(made.whole.rejects)),
                    ("File", f"{size / 1e6:.1f} MB"),
                    ("Took", f"{seconds:.1f} s"),
                )
            ),
            listing(
                ("Planted", "Day", "Product", "Bags", "What"), rows, right="Bags", wraps="What"
            ),
            note(f"Ask the record, for example: station journal verify --home {made.home}"),
        ),
    )


def _last(until: str | None, today: date) -> date:
    yesterday = today - timedelta(days=1)
    if until is None:
        return yesterday
    try:
        given = date.fromisoformat(until)
    except ValueError:
        raise BadInput("--until", f"{until!r}: give a day like 2026-11-20") from None
    if given > yesterday:
        raise BadInput("--until", f"{given}: give a day before today, {today}")
    return given


def _count(count: Count) -> dict[str, Json]:
    return {
        "packs": count.bags,
        "good": count.good,
        "rejects": count.rejects,
        "labels": count.labels,
        "labels_voided": count.voided,
        "good_kg": kilograms(count.grams),
    }


def _plant(plant: Plant) -> dict[str, Json]:
    return {
        "fault": plant.fault.value,
        "day": plant.run.day.isoformat(),
        "run": plant.run.number + 1,
        "product": plant.run.product,
        "bags": plant.bags,
        "first": plant.first,
        "last": plant.last,
        "name": plant.name,
        "what": plant.words,
    }
