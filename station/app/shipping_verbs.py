"""The verbs ``cases …``: fill cases, close pallets, ship, undo, on a stopped station; and lists."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, Config, Home, home_of, read_mass
from station.cli.page import Weight, heading, listing
from station.core.metrology.exact import plain
from station.core.rights import Act
from station.core.shipping import serials_between
from station.errors import BadInput

if TYPE_CHECKING:
    from station.app.shipping_desk import ShippingDesk
    from station.core.facts import Fact
    from station.core.shipping_lines import ShipmentLine, UnitLine

Settings = Annotated[
    Path, typer.Option("--config", metavar="DIR", envvar="STATION_CONFIG", help="The settings.")
]
Who = Annotated[str, typer.Option("--who", metavar="ID", help="Who says so, from people.toml.")]
_ON_SCREEN = "stop the station, or do it on its screen: SHIPPING (F12)"
_MICRO = Decimal("1e-9")
_UNITS = ("unit", "SSCC", "product", "lot", "use_by", "bags", "kg", "label", "held")
_SHIPMENTS = ("shipment", "customer", "left", "paper", "state")


def shipping_verbs() -> typer.Typer:
    """Return the group of verbs."""
    group = typer.Typer(
        help="Fill cases, close pallets and ship them, or look at them.",
        add_completion=False,
        no_args_is_help=True,
        pretty_exceptions_enable=False,
    )
    for verb in (list_units, fill, pallet, ship, undo):
        name = "list" if verb is list_units else verb.__name__
        group.command(name)(verb)
    group.callback()(_cases)
    return group


def _cases() -> None:
    """Fill cases, close pallets and ship them, or look at them."""


def list_units(home: Home = None, config: Config = None, as_json: AsJson = False) -> None:
    """List cases and pallets in the house, and the newest shipments; exit 1 where one is held."""

    def work() -> Answer:
        from station.store.shipping import shipments, units_in_house

        folder = home_of(home, config)
        units, gone = units_in_house(folder), shipments(folder, 100)
        held = sum(one.held > 0 for one in units)
        document: dict[str, Json] = {
            "units": [_unit(one) for one in units],
            "shipments": [_shipment(one) for one in gone],
            "held": held,
        }
        title = f"{len(units)} cases and pallets in the house, {held} held"
        page = [heading(title, Weight.ATTEND if held else Weight.PLAIN)]
        rows = [tuple(map(str, _unit(one).values())) for one in units]
        sent = [
            (one.number, one.customer.name, f"{one.at:%Y-%m-%d %H:%M}", one.reference, one.state)
            for one in gone
        ]
        tables = [
            *([listing(_UNITS, rows, "bags kg held", wraps="product")] if rows else []),
            *([listing(_SHIPMENTS, sent, wraps="customer paper")] if sent else []),
        ]
        return Answer(document, (*page, *tables), yes=not held)

    run_verb(as_json, work)


def fill(
    config: Settings,
    who: Who,
    bag: Annotated[
        list[str] | None, typer.Option("--bag", metavar="SERIAL", help="A bag; once or more.")
    ] = None,
    first: Annotated[
        str | None, typer.Option("--from", metavar="SERIAL", help="First bag.")
    ] = None,
    last: Annotated[str | None, typer.Option("--to", metavar="SERIAL", help="Last bag.")] = None,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Fill a case with bags, named one by one or from a first to a last, and print its label."""

    def make(desk: ShippingDesk) -> tuple[Fact, ...]:
        serials = [desk.named(one) for one in bag or ()]
        if (first is None) != (last is None):
            raise BadInput("--from and --to", "give both, or name each bag with --bag")
        if first is not None and last is not None:
            serials += serials_between(first.upper(), last.upper())
        return desk.fill(serials)

    run_verb(as_json, lambda: _entered(config, home, who, Act.PACK_UP, make, "Case {} is filled"))


