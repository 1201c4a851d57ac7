"""``station hold`` and ``station release``: bags by any scope, and the list of what waits."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.stopped import packhouse, record, stopped
from station.cli.table_file import Out, write_table
from station.cli.times import read_time
from station.core.holds import Ranges, Released, Scope, ScopeKind, hold_fact, release_fact
from station.core.rights import Act
from station.errors import BadInput

if TYPE_CHECKING:
    from station.config.packhouse import Packhouse
    from station.core.facts import Fact
    from station.core.holds import Releasable
    from station.core.pack import Moment

_Text = Annotated[str | None, typer.Option(metavar="NAME", help="Bags of this.")]
_Time = Annotated[str | None, typer.Option(metavar="TIME", help="Bags weighed from or until then.")]
_Who = Annotated[str | None, typer.Option("--who", metavar="ID", help="Who signs.")]
_Why = Annotated[str, typer.Option("--why", metavar="WORDS", help="Why.")]
_ON_SCREEN = "stop the station, or do it on its screen: RUN, then QUALITY (F10)"
_COLUMNS = ("key", "by", "what", "bags", "since", "blocked_by")
_DAYS = 14


def hold(
    who: Annotated[str, typer.Option("--who", metavar="ID", help="Who holds.")],
    why: _Why,
    config: Annotated[
        Path, typer.Option("--config", metavar="DIR", envvar="STATION_CONFIG", help="The settings.")
    ],
    first: Annotated[str | None, typer.Option("--serial", metavar="SERIAL")] = None,
    last: Annotated[str | None, typer.Option("--to", metavar="SERIAL")] = None,
    since: _Time = None,
    until: _Time = None,
    run: _Text = None,
    blend: _Text = None,
    lot: _Text = None,
    roll: _Text = None,
    window: _Text = None,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Hold bags by serials, time, run, blend lot, input lot, label roll or suspect window."""
    given = {
        ScopeKind.SERIALS: first, ScopeKind.TIME: since, ScopeKind.RUN: run, ScopeKind.BLEND: blend,
        ScopeKind.LOT: lot, ScopeKind.ROLL: roll, ScopeKind.WINDOW: window,
    }  # fmt: skip
    chosen = [(kind, text) for kind, text in given.items() if text is not None]

    def work() -> Answer:
        from station.core.ids import new_uid
        from station.core.receiving import hold_lot_fact
        from station.store.lot_reach import bags_with
        from station.store.open_holds import held_bags

        if len(chosen) != 1:
            raise BadInput(
                "which bags",
                "give one of --serial (with --to), --since (with --until), --run, --blend, --lot, "
                "--roll, --window",
            )
        [(kind, text)] = chosen
        house = packhouse(config)
        with stopped(house, home, who, Act.HOLD, _ON_SCREEN) as (store, at, folder):
            try:
                if kind is ScopeKind.LOT:
                    ranges: Ranges = tuple(bags_with(folder, text.upper()))
                    fact = hold_lot_fact(new_uid(at), text.upper(), why, ranges)
                else:
                    second = last if kind is ScopeKind.SERIALS else until
                    name, ranges = _reach(folder, kind, text, second)
                    fact = hold_fact(Scope(kind, name), why, ranges, new_uid(at))
            except ValueError as refused:
                raise BadInput(f"{kind} {text}", str(refused)) from refused
            record(store, (fact,), at, who, f"{kind} {text}")
            bags = len(held_bags(folder, fact.uid))
        document: dict[str, Json] = {
            "hold": fact.uid, "by": str(kind), "what": fact.subject, "bags": bags, "why": why,
        }  # fmt: skip
        page = (heading(f"{bags} BAGS ARE HELD", Weight.STOP), facts((("Hold", fact.uid),)))
        return Answer(document, page)

    run_verb(as_json, work)


