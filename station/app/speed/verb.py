"""The verb ``bench``: how far the hot path is from a bare floor, on this machine."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from station.app.speed.row import Row
from station.cli.answer import Answer, run_verb
from station.cli.options import AsJson
from station.cli.page import heading, listing, note
from station.errors import BadInput

_LEAST, _MOST = 20, 100_000
_BAGS_A_CALL, _MOST_BAGS = 100, 100_000
"""How long the record is that the questions are put to: 100 000 bags, less in a short bench."""

Calls = Annotated[int, typer.Option("--calls", metavar="N", help="Calls of each quick row.")]
Settings = Annotated[
    Path | None,
    typer.Option("--config", metavar="DIR", help="Folder of settings; else the demo packhouse."),
]


def bench(calls: Calls = 1000, config: Settings = None, as_json: AsJson = False) -> None:
    """Measure the hot path of a bag beside a bare floor; ratios, not promises."""
    run_verb(as_json, lambda: _bench(calls, config))


def _bench(calls: int, config: Path | None) -> Answer:
    if not _LEAST <= calls <= _MOST:
        raise BadInput("--calls", f"{calls}: give {_LEAST} to {_MOST}")
    from station.app.places import demo_settings, packhouse  # slow to load
    from station.app.speed.questions import question_rows
    from station.app.speed.rows import rows, subject

    settings = config or demo_settings()
    measured = list(rows(subject(packhouse(settings)), calls))
    measured += question_rows(settings, min(_MOST_BAGS, calls * _BAGS_A_CALL), max(3, calls // 50))
    columns = ("what", "µs", "floor", "its-µs", "ratio")
    page = (
        heading("Each pair was measured turn by turn"),
        listing(columns, map(_cells, measured), "µs its-µs ratio", wraps="what floor"),
        note("Medians. A disk's sync and other work on the machine move them by a third."),
    )
    return Answer({"rows": [row.document() for row in measured]}, page)


def _cells(row: Row) -> tuple[str, ...]:
    facts = row.document()
    ours, floor = facts["ours_us"], facts["floor_us"]
    assert isinstance(ours, dict)
    assert isinstance(floor, dict)
    return (row.name, f"{ours['p50']}", row.floor_name, f"{floor['p50']}", f"{row.ratio:.2f}")