def pallet(
    case: Annotated[list[str], typer.Argument(metavar="SSCC...", help="Its cases.")],
    gross: Annotated[str, typer.Option("--gross", metavar="MASS", help="As it stands: 121.5kg.")],
    config: Settings,
    who: Who,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Close a pallet of cases, and print its label."""

    def make(desk: ShippingDesk) -> tuple[Fact, ...]:
        return desk.stack([desk.named(one) for one in case], read_mass("--gross", gross))

    run_verb(as_json, lambda: _entered(config, home, who, Act.PACK_UP, make, "Pallet {} is closed"))


def ship(
    unit: Annotated[list[str], typer.Argument(metavar="SSCC...", help="Pallets and cases.")],
    customer: Annotated[str, typer.Option(metavar="CODE", help="Of customers.toml.")],
    paper: Annotated[str, typer.Option(metavar="WORDS", help="Kind and number: delivery note 12.")],
    config: Settings,
    who: Who,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Record that pallets and cases left for a customer."""

    def make(desk: ShippingDesk) -> tuple[Fact, ...]:
        known = tuple(one.code for one in desk.customers)
        if customer not in known:
            raise BadInput(
                f"--customer {customer}", f"is not in customers.toml: {', '.join(known) or 'none'}"
            )
        return desk.ship(customer, paper, [desk.named(one) for one in unit])

    run_verb(
        as_json, lambda: _entered(config, home, who, Act.SHIP, make, "Shipment {} is on record")
    )


def undo(
    subject: Annotated[str, typer.Argument(metavar="SSCC|SHIPMENT", help="What is undone.")],
    why: Annotated[str, typer.Option("--why", metavar="WORDS", help="Why.")],
    config: Settings,
    who: Who,
    came_back: Annotated[
        bool, typer.Option("--came-back", help="The shipment left and came back.")
    ] = False,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Open a case, break up a pallet, or withdraw a shipment: by an entry of its own."""

    def make(desk: ShippingDesk) -> tuple[Fact, ...]:
        return desk.undo(desk.named(subject), why, came_back=came_back)

    run_verb(as_json, lambda: _entered(config, home, who, Act.CORRECT, make, "{} is undone"))


def _entered(
    config: Path,
    home: Path | None,
    who: str,
    act: Act,
    make: Callable[[ShippingDesk], tuple[Fact, ...]],
    words: str,
) -> Answer:
    from station.app.printers import printer_of, unit_printer_settings
    from station.app.shipping_desk import ShippingDesk
    from station.app.unit_labels import Direct, UnitLabels
    from station.cli.stopped import packhouse, stopped
    from station.clock import SystemClock
    from station.line.ports import StoreFault

    house = packhouse(config)
    with stopped(house, home, who, act, _ON_SCREEN) as (store, at, folder):
        clock = SystemClock(house.settings.zone)
        desk = ShippingDesk(house, folder, clock)
        printer = unit_printer_settings(house)
        if printer.folder.is_relative_to(house.settings.home):  # labels stay beside the record
            beside = folder / printer.folder.relative_to(house.settings.home)
            printer = replace(printer, folder=beside)
        direct = Direct(printer_of(printer))

        def keep(more: tuple[Fact, ...], by: str) -> None:
            for one in store.record(more, at, by):
                labels.noted(one)

        packer, dots = house.settings.packer, printer.dots_per_mm
        labels = UnitLabels(folder, clock, packer, direct, keep, dots)
        try:
            facts = make(desk)
            for record in store.record(facts, at, who):
                labels.noted(record)
        except (ValueError, StoreFault) as refused:
            raise BadInput("refused", str(refused)) from refused
        name = facts[-1].subject
    document: dict[str, Json] = {"entry": facts[-1].uid, "kind": str(facts[-1].kind), "name": name}
    return Answer(document, (heading(words.format(name)),))


def _unit(one: UnitLine) -> dict[str, Json]:
    return {
        "kind": str(one.kind),
        "sscc": one.sscc,
        "product": one.name,
        "blend_lot": one.blend_lot,
        "use_by": iso(one.use_by),
        "bags": one.bags,
        "kilograms": plain(one.net_ug * _MICRO),
        "label": str(one.label),
        "held": one.held,
    }


def _shipment(one: ShipmentLine) -> dict[str, Json]:
    return {
        "shipment": one.number,
        "customer": one.customer.name,
        "place": one.customer.place,
        "left": iso(one.at),
        "reference": one.reference,
        "state": one.state,
    }
