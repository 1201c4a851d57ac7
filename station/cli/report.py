"""``station report``: what a day or a week gave away, yielded and stood still, as files."""

from __future__ import annotations

from datetime import UTC, datetime, time
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.cut_off import cut_off_of
from station.cli.giveaway import First, Last, document, prices_of
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import facts, heading, listing, note
from station.cli.progress import long_work
from station.cli.purged import with_purged
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.balance import Water
    from station.reports.period import Period

Day = Annotated[str | None, typer.Option("--day", metavar="DATE", help="One production day.")]
Pdf = Annotated[Path | None, typer.Option("--pdf", metavar="FILE", help="Write the report here.")]
Sheets = Annotated[
    Path | None,
    typer.Option("--out", metavar="FILE", help="Tables: one .xlsx, or .csv in several files."),
]


def report(
    day: Day = None,
    first: First = None,
    last: Last = None,
    pdf: Pdf = None,
    out: Sheets = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Show runs, rates, yields, stops and rejects of a day, a week or all days on record."""

    def work() -> Answer:
        folder = home_of(home, config)
        with long_work("Adding up the bags"):
            found = _found(folder, day, first, last, config)
        with long_work("Setting the papers"):
            files = _files(found, pdf, out)
        from station.reports.files import check_free, write_whole  # slow to load

        for path in files:
            check_free(path, force=force)
        for path, content in files.items():
            write_whole(path, content)
        return with_purged(_answer(found, tuple(files)), found.sums.gone)

    run_verb(as_json, work)


def _found(
    home: Path, day: str | None, first: str | None, last: str | None, config: Path | None
) -> Period:
    from station.reports.period import period

    if day is not None and (first is not None or last is not None):
        raise BadInput("--day", "leave out --from and --to: a day is both")
    if day is not None:
        first = last = day
    begin = None if first is None else read_day("--from", first)
    end = None if last is None else read_day("--to", last)
    if begin is not None and end is not None and begin > end:
        raise BadInput("--from", f"{begin} is later than --to {end}")
    return period(home, begin, end, prices_of(config), _water(config), cut_off_of(config))


def _water(config: Path | None) -> Water | None:
    if config is None:
        return None
    from station.config.load import load_settings

    return load_settings(config).lots.water


def _files(found: Period, pdf: Path | None, out: Path | None) -> dict[Path, bytes]:
    files: dict[Path, bytes] = {}
    if pdf is not None:
        from station.reports.period_pdf import period_pdf

        files[pdf] = period_pdf(found)
    if out is None:
        return files
    from station.reports.period_sheets import period_sheets
    from station.reports.traceability_sheet import csv_of, xlsx

    tables = period_sheets(found)
    if out.suffix == ".xlsx":
        made = datetime.combine(found.sums.last, time(), UTC)
        return {**files, out: xlsx(tables, made, "Report of a period")}
    if out.suffix == ".csv":
        named = {
            out.with_stem(f"{out.stem}-{one.name.replace(' ', '-')}"): csv_of(one) for one in tables
        }
        return {**files, **named}
    raise BadInput(f"--out {out}", "tables are files that end in .xlsx or .csv")


def _answer(found: Period, files: tuple[Path, ...]) -> Answer:
    whole, names = found.sums.whole, [str(path) for path in files]
    body: dict[str, Json] = {
        "from": found.sums.first.isoformat(),
        "to": found.sums.last.isoformat(),
        "total": document(whole),
        "runs": [
            {
                "run": one.run.id,
                "product": one.run.product.code,
                "packs_an_hour": None if one.an_hour is None else float(one.an_hour),
                **document(one.given),
            }
            for one in found.runs
        ],
        "stops": [
            {"reason": one.reason, "count": one.count, "seconds": int(one.took.total_seconds())}
            for one in found.stops_by_reason
        ],
        "rejects": dict(found.sums.rejects()),
        "yields": [
            {
                "lot": one.balance.lot,
                "component": one.component,
                "loaded_g": None if one.balance.loaded is None else float(one.balance.loaded),
                "in_bags_g": round(float(one.balance.used.likely), 3),
                "share": None if one.share is None else round(float(one.share), 4),
            }
            for one in found.yields
        ],
        "open_holds": len(found.holds),
        "files": list[Json](names),
    }
    page = [
        heading(f"{whole.packs} bags, {whole.kilograms:.3f} kg given away"),
        facts(
            (("Days", f"{found.sums.first} to {found.sums.last}"), ("Runs", str(len(found.runs))))
        ),
        listing(
            ("run", "bags", "aside", "an_hour", "given_kg"),
            [
                (
                    f"{one.run.blend_lot} {one.run.product.code}",
                    str(one.given.packs),
                    str(one.given.set_aside),
                    "" if one.an_hour is None else str(one.an_hour),
                    f"{one.given.kilograms:.3f}",
                )
                for one in found.runs
            ],
            "bags aside an_hour given_kg",
        ),
        *(note(f"Written: {name}") for name in names),
    ]
    return Answer(body, tuple(page))
