"""``station centre key | publish | stop | free``: signed snapshots that every station takes in."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.centre_options import Authority, PasswordFile, TlsWord, Url, centre_of
from station.cli.options import AsJson
from station.cli.page import facts, heading, note
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.journal import Value
    from station.store.signing import StationKey
    from station.sync.connection import CentreConnection
    from station.sync.snapshot import CentreStop, Kind, Snapshot

Key = Annotated[
    Path, typer.Option("--key", metavar="FILE", help="The centre's key, kept away from it.")
]
Site = Annotated[
    str, typer.Option("--site", metavar="CODE", help="For one site; else for every one.")
]
Effective = Annotated[
    str | None,
    typer.Option(
        "--effective", metavar="TIME", help="When it begins to hold, such as 2026-12-01T04:00+00:00"
    ),
]
_SERIES = "*"


def key(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="A file that is not there yet.")],
    as_json: AsJson = False,
) -> None:
    """Make the key that signs snapshots, and print what stations need to know of it."""

    def work() -> Answer:
        from station.store.signing import make_key  # slow to load

        public = make_key(file).public.hex()
        page = (
            heading(f"The centre's key is in {file}"),
            facts((("For station.toml", f'snapshot_key = "{public}"'),)),
            note("Keep the file off the centre's machine, and a copy in a safe place."),
        )
        return Answer({"public": public}, page)

    run_verb(as_json, work)


def publish(
    url: Url,
    key: Key,
    what: Annotated[str, typer.Argument(metavar="KIND", help="products, people or rules.")],
    file: Annotated[
        Path | None, typer.Option("--file", metavar="FILE", help="products.toml or people.toml.")
    ] = None,
    site: Site = _SERIES,
    effective: Effective = None,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Sign the next version of products, people or rule sets, and put it where stations find it."""

    def work() -> Answer:
        from station.store.signing import read_key  # slow to load
        from station.sync.snapshot import Kind

        if what not in (Kind.PRODUCTS, Kind.PEOPLE, Kind.RULES):
            raise BadInput(f"{what!r}", "one of products, people, rules")
        content = _content(Kind(what), file)
        since, secret = _time(effective), read_key(key)
        with centre_of(url, authority, tls, password_file) as connection:
            return _answer(_publish(connection, secret, site, Kind(what), content, since))

    run_verb(as_json, work)


def stop(
    url: Url,
    key: Key,
    what: Annotated[str, typer.Argument(metavar="WHAT", help="lot, product, component, supplier.")],
    code: Annotated[str, typer.Argument(metavar="CODE", help="Its code; a supplier's name.")],
    reason: Annotated[str, typer.Option("--reason", metavar="WORDS", help="Why.")],
    site: Site = _SERIES,
    effective: Effective = None,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Put a lot, product, component or supplier on the list of what no station may pack."""

    def work() -> Answer:
        from station.core.ids import uuid7  # slow to load
        from station.line.centre_duty import Listed, Stop
        from station.sync.snapshot import CentreStop

        if what not in set(Listed):
            raise BadInput(f"{what!r}", f"one of {', '.join(Listed)}")
        if not reason.strip():
            raise BadInput("--reason", "say why in a few words")
        new = CentreStop(str(uuid7(_now(), os.urandom(10))), Stop(Listed(what), code, reason))
        return _relist(
            (url, authority, tls, password_file), key, site, effective, lambda all_: (*all_, new)
        )

    run_verb(as_json, work)


def free(
    url: Url,
    key: Key,
    code: Annotated[str, typer.Argument(metavar="CODE", help="What is on the list.")],
    site: Site = _SERIES,
    effective: Effective = None,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Take something off the list; holds at the stations are released there, by a person."""

    def work() -> Answer:
        def without(lines: tuple[CentreStop, ...]) -> tuple[CentreStop, ...]:
            left = tuple(one for one in lines if one.stop.code != code)
            if len(left) == len(lines):
                known = ", ".join(one.stop.code for one in lines) or "nothing"
                raise BadInput(f"{code!r} is not on the list", f"on it: {known}")
            return left

        return _relist((url, authority, tls, password_file), key, site, effective, without)

    run_verb(as_json, work)


# --- inside -----------------------------------------------------------------------------------


def _relist(
    where: tuple[str, Path | None, str, Path | None],
    key: Path,
    site: str,
    effective: str | None,
    change: Callable[[tuple[CentreStop, ...]], tuple[CentreStop, ...]],
) -> Answer:
    from station.store.signing import read_key  # slow to load
    from station.sync.publishing import stops_now
    from station.sync.snapshot import Kind, SnapshotRefused

    secret, since = read_key(key), _time(effective)
    with centre_of(*where) as connection:
        try:
            lines = change(stops_now(connection, secret, site))
        except SnapshotRefused as refused:
            words = f"{refused}: use the key it bears"
            raise BadInput("the list at the centre", words) from refused
        content: list[Value] = [dict(one.value()) for one in lines]
        return _answer(_publish(connection, secret, site, Kind.STOPS, content, since))


def _publish(
    connection: CentreConnection,
    secret: StationKey,
    site: str,
    kind: Kind,
    content: Value,
    since: datetime,
) -> Snapshot:
    from station.sync.publishing import publish as put  # slow to load
    from station.sync.snapshot import SnapshotRefused

    try:
        return put(connection, secret, site, kind, content, since, _now())
    except SnapshotRefused as refused:
        raise BadInput(f"the {kind} cannot be published", str(refused)) from refused


def _content(kind: Kind, file: Path | None) -> Value:
    from station.core.metrology.rule_sets.registry import RULE_SETS  # slow to load
    from station.sync.snapshot import Kind

    if kind is Kind.RULES:
        return {name: one.version for name, one in RULE_SETS.items()}
    if file is None:
        raise BadInput("--file", f"name the {kind}.toml to be published")
    try:
        return file.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as fault:
        raise BadInput(f"{file} cannot be read", str(fault)) from fault


def _time(text: str | None) -> datetime:
    if text is None:
        return _now()
    try:
        at = datetime.fromisoformat(text)
    except ValueError as fault:
        raise BadInput("--effective", f"{text!r} is no time") from fault
    if at.utcoffset() is None:
        raise BadInput("--effective", f"{text!r} has no offset: write 2026-12-01T04:00+00:00")
    return at.astimezone(UTC)


def _now() -> datetime:
    from station.clock import SystemClock  # slow to load

    return SystemClock("UTC").now().utc


def _answer(snapshot: Snapshot) -> Answer:
    document: dict[str, Json] = {
        "kind": str(snapshot.kind),
        "site": snapshot.site,
        "version": snapshot.version,
        "effective": iso(snapshot.effective),
    }
    title = heading(f"{snapshot.name} is at the centre")
    rows = [("Holds from", f"{snapshot.effective:%Y-%m-%d %H:%M} UTC")]
    return Answer(document, (title, facts(rows)))
