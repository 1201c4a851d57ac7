"""``station centre rejects | recall | trace | giveaway``: every site and line in one answer."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.centre_options import Authority, PasswordFile, TlsWord, Url, asked, centre_of
from station.cli.options import AsJson, read_day
from station.cli.page import Weight, clock_time, facts, heading, listing, note
from station.errors import BadInput

if TYPE_CHECKING:
    from collections.abc import Sequence

    from rich.console import RenderableType

    from station.sync.questions import BagGroup, PackRow

Day = Annotated[str, typer.Option("--day", metavar="YYYY-MM-DD", help="The production day.")]
_KILO = Decimal("1e-9")
_GRAM = Decimal("1e-6")
_FREE = ("good", "released")
_GROUPS = ("line", "day", "blend_lot", "product", "now", "bags", "kg")


def rejects(
    url: Url,
    day: Day,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """List the bags set aside on a production day, at every station."""

    def work() -> Answer:
        from station.sync.questions import local  # slow to load

        asked_day = read_day("--day", day)
        with centre_of(url, authority, tls, password_file) as connection:
            found, lacks = asked(connection, lambda plant: plant.rejects(asked_day))
        listed: list[Json] = [
            {
                "site": one.site,
                "line": one.line,
                "serial": one.serial,
                "at": iso(local(one.at, one.offset_minutes)),
                "product": one.product,
                "net_ug": one.net_ug,
                "reason": one.reason,
                "now": one.now,
                "operator": one.operator,
            }
            for one in found
        ]
        rows = [
            (
                f"{one.site}/{one.line}",
                one.serial,
                clock_time(local(one.at, one.offset_minutes)),
                one.product,
                f"{grams(one.net_ug)} g",
                one.reason,
                one.now,
            )
            for one in found
        ]
        columns = ("line", "serial", "time", "product", "net", "why", "now")
        title = heading(f"{len(found)} bags set aside on {asked_day}")
        page = (title, listing(columns, rows, "net", wraps="why"), *map(note, lacks))
        return Answer({"day": day, "rejects": listed, "may_lack": list(lacks)}, page)

    run_verb(as_json, work)


def recall(
    url: Url,
    lot: Annotated[str, typer.Argument(metavar="LOT", help="An input lot.")],
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Find every bag that could hold a lot, at every site; exit 1 where one is free to leave."""

    def work() -> Answer:
        with centre_of(url, authority, tls, password_file) as connection:
            found, lacks = asked(connection, lambda plant: plant.recall(lot))
        if not found.groups and not found.lots:
            raise BadInput(f"lot {lot!r}", "no station has told the centre of it")
        suppliers = sorted({f"{one.component} from {one.supplier}" for one in found.lots})
        warn = list(lacks)
        if len(suppliers) > 1:
            warn.insert(0, f"the code stands for several lots: {'; '.join(suppliers)}")
        return _reached(f"lot {lot}", found.groups, suppliers, warn)

    run_verb(as_json, work)


