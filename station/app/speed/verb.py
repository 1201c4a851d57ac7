"""The verb ``bench``: how far the hot path is from a bare floor, on this machine."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path
from typing import Annotated

import typer

from station.app.speed.row import Row
from station.cli.answer import Answer, Json, run_verb
from station.cli.centre_options import Authority, PasswordFile, TlsWord, Url, address_from, serving
from station.cli.options import AsJson
from station.cli.page import facts, heading, listing, note
from station.errors import BadInput

_LEAST, _MOST = 20, 100_000
_BAGS_A_CALL, _MOST_BAGS = 100, 100_000
"""How long the record is that the questions are put to: 100 000 bags, less in a short bench."""

Calls = Annotated[int, typer.Option("--calls", metavar="N", help="Calls of each quick row.")]
Settings = Annotated[
    Path | None,
    typer.Option("--config", metavar="DIR", help="Folder of settings; else the demo packhouse."),
]


def bench(
    context: typer.Context, calls: Calls = 1000, config: Settings = None, as_json: AsJson = False
) -> None:
    """Measure the hot path of a bag beside a bare floor; ratios, not promises."""
    if context.invoked_subcommand is None:
        run_verb(as_json, lambda: _bench(calls, config))


def verbs() -> typer.Typer:
    """The verb with those under it that need a centre."""
    group = typer.Typer(add_completion=False, pretty_exceptions_enable=False)
    group.callback(invoke_without_command=True)(bench)
    group.command("sending")(sending)
    group.command("fleet")(fleet)
    return group


def _bench(calls: int, config: Path | None) -> Answer:
    if not _LEAST <= calls <= _MOST:
        raise BadInput("--calls", f"{calls}: give {_LEAST} to {_MOST}")
    from station.app.places import demo_settings, packhouse  # slow to load
    from station.app.speed.questions import question_rows
    from station.app.speed.rows import rows, subject

    settings = config or demo_settings()
    measured = list(rows(subject(packhouse(settings)), calls))
    measured += question_rows(settings, min(_MOST_BAGS, calls * _BAGS_A_CALL), max(3, calls // 50))
    return _told(measured)


def _told(measured: list[Row]) -> Answer:
    columns = ("what", "µs", "floor", "its-µs", "ratio", "cpu-ratio")
    page = (
        heading("Each pair was measured turn by turn"),
        listing(columns, map(_cells, measured), "µs its-µs ratio cpu-ratio", wraps="what floor"),
        note("Medians. A disk's sync and other work on the machine move them by a third."),
        note("The last column is of the least processor time of a call, whatever else runs."),
        *(
            note(f"{row.name}: {row.a_second:,} a second of the processor")
            for row in measured
            if row.a_second is not None
        ),
    )
    return Answer({"rows": [row.document() for row in measured]}, page)


def sending(
    url: Url,
    pieces: Annotated[int, typer.Option("--pieces", metavar="N", help="Of 500 entries.")] = 100,
    tls: TlsWord = "verify-full",
    authority: Authority = None,
    password_file: PasswordFile = None,
    config: Settings = None,
    as_json: AsJson = False,
) -> None:
    """Measure sending to the centre beside bare COPY; needs an empty database and its owner."""

    def work() -> Answer:
        if not 10 <= pieces <= 10_000:
            raise BadInput("--pieces", f"{pieces}: give 10 to 10000")
        from station.app.places import demo_settings  # slow to load
        from station.app.speed.sending import sending_rows
        from station.config.load import load_settings

        settings = config or demo_settings()
        own = load_settings(settings)
        address = address_from(url, authority, tls, password_file)
        with serving(address):
            return _told(list(sending_rows(settings, address, (own.site, own.station), pieces)))

    run_verb(as_json, work)


def fleet(
    url: Url,
    stations: Annotated[int, typer.Option("--stations", metavar="N", help="How many.")] = 8,
    bags: Annotated[int, typer.Option("--bags", metavar="N", help="Of each.")] = 5000,
    tls: TlsWord = "verify-full",
    authority: Authority = None,
    password_file: PasswordFile = None,
    config: Settings = None,
    as_json: AsJson = False,
) -> None:
    """Let many stations send at once, each in its own process; needs an empty database."""

    def work() -> Answer:
        if not 1 <= stations <= 200 or not 10 <= bags <= 1_000_000:
            raise BadInput("--stations, --bags", "give 1 to 200 stations of 10 to 1000000 bags")
        from station.app.places import demo_settings  # slow to load
        from station.app.speed.fleet import fleet as measure_fleet

        address = address_from(url, authority, tls, password_file)
        with serving(address):
            found = measure_fleet(config or demo_settings(), address, stations, bags)
        document: dict[str, Json] = {**asdict(found), "rate": round(found.rate, 1)}
        rows = (
            ("Stations at once", f"{found.stations}"),
            ("Entries", f"{found.entries} in {found.seconds:.1f} s, {found.rate:,.0f} a second"),
            ("One station", f"{found.quickest_s:.1f} to {found.slowest_s:.1f} s"),
            ("Into the tables", f"{found.brought_up:,.0f} entries a second"),
            ("Recall", f"{found.recalled} bags in {found.recall_ms:.0f} ms"),
            ("An entry", f"{found.entry_bytes:.0f} bytes, {found.entry_index_bytes:.0f} of index"),
            ("A bag's row", f"{found.pack_bytes:.0f} bytes"),
        )
        return Answer(document, (heading("A fleet against one centre"), facts(rows)))

    run_verb(as_json, work)


def _cells(row: Row) -> tuple[str, ...]:
    facts = row.document()
    ours, floor = facts["ours_us"], facts["floor_us"]
    assert isinstance(ours, dict)
    assert isinstance(floor, dict)
    best = "" if row.best_ratio is None else f"{row.best_ratio:.2f}"
    return (
        row.name,
        f"{ours['p50']}",
        row.floor_name,
        f"{floor['p50']}",
        f"{row.ratio:.2f}",
        best,
    )
