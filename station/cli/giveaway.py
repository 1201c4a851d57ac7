"""``station giveaway``: what is given away above the nominal quantity, and to what."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import facts, heading, listing, note
from station.cli.progress import long_work
from station.cli.purged import with_purged
from station.core.metrology.exact import plain
from station.errors import BadInput

if TYPE_CHECKING:
    from station.reports.giveaway import By, Given, PeriodSums

_BY = ("product", "hour", "position", "day", "run")
ByWhat = Annotated[
    str, typer.Option("--by", metavar="|".join(_BY).upper(), help="What bags are put together by.")
]
First = Annotated[
    str | None, typer.Option("--from", metavar="DATE", help="First production day; else the first.")
]
Last = Annotated[
    str | None, typer.Option("--to", metavar="DATE", help="Last production day; else the last.")
]
Out = Annotated[
    Path | None, typer.Option("--out", metavar="FILE", help="Write a .csv or an .xlsx file.")
]
_COLUMNS = ("packs", "aside", "net_kg", "given_kg", "percent", "g_a_pack", "money")


def giveaway(
    by: ByWhat = "product",
    first: First = None,
    last: Last = None,
    out: Out = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Show what bags hold above their nominal quantity, in kg, percent and money."""

    def work() -> Answer:
        key = read_by(by)
        sums = sums_of(home_of(home, config), first, last, config)
        if out is not None:
            write_sheet(out, sums, key, force=force)
        return with_purged(_answer(sums, key, out), sums.gone)

    run_verb(as_json, work)


def read_by(text: str) -> By:
    """What bags are put together by.

    Raises:
        BadInput: no such word; names those there are.
    """
    from station.reports.giveaway import By  # slow to load

    if text not in tuple(By):
        raise BadInput("--by", f"{text!r}: give one of {', '.join(By)}")
    return By(text)


def sums_of(home: Path, first: str | None, last: str | None, config: Path | None) -> PeriodSums:
    """The bags of the days that options name.

    Raises:
        BadInput: a day is none, they are in the wrong order, or nothing was packed then.
    """
    from station.reports.giveaway import period_sums  # slow to load

    begin = None if first is None else read_day("--from", first)
    end = None if last is None else read_day("--to", last)
    if begin is not None and end is not None and begin > end:
        raise BadInput("--from", f"{begin} is later than --to {end}")
    with long_work("Adding up the bags"):
        return period_sums(home, begin, end, prices_of(config))


def prices_of(config: Path | None) -> Mapping[str, Decimal]:
    """The prices of the settings; none without settings."""
    if config is None:
        return {}
    from station.clock import SystemClock
    from station.config.load import load, load_settings
    from station.line.opening import calendar_day

    zone = load_settings(config).zone
    return load(config, calendar_day(SystemClock(zone).now())).prices


def write_sheet(out: Path, sums: PeriodSums, key: By, *, force: bool) -> None:
    """Write a table of what is given away.

    Raises:
        BadInput: the file is there already, or of another kind.
        EnvironmentFault: the disk does not serve.
    """
    from datetime import UTC, datetime, time

    from station.reports.files import check_free, write_whole
    from station.reports.giveaway import giveaway_sheet
    from station.reports.traceability_sheet import csv_of, xlsx

    check_free(out, force=force)
    table = giveaway_sheet(sums, key)
    if out.suffix == ".csv":
        write_whole(out, csv_of(table))
    elif out.suffix == ".xlsx":
        made = datetime.combine(sums.last, time(), UTC)
        write_whole(out, xlsx((table,), made, "What is given away"))
    else:
        raise BadInput(f"--out {out}", "a table is a file that ends in .csv or .xlsx")


def document(one: Given) -> dict[str, Json]:
    """One row for ``--json``; masses and money are text with exact digits."""
    from station.reports.giveaway import kilograms

    return {
        "name": one.name,
        "packs": one.packs,
        "in_batch": one.in_batch,
        "set_aside": one.set_aside,
        "held": one.held,
        "labels": one.labels,
        "net_kg": plain(kilograms(one.net)),
        "nominal_kg": plain(kilograms(one.nominal)),
        "given_away_kg": plain(one.kilograms),
        "given_away_percent": None if one.percent is None else plain(one.percent),
        "g_per_pack": None if one.grams_a_pack is None else plain(one.grams_a_pack),
        "money": None if one.money is None else plain(one.money),
    }


def row(one: Given) -> tuple[str, ...]:
    """One row for people."""
    from station.reports.giveaway import kilograms

    return (
        one.name,
        str(one.packs),
        str(one.set_aside),
        f"{kilograms(one.net):.3f}",
        f"{one.kilograms:.3f}",
        "" if one.percent is None else f"{one.percent:.3f}",
        "" if one.grams_a_pack is None else f"{one.grams_a_pack:.2f}",
        "" if one.money is None else f"{one.money:.2f}",
    )


def _answer(sums: PeriodSums, key: By, out: Path | None) -> Answer:
    rows, whole = sums.by(key), sums.whole
    body: dict[str, Json] = {
        "from": sums.first.isoformat(),
        "to": sums.last.isoformat(),
        "by": str(key),
        "rows": [document(one) for one in rows],
        "total": document(whole),
        "file": None if out is None else str(out),
    }
    share = "no bag is in the batch" if whole.percent is None else f"{whole.percent} % given away"
    page = [
        heading(f"{whole.kilograms:.3f} kg above nominal, {share}"),
        facts((("Days", f"{sums.first} to {sums.last}"), ("Bags", str(whole.packs)))),
        listing((str(key), *_COLUMNS), [row(one) for one in (*rows, whole)], " ".join(_COLUMNS)),
    ]
    if whole.money is None:
        page.append(note("No money where a product has no price_per_kg in the settings."))
    if out is not None:
        page.append(note(f"Written: {out}"))
    return Answer(body, tuple(page))