def release(
    key: Annotated[
        str | None, typer.Argument(metavar="HOLD|RUN", help="What to release; none lists all.")
    ] = None,
    who: _Who = None,
    why: _Why = "",
    second: Annotated[str, typer.Option("--second", metavar="ID", help="Second person.")] = "",
    out: Out = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """List what could be released and what keeps it, or let a hold or a run go."""

    def work() -> Answer:
        if config is None:
            raise BadInput("--config", "the checks that must be made stand in the settings")
        house = packhouse(config)
        if key is None:
            found = _list(house, home_of(home, config))
            today = max((one.at.date() for one in found), default=None)
            if out is not None and today is not None:
                cells = (_cells(one) for one in found)
                write_table(out, "Release list", _COLUMNS, cells, today, force=force)
            return _listed(found)
        if who is None:
            raise BadInput("--who", "who releases?")
        two = house.settings.quality.release_two
        with stopped(house, home, who, Act.RELEASE, _ON_SCREEN, second) as (store, at, folder):
            one = _waiting(house, folder, key)
            released = Released(one.hold, one.run, why, second, one.frees)
            fact = _fact(one, released, at, who, two=two)
            record(store, (fact,), at, who, f"release of {one.subject}")
        document: dict[str, Json] = {
            "released": key, "bags": one.frees, "who": who, "second": second or None, "why": why,
        }  # fmt: skip
        return Answer(document, (heading(f"{one.frees} bags are released"),))

    run_verb(as_json, work)


def _waiting(house: Packhouse, folder: Path, key: str) -> Releasable:
    """What waits under a key, with nothing that keeps it."""
    one = next((each for each in _list(house, folder) if each.key == key), None)
    if one is None:
        raise BadInput(f"release {key}", "nothing of this key waits: see station release")
    if one.blocked:
        raise BadInput(f"release of {one.subject}", "; ".join(one.blocked))
    return one


def _fact(one: Releasable, released: Released, at: Moment, who: str, *, two: bool) -> Fact:
    from station.core.ids import new_uid
    from station.core.receiving import release_lot_fact

    subject = one.subject if one.hold else one.run
    try:
        fact = release_fact(released, subject, new_uid(at), who, two=two)
        if one.scope != ScopeKind.LOT:
            return fact
        of_lot = release_lot_fact(fact.uid, one.subject, one.hold, released.reason)
    except ValueError as refused:
        raise BadInput(f"release of {one.subject}", str(refused)) from refused
    return replace(of_lot, details={**of_lot.details, **fact.details})


def _reach(folder: Path, kind: ScopeKind, text: str, second: str | None) -> tuple[str, Ranges]:
    from station.core.holds import ranges_of
    from station.store import hold_scopes
    from station.store.facts import fact_named
    from station.store.suspects import filed_windows

    match kind:
        case ScopeKind.SERIALS:
            ends = text.upper(), (second or text).upper()
            return f"{ends[0]} to {ends[1]}", hold_scopes.between_serials(folder, *ends)
        case ScopeKind.TIME:
            if second is None:
                raise BadInput("--until", "a hold by time has an end: give --until")
            begin, end = read_time("--since", text, folder), read_time("--until", second, folder)
            name = f"{begin:%Y-%m-%d %H:%M} to {end:%H:%M}"
            return name, hold_scopes.between_times(folder, begin, end)
        case ScopeKind.RUN:
            return text, hold_scopes.of_run(folder, text)
        case ScopeKind.BLEND:
            return text.upper(), hold_scopes.of_blend(folder, text.upper())
        case ScopeKind.ROLL:
            return text.upper(), hold_scopes.of_roll(folder, text.upper())
        case _:
            windows = {one.uid: one for one, _ in filed_windows(folder)}
            if text not in windows:
                raise BadInput("--window", f"{text!r} is no suspect window: see station suspects")
            holds = [fact_named(folder, uid) for uid in windows[text].holds]
            return text, tuple(
                one for hold_ in holds if hold_ is not None for one in ranges_of(hold_.fact)
            )


def _list(house: Packhouse, folder: Path) -> tuple[Releasable, ...]:
    from station.clock import SystemClock
    from station.line.opening import day_of
    from station.store.release_list import Wanted, release_list

    settings = house.settings
    today = day_of(SystemClock(settings.zone).now(), settings.cut_off)
    wanted = Wanted(house.qa, settings.checks.on)
    return release_list(folder, wanted, today - timedelta(days=_DAYS))


def _listed(found: tuple[Releasable, ...]) -> Answer:
    blocked = sum(bool(one.blocked) for one in found)
    document: dict[str, Json] = {
        "blocked": blocked,
        "list": [
            {
                "key": one.key,
                "by": one.scope,
                "what": one.subject,
                "why": one.reason,
                "who": one.who,
                "at": one.at.isoformat(),
                "bags": one.bags,
                "blocked_by": list(one.blocked),
            }
            for one in found
        ],
    }
    if not found:
        return Answer(document, (heading("Nothing waits for a release"),))
    rows = [_cells(one) for one in found]
    words = f"{len(found)} wait for a release, {blocked} are blocked"
    weight = Weight.ATTEND if blocked else Weight.PLAIN
    page = (
        heading(words, weight),
        listing(_COLUMNS, rows, "bags", "what blocked_by"),
        note("Release one by its key, with --who, --second and --why."),
    )
    return Answer(document, page, yes=not blocked)


def _cells(one: Releasable) -> tuple[str, ...]:
    since = f"{one.at:%m-%d %H:%M}"
    return (one.key, one.scope, one.subject, f"{one.bags}", since, "; ".join(one.blocked) or "–")
