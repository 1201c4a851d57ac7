"""``station rejects``: the bags set aside on one production day."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of, read_day
from station.cli.page import Weight, clock_time, day, heading, listing

if TYPE_CHECKING:
    from station.store.answers import RejectRow

_Day = Annotated[str, typer.Option("--day", metavar="YYYY-MM-DD", help="The production day.")]
_COLUMNS = ("serial", "time", "product", "net", "why", "now", "who")


def rejects(day: _Day, home: Home = None, config: Config = None, as_json: AsJson = False) -> None:
    """List the bags set aside on a production day."""

    def work() -> Answer:
        from station.store.queries import rejects_of_day  # slow to load: only where it is used

        asked = read_day("--day", day)
        return _answer(asked, rejects_of_day(home_of(home, config), asked))

    run_verb(as_json, work)


def _answer(asked: date, rows: tuple[RejectRow, ...]) -> Answer:
    document: dict[str, Json] = {
        "day": asked.isoformat(),
        "count": len(rows),
        "rejects": [_row(row) for row in rows],
    }
    title = f"{len(rows)} set aside on {day(asked)}"
    if not rows:
        return Answer(document, (heading(f"Nothing set aside on {day(asked)}"),))
    lines = (
        (
            row.serial,
            clock_time(row.at),
            f"{row.name}, {row.nominal.digits}\u00a0{row.nominal.unit}",
            f"{row.net}",
            _why(row),
            str(row.quality),
            row.operator,
        )
        for row in rows
    )
    return Answer(
        document, (heading(title, Weight.ATTEND), listing(_COLUMNS, lines, "net", "product why"))
    )


def _why(row: RejectRow) -> str:
    verdict = str(row.verdict)
    return verdict if row.reason == verdict else f"{row.reason} ({verdict})"


def _row(row: RejectRow) -> Json:
    return {
        "serial": row.serial,
        "at": row.at.isoformat(),
        "product": row.product,
        "version": row.version,
        "name": row.name,
        "blend_lot": row.blend_lot,
        "nominal": row.nominal.digits,
        "nominal_unit": str(row.nominal.unit),
        "net": row.net.digits,
        "unit": str(row.net.unit),
        "verdict": str(row.verdict),
        "quality": str(row.quality),
        "reason": row.reason,
        "label": str(row.label),
        "operator": row.operator,
    }