def trace(
    url: Url,
    name: Annotated[str, typer.Argument(metavar="NAME", help="A serial, blend lot or lot.")],
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Trace a bag back to its lots, or a lot or blend lot forward to its bags, at every site."""

    def work() -> Answer:
        with centre_of(url, authority, tls, password_file) as connection:
            packs, lacks = asked(connection, lambda plant: plant.packs(name))
            if packs:
                return _traced(packs, lacks)
            groups, _ = asked(connection, lambda plant: plant.blend(name))
            if groups:
                return _reached(f"blend lot {name}", groups, [], lacks)
            found, _ = asked(connection, lambda plant: plant.recall(name))
        if not found.groups and not found.lots:
            raise BadInput(f"{name!r}", "is no serial, blend lot or lot any station told of")
        suppliers = sorted({f"{one.component} from {one.supplier}" for one in found.lots})
        return _reached(f"lot {name}", found.groups, suppliers, lacks)

    run_verb(as_json, work)


def giveaway(
    url: Url,
    day: Day,
    authority: Authority = None,
    tls: TlsWord = "verify-full",
    password_file: PasswordFile = None,
    as_json: AsJson = False,
) -> None:
    """Say what every line gave away above the nominal quantity on a production day."""

    def work() -> Answer:
        asked_day = read_day("--day", day)
        with centre_of(url, authority, tls, password_file) as connection:
            found, lacks = asked(connection, lambda plant: plant.given_away(asked_day))
        listed: list[Json] = []
        rows = []
        for one in found:
            given = one.net_ug - one.nominal_ug
            each = Decimal(given) / one.bags * _GRAM
            share = Decimal(given) / one.nominal_ug * 100
            listed.append({
                "site": one.site, "line": one.line, "product": one.product, "bags": one.bags,
                "net_ug": one.net_ug, "nominal_ug": one.nominal_ug, "given_ug": given,
            })  # fmt: skip
            rows.append((one.site, one.line, one.product, str(one.bags),
                         f"{given * _KILO:.3f}", f"{each:.2f}", f"{share:.2f}"))  # fmt: skip
        total = sum(one.net_ug - one.nominal_ug for one in found) * _KILO
        columns = ("site", "line", "product", "bags", "kg", "g_a_bag", "%")
        title = heading(f"{total:.3f} kg given away on {asked_day}, at every line")
        page = (title, listing(columns, rows, "bags kg g_a_bag %".replace("_", " ")))
        document: dict[str, Json] = {"day": day, "lines": listed, "may_lack": list(lacks)}
        return Answer(document, (*page, *map(note, lacks)))

    run_verb(as_json, work)


def _reached(
    what: str, groups: Sequence[BagGroup], suppliers: Sequence[str], lacks: Sequence[str]
) -> Answer:
    bags = sum(one.bags for one in groups)
    free = sum(one.bags for one in groups if one.now in _FREE)
    lines = {(one.site, one.line) for one in groups}
    sites = {one.site for one in groups}
    listed: list[Json] = [
        {
            "site": one.site,
            "station": one.station,
            "line": one.line,
            "product": one.product,
            "blend_lot": one.blend_lot,
            "production_day": iso(one.production_day),
            "use_by": iso(one.use_by),
            "now": one.now,
            "bags": one.bags,
            "net_ug": one.net_ug,
            "first": one.first,
            "last": one.last,
        }
        for one in groups
    ]
    rows = [
        (
            f"{one.site}/{one.line}",
            f"{one.production_day}",
            one.blend_lot,
            one.product,
            one.now,
            str(one.bags),
            f"{one.net_ug * _KILO:.3f}",
        )
        for one in groups
    ]
    title = f"{what}: {bags} bags on {len(lines)} lines at {len(sites)} sites, {free} of them free"
    page: list[RenderableType] = [
        heading(title, Weight.STOP if free else Weight.PLAIN),
        listing(_GROUPS, rows, "bags kg"),
    ]
    if suppliers:
        page.insert(1, facts([("Lot", one) for one in suppliers]))
    document: dict[str, Json] = {
        "asked": what,
        "bags": bags,
        "free": free,
        "net_ug": sum(one.net_ug for one in groups),
        "groups": listed,
        "lots": list(suppliers),
        "may_lack": list(lacks),
    }
    return Answer(document, (*page, *map(note, lacks)), yes=not free)


def _traced(packs: Sequence[PackRow], lacks: Sequence[str]) -> Answer:
    from station.sync.questions import local  # slow to load

    page: list[RenderableType] = []
    listed: list[Json] = []
    for one in packs:
        at = local(one.at, one.offset_minutes)
        page.append(heading(f"Bag {one.serial} of line {one.line} at {one.site}: {one.now}"))
        page.append(facts((
            ("Packed", f"{at:%Y-%m-%d %H:%M:%S} by {one.operator}"),
            ("Product", f"{one.product} version {one.version}"),
            ("Net", f"{grams(one.net_ug)} g, {one.verdict}"),
            ("Blend lot", f"{one.blend_lot}, use by {one.use_by}"),
            ("Lots", ", ".join(one.lots)),
        )))  # fmt: skip
        listed.append({
            "site": one.site, "station": one.station, "line": one.line, "serial": one.serial,
            "at": iso(at), "product": one.product, "net_ug": one.net_ug, "now": one.now,
            "blend_lot": one.blend_lot, "use_by": iso(one.use_by), "lots": list(one.lots),
            "run": one.run,
        })  # fmt: skip
    document: dict[str, Json] = {"packs": listed, "may_lack": list(lacks)}
    return Answer(document, (*page, *map(note, lacks)))


def grams(micrograms: int) -> str:
    """Grams with no more digits than they need."""
    return f"{(micrograms * _GRAM).normalize():f}"
