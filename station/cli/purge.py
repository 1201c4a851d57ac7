"""``station purge``: what old runs could go, and taking them out once they are exported."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import RenderableType

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, NeededConfig
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.progress import tell
from station.core.rights import Act
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.config.packhouse import Packhouse
    from station.store.export_check import ExportFound
    from station.store.purge import Purged
    from station.store.purge_entries import Unit
    from station.store.purge_plan import Plan

Really = Annotated[bool, typer.Option("--really", help="Export and purge; else only tell.")]
To = Annotated[
    Path | None,
    typer.Option("--to", metavar="DIR", help="Empty folder of the export, best on another disk."),
]
Who = Annotated[str | None, typer.Option("--who", metavar="ID", help="The manager who signs.")]
Why = Annotated[str | None, typer.Option("--why", metavar="WORDS", help="Why, for the record.")]
Check = Annotated[
    Path | None,
    typer.Option("--check", metavar="DIR", help="Only read an export back and prove it."),
]
HomeFolder = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", envvar="STATION_HOME", help="Folder of the record."),
]
_COLUMNS = ("run", "product", "ended", "bags", "entries", "MB")
_ON_SCREEN = "stop the station first: a purge is never made beside a line that packs"
_WAIT_S = 30.0


def purge(
    config: NeededConfig,
    really: Really = False,
    to: To = None,
    who: Who = None,
    why: Why = None,
    check: Check = None,
    home: HomeFolder = None,
    as_json: AsJson = False,
) -> None:
    """List runs older than the settings keep them and what keeps each; --really takes them out."""

    def work() -> Answer:
        from station.cli.stopped import packhouse  # slow to load

        if check is not None:
            return _checked(check)
        house = packhouse(config)
        folder = home or house.settings.home
        if not really:
            return _listed(house, folder)
        if to is None or not who or not why:
            raise BadInput("--really", "needs --to DIR, --who ID and --why WORDS")
        return _purged(house, folder, to, who, why)

    run_verb(as_json, work)


def _listed(house: Packhouse, home: Path) -> Answer:
    from station.clock import SystemClock
    from station.store.engine import reading
    from station.store.place import standing
    from station.store.purge_plan import plan_purge

    keep = house.settings.record.keep_years
    with reading(home) as connection:
        standing(connection)  # what cannot be read is told before the centre is asked
    sent = _at_centre(house, home)
    tell("looking at old runs")
    with reading(home) as connection:
        now = SystemClock(house.settings.zone).now().utc
        plan = plan_purge(connection, now, keep, sent)
    words = f"{len(plan.going)} of {len(plan.units)} runs that ended before {plan.before:%Y-%m-%d}"
    page = (
        heading(f"{words} may be purged"),
        listing(_COLUMNS, map(_cells, plan.going), "bags entries MB"),
        *_staying(plan),
        note(
            "Nothing was changed. With --really --to DIR --who ID --why WORDS they are exported, "
            "the export is read back and proved, and then they go."
        ),
    )
    return Answer({"purged": False, **_plan_document(plan, keep)}, page)


def _purged(house: Packhouse, home: Path, to: Path, who: str, why: str) -> Answer:
    from station.cli.stopped import stopped
    from station.clock import SystemClock
    from station.store.purge import Order
    from station.store.purge import purge as take_out
    from station.store.purge_export import check_folder

    settings = house.settings
    check_folder(to, home)
    with stopped(house, home, who, Act.PURGE, _ON_SCREEN):
        pass  # opened and closed again, so that the manager signed and a head covers all of it
    order = Order(settings.record.keep_years, _at_centre(house, home), to, who, why)
    names, key = (settings.site, settings.station), settings.record.key_of(home)
    done = take_out(home, names, SystemClock(settings.zone), key, order, _telling())
    return _done(done, to, settings.record.keep_years)


def _done(done: Purged, to: Path, keep: int) -> Answer:
    going = done.plan.going
    document: dict[str, Json] = {
        "purged": True,
        **_plan_document(done.plan, keep),
        "entries": done.entries,
        "export": str(to),
        "sha256": done.export.digest,
        "bytes_before": done.before,
        "bytes_after": done.after,
        "not_made_smaller": done.not_packed,
    }
    rows = (
        ("Runs", str(len(going))),
        ("Bags", str(sum(one.bags for one in going))),
        ("Entries", f"{done.entries}: their numbers, kinds and hashes stay"),
        ("Export", f"{to}, {done.export.bytes / 1e6:.1f} MB, read back and proved"),
        ("SHA-256", f"{done.export.digest} of its manifest.json"),
        ("Record", f"{done.before / 1e6:.1f} MB before, {done.after / 1e6:.1f} MB now"),
        *((("Not made smaller", done.not_packed),) if done.not_packed else ()),
    )
    page = (
        heading("The runs are purged"),
        facts(rows),
        *_staying(done.plan),
        note(
            "Keep the export as long as anybody may ask. Backups made before today still hold "
            "these runs; the folder's name and the SHA-256 stand in the record."
        ),
    )
    return Answer(document, page)


def _checked(folder: Path) -> Answer:
    from station.store.export_check import check_export

    found: ExportFound = check_export(folder, lambda words, *_: tell(words))
    document: dict[str, Json] = {
        "export": str(folder),
        "sha256": found.digest,
        "runs": list(found.runs),
        "entries": found.entries,
        "bytes": found.bytes,
        "site": found.names[0],
        "station": found.names[1],
    }
    rows = (
        ("Of", f"station {found.names[1]} at site {found.names[0]}"),
        ("Runs", str(len(found.runs))),
        ("Entries", f"{found.entries}, each under a signed head"),
        ("SHA-256", f"{found.digest} of its manifest.json; the purge's entry names it"),
    )
    return Answer(document, (heading("The export is whole"), facts(rows)))


def _at_centre(house: Packhouse, home: Path) -> Mapping[int, int] | None:
    """How far the centre has come, as it says itself; None where no centre is set up.

    Raises:
        EnvironmentFault: it does not answer, so nobody knows.
    """
    settings = house.settings
    if settings.sync is None:
        return None
    from station.sync.address import address_of
    from station.sync.connection import connect
    from station.sync.delivery import Delivery
    from station.sync.errors import CentreGone

    address = address_of(settings.sync)
    try:
        with connect(address, "station purge", 10.0) as connection:
            marks = Delivery(connection, settings.site, settings.station, _WAIT_S).marks()
    except CentreGone as gone:
        raise EnvironmentFault(
            f"the centre {address.shown} does not say what it has", f"{gone}: purge once it serves"
        ) from gone
    return {epoch: mark.seq for epoch, mark in marks.items()}


def _plan_document(plan: Plan, keep: int) -> dict[str, Json]:
    return {
        "keep_years": keep,
        "before": iso(plan.before),
        "going": [_document(one) for one in plan.going],
        "staying": [{**_document(one), "because": list(one.stops)} for one in plan.staying],
    }


def _document(unit: Unit) -> dict[str, Json]:
    return {
        "run": unit.uid,
        "product": unit.product,
        "ended": iso(unit.ended),
        "blend_lots": list(unit.blend_lots),
        "lots": list(unit.inputs),
        "bags": unit.bags,
        "entries": unit.entries.count,
        "bytes": unit.entries.bytes,
    }


def _cells(unit: Unit) -> tuple[str, ...]:
    return (
        unit.uid,
        unit.product,
        f"{unit.ended:%Y-%m-%d %H:%M}",
        str(unit.bags),
        str(unit.entries.count),
        f"{unit.entries.bytes / 1e6:.1f}",
    )


def _staying(plan: Plan) -> Iterator[RenderableType]:
    if plan.staying:
        yield heading(f"{len(plan.staying)} stay", Weight.ATTEND)
        yield facts([(one.uid, "; ".join(one.stops)) for one in plan.staying])


def _telling() -> Callable[[str, int, int], None]:
    """Say each step once."""
    said = ""

    def told(words: str, _: int, __: int) -> None:
        nonlocal said
        if words != said:
            said = words
            tell(words)

    return told
