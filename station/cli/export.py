"""``station export``: records for authorities and trading partners, as files."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import facts, heading, note
from station.cli.purged import with_purged
from station.errors import BadInput

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from station.core.balance import Water
    from station.reports.traceability import Traceability
    from station.store.purged import GoneRun


class Kind(StrEnum):
    """Forms of records."""

    EPCIS = "epcis"
    SHEET = "sheet"
    PLAIN = "plain"


_Kind = Annotated[Kind, typer.Option("--kind", help="Form of the records.")]
_Out = Annotated[
    Path, typer.Option("--out", metavar="FILE", help="File; a sheet is .xlsx, or .csv in three.")
]
_Day = Annotated[str | None, typer.Option("--day", metavar="DATE", help="A production day.")]
_Run = Annotated[str | None, typer.Option("--run", metavar="ID", help="A run.")]
_Lot = Annotated[str | None, typer.Option("--lot", metavar="CODE", help="An input lot.")]
_Gln = Annotated[
    str | None, typer.Option("--gln", metavar="DIGITS", help="Location number, for EPCIS.")
]


def export(
    kind: _Kind,
    out: _Out,
    day: _Day = None,
    run: _Run = None,
    lot: _Lot = None,
    gln: _Gln = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Write what came in and what it became, of a day, a run or a lot."""

    def work() -> Answer:
        from station.clock import SystemClock
        from station.reports.files import check_free, write_whole
        from station.store.weighed import plant_zone

        folder = home_of(home, config)
        place, water = _house(config)
        found = _found(folder, day, run, lot, water)
        made = SystemClock(plant_zone(folder).key).now().utc
        gone = _gone(folder, day, lot)
        files = _files(kind, out, found, place or found.site, gln, made, gone)
        for path in files:
            check_free(path, force=force)
        for path, content in files.items():
            write_whole(path, content)
        return with_purged(_answer(kind, found, list(files), made), gone)

    run_verb(as_json, work)


def _house(config: Path | None) -> tuple[str, Water]:
    from station.core.balance import Water

    if config is None:
        return "", Water()
    from station.config.load import load_settings

    settings = load_settings(config)
    return settings.packer, settings.lots.water


def _found(
    home: Path, day: str | None, run: str | None, lot: str | None, water: Water
) -> Traceability:
    from station.reports.traceability import of_day, of_lot, of_run

    if sum(one is not None for one in (day, run, lot)) != 1:
        raise BadInput("what to export", "give one of --day DATE, --run ID, --lot CODE")
    if day is not None:
        return of_day(home, read_day("--day", day), water)
    if run is not None:
        return of_run(home, run, water)
    assert lot is not None
    return of_lot(home, lot, water)


def _gone(home: Path, day: str | None, lot: str | None) -> tuple[GoneRun, ...]:
    from station.store.purged import gone_between, gone_with_lot

    if day is not None:
        on = read_day("--day", day)
        return gone_between(home, on, on)
    return () if lot is None else gone_with_lot(home, lot)


def _files(
    kind: Kind,
    out: Path,
    found: Traceability,
    place: str,
    gln: str | None,
    made: datetime,
    gone: Sequence[GoneRun],
) -> dict[Path, bytes]:
    from station.reports.traceability_sheet import csv_of, plain_text, sheets, xlsx

    if kind is Kind.PLAIN:
        return {out: plain_text(found, place, gone)}
    if kind is Kind.EPCIS:
        from station.reports.epcis import epcis_document

        if gln is None:
            raise BadInput("--gln", "EPCIS names the place: give its 13-digit location number")
        return {out: epcis_document(found, gln, made, gone)}
    tables = sheets(found, place, gone)
    if out.suffix == ".xlsx":
        return {out: xlsx(tables, made)}
    if out.suffix == ".csv":
        return {out.with_stem(f"{out.stem}-{one.name}"): csv_of(one) for one in tables}
    raise BadInput(f"--out {out}", "a sheet is a file that ends in .xlsx or .csv")


def _answer(kind: Kind, found: Traceability, files: list[Path], made: datetime) -> Answer:
    names: list[Json] = [str(path) for path in files]
    document: dict[str, Json] = {
        "kind": str(kind),
        "files": names,
        "made": iso(made),
        "lots": len(found.receipts),
        "blends": len(found.transformations),
        "bags": sum(one.kept.bags for one in found.transformations),
    }
    page = (
        heading(f"Written: {', '.join(path.name for path in files)}"),
        facts(
            (
                ("Input lots", str(len(found.receipts))),
                ("Blends", str(len(found.transformations))),
                ("Bags", str(document["bags"])),
            )
        ),
        note("What bags took of each lot is estimated by the recipe's shares."),
    )
    return Answer(document, page)
