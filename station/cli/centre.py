"""``station centre``: make the centre, and look after its stations."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.centre_options import (
    SILENT_S,
    Authority,
    PasswordFile,
    TlsWord,
    Url,
    asked,
    centre_of,
    since,
)
from station.cli.options import AsJson
from station.cli.page import Weight, heading, listing, note
from station.errors import BadInput

if TYPE_CHECKING:
    from rich.console import RenderableType

    from station.sync.questions import StationRow


def init(
    url: Annotated[str, typer.Argument(metavar="URL", help="Of the database's owner.")],
    station: Annotated[
        list[str] | None,
        typer.Option("--station", metavar="SITE/STATION", help="To be let in; may be repeated."),
    ] = None,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Make the centre's tables and a role with a password for each station; may be repeated."""

    def work() -> Answer:
        from station.sync.founding import found, station_name  # slow to load

        names = [station_name(one) for one in station or ()]
        with centre_of(url, authority, tls, password_file) as connection:
            admitted = found(connection, names)
        rows = [
            (f"{one.site}/{one.station}", one.role, one.password or "as before") for one in admitted
        ]
        listed: list[Json] = [
            {"station": name, "role": role, "password": word} for name, role, word in rows
        ]
        page: list[RenderableType] = [heading("The centre's tables are there")]
        if rows:
            page += [
                listing(("station", "role", "password"), rows),
                note("A password is shown once: put it into the station's password file."),
            ]
        return Answer({"stations": listed}, tuple(page))

    run_verb(as_json, work)


def stations(
    url: Url,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """List the stations; exit 1 where one is silent, behind, or has entries in quarantine."""

    def work() -> Answer:
        with centre_of(url, authority, tls, password_file) as connection:
            found, _ = asked(connection, lambda plant: plant.stations())
        troubles = {one.name: _trouble(one) for one in found}
        rows = [
            (one.name, str(one.seq), str(one.head_seq or "–"), since(one.silent_s),
             str(one.quarantined), troubles[one.name])
            for one in found
        ]  # fmt: skip
        listed: list[Json] = [
            {
                "station": one.name,
                "epoch": str(one.epoch),
                "entries": one.seq,
                "head": one.head_seq,
                "contact": iso(one.contact),
                "quarantined": one.quarantined,
                "trouble": troubles[one.name],
            }
            for one in found
        ]
        bad = [name for name, words in troubles.items() if words]
        title = (
            heading(f"{len(bad)} of {len(found)} stations need somebody", Weight.ATTEND)
            if bad
            else heading(f"{len(found)} stations, none needs anybody")
        )
        columns = ("station", "entries", "its_last", "spoke", "apart", "trouble")
        table = listing(columns, rows, "entries its_last apart", wraps="trouble")
        return Answer({"stations": listed}, (title, table), yes=not bad)

    run_verb(as_json, work)


def quarantine(
    url: Url,
    settle: Annotated[
        str | None,
        typer.Option("--settle", metavar="SITE/STATION", help="Sign for all that lies there."),
    ] = None,
    who: Annotated[str, typer.Option("--who", metavar="ID", help="Who signs.")] = "",
    reason: Annotated[str, typer.Option("--reason", metavar="WORDS", help="What was found.")] = "",
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """List entries in quarantine, or sign that somebody looked; exit 1 while one is open."""

    def work() -> Answer:
        from station.sync.founding import station_name  # slow to load
        from station.sync.questions import Plant
        from station.sync.settling import settle as sign

        if settle is not None and not (who.strip() and reason.strip()):
            raise BadInput("--settle", "needs --who and --reason")
        with centre_of(url, authority, tls, password_file) as connection:
            if settle is not None:
                sign(connection, station_name(settle), who.strip(), reason.strip())
            found = Plant(connection).quarantined()
        rows = [
            (f"{one.site}/{one.station}", str(one.seq), f"{one.found_at:%F %T}", one.why,
             one.settled or "open")
            for one in found
        ]  # fmt: skip
        listed: list[Json] = [
            {
                "station": f"{one.site}/{one.station}",
                "epoch": str(one.epoch),
                "seq": one.seq,
                "hash": one.hash.hex(),
                "bytes": one.size,
                "why": one.why,
                "settled": one.settled,
            }
            for one in found
        ]
        still_open = sum(one.settled is None for one in found)
        title = heading(f"{len(found)} entries in quarantine, {still_open} of them open")
        table = listing(("station", "entry", "found", "why", "settled"), rows, "entry", wraps="why")
        return Answer({"quarantine": listed, "open": still_open}, (title, table), not still_open)

    run_verb(as_json, work)


def _trouble(one: StationRow) -> str:
    words = []
    if one.silent_s is None or one.silent_s > SILENT_S:
        words.append(since(one.silent_s))
    if one.oldest_unsent is not None and one.head_seq is not None and one.head_seq > one.seq:
        words.append(f"{one.head_seq - one.seq} entries wait, the first of {one.oldest_unsent:%F}")
    if one.ahead_s is not None and abs(one.ahead_s) > 300:
        words.append(f"its clock is {one.ahead_s:.0f} s ahead")
    if one.quarantined:
        words.append(f"{one.quarantined} entries in quarantine")
    if one.words:
        words.append(one.words)
    return "; ".join(words)
