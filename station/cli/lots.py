"""``station lots``: take in deliveries, list lots, hold and release them, on a stopped station."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, Config, Home, home_of, read_day, read_mass
from station.cli.page import Weight, day, facts, heading, listing, note
from station.cli.stopped import Settings, Who, Why, packhouse, stopped
from station.core.lots import LotError, LotStatus
from station.core.rights import Act
from station.errors import BadInput

if TYPE_CHECKING:
    from datetime import date
    from decimal import Decimal

    from station.core.pack import Moment
    from station.core.receiving import Delivery, Notes
    from station.store.writer import StationStore

Code = Annotated[str, typer.Argument(metavar="CODE", help="Code of the lot.")]
_ON_SCREEN = "stop the station, or do it on its screen: RUN, then LOTS (F6)"
_COLUMNS = ("lot\ncomponent", "supplier", "received\nharvested", "last_day", "status")


def receive(
    config: Settings,
    who: Who,
    supplier: Annotated[str, typer.Option(help="Who it came from.")],
    component: Annotated[str, typer.Option(help="Code of the component.")],
    scan: Annotated[
        list[str] | None,
        typer.Option(metavar="DATA", help="A scanned symbol of the case; once or twice."),
    ] = None,
    code: Annotated[
        str | None, typer.Option(help="The supplier's lot code; else a new one.")
    ] = None,
    harvested: Annotated[str | None, typer.Option(metavar="DATE", help="Day of harvest.")] = None,
    packed: Annotated[str | None, typer.Option(metavar="DATE", help="Day of packing.")] = None,
    use_by: Annotated[str | None, typer.Option(metavar="DATE", help="The lot's last day.")] = None,
    quantity: Annotated[
        str | None, typer.Option(metavar="MASS", help="What came: 412.5kg.")
    ] = None,
    temperature: Annotated[str | None, typer.Option(metavar="C", help="On arrival, in °C.")] = None,
    reference: Annotated[str | None, typer.Option(help="Kind and number of the paper.")] = None,
    code_source: Annotated[str | None, typer.Option(help="Who gave the lot its code.")] = None,
    hold: Annotated[str | None, typer.Option(metavar="WHY", help="Hold it from the start.")] = None,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Take in one delivery, from a scanned case label, by hand, or both."""

    def work() -> Answer:
        from station.core.receiving import Notes, merge, receive
        from station.store.queries import known_lots

        house = packhouse(config)
        by_hand = Notes(
            code=code,
            component=component,
            supplier=supplier,
            harvested=_day("--harvested", harvested),
            packed=_day("--packed", packed),
            use_by=_day("--use-by", use_by),
            quantity=None if quantity is None else read_mass("--quantity", quantity),
            temperature=_degrees(temperature),
            reference=reference,
            code_source=code_source,
        )
        with stopped(house, home, who, Act.RECEIVE, _ON_SCREEN) as (store, at, folder):
            today = _today(at)
            known = {lot.code: lot for lot in known_lots(folder)} | dict(house.lots)
            try:
                notes = merge(_scanned(scan or [], today), by_hand)
                taken = receive(notes, known, house.components, house.settings.site, today)
                _record(store, at, who, taken, hold)
            except LotError as refused:
                raise BadInput("the delivery", str(refused)) from refused
        return _received(taken, hold)

    run_verb(as_json, work)


def list_lots(home: Home = None, config: Config = None, as_json: AsJson = False) -> None:
    """List every lot on record with its status and open holds."""

    def work() -> Answer:
        from station.core.journal import EntryKind
        from station.core.receiving import open_holds
        from station.store.queries import known_lots
        from station.store.standing import standing_facts

        folder = home_of(home, config)
        lots = known_lots(folder)
        holds = open_holds(standing_facts(folder, EntryKind.HOLD))
        rows: list[Json] = [
            {
                "code": lot.code,
                "component": lot.component,
                "supplier": lot.supplier,
                "received": iso(lot.received),
                "harvested": iso(lot.harvested),
                "use_by": iso(lot.use_by),
                "status": str(lot.status),
                "holds": [
                    {"hold": one.fact.uid, "why": str(one.fact.details["reason"]), "who": one.who}
                    for one in holds.get(lot.code, ())
                ],
            }
            for lot in lots
        ]
        cells = [
            (
                f"{lot.code}\n{lot.component}",
                lot.supplier,
                f"{day(lot.received)}\n{day(lot.harvested)}",
                day(lot.use_by),
                "; ".join(
                    [
                        str(lot.status),
                        *(str(h.fact.details["reason"]) for h in holds.get(lot.code, ())),
                    ]
                ),
            )
            for lot in lots
        ]
        held = sum(lot.status is LotStatus.HELD for lot in lots)
        title = f"{len(lots)} lots, {held} held"
        page = (heading(title, Weight.ATTEND if held else Weight.PLAIN),)
        return Answer(
            {"count": len(lots), "held": held, "lots": rows},
            (*page, listing(_COLUMNS, cells, wraps="supplier status")) if lots else page,
        )

    run_verb(as_json, work)


def hold(
    code: Code, why: Why, who: Who, config: Settings, home: Home = None, as_json: AsJson = False
) -> None:
    """Hold a lot, and with it every bag of all runs that could hold some of it."""

    def work() -> Answer:
        from station.core.ids import new_uid
        from station.core.receiving import hold_lot_fact
        from station.line.ports import StoreFault
        from station.store.lot_reach import bags_with

        house = packhouse(config)
        with stopped(house, home, who, Act.HOLD, _ON_SCREEN) as (store, at, folder):
            ranges = bags_with(folder, code)
            try:
                store.record((hold_lot_fact(new_uid(at), code, why, ranges),), at, who)
            except (LotError, StoreFault) as refused:
                raise BadInput(f"lot {code}", str(refused)) from refused
        bags = sum(last - first + 1 for _, first, last in ranges)
        return Answer(
            {"lot": code, "status": "held", "bags": bags},
            (heading(f"LOT {code} IS HELD", Weight.STOP), note(f"and {bags} bags with it")),
        )

    run_verb(as_json, work)


def release(
    code: Code, why: Why, who: Who, config: Settings, home: Home = None, as_json: AsJson = False
) -> None:
    """Take every open hold off a lot; QA or a manager alone may."""

    def work() -> Answer:
        from station.core.ids import new_uid
        from station.core.journal import EntryKind
        from station.core.receiving import open_holds, release_lot_fact
        from station.line.ports import StoreFault
        from station.store.standing import standing_facts

        house = packhouse(config)
        with stopped(house, home, who, Act.RELEASE, _ON_SCREEN) as (store, at, folder):
            found = open_holds(standing_facts(folder, EntryKind.HOLD)).get(code, ())
            if not found:
                raise BadInput(
                    f"lot {code}", "no person holds it; what lots.toml holds is released there"
                )
            try:
                store.record(
                    tuple(release_lot_fact(new_uid(at), code, h.fact.uid, why) for h in found),
                    at,
                    who,
                )
            except (LotError, StoreFault) as refused:
                raise BadInput(f"lot {code}", str(refused)) from refused
        taken_off = f"{len(found)} holds were taken off it"
        given = house.lots.get(code)
        if given is not None and given.status is LotStatus.HELD:
            status, title = "held", heading(f"LOT {code} IS STILL HELD", Weight.STOP)
            taken_off += "; lots.toml holds it too, and is to be changed there"
        else:
            status, title = "free", heading(f"Lot {code} is free")
        return Answer(
            {"lot": code, "status": status, "released": len(found)}, (title, note(taken_off))
        )

    run_verb(as_json, work)


# --- the stopped station ----------------------------------------------------------------------


def _today(at: Moment) -> date:
    from station.line.opening import calendar_day

    return calendar_day(at)


def _scanned(symbols: list[str], today: date) -> Notes:
    from station.core.receiving import Notes
    from station.reports.case_scan import notes_of_scan

    if not symbols:
        return Notes()
    return notes_of_scan([_symbol(one) for one in symbols], today)


def _symbol(text: str) -> tuple[str, str]:
    """Symbology identifier and data; ``~`` stands for the separator that no shell carries."""
    data = text.replace("~", "\x1d")
    return (data[:3], data[3:]) if data.startswith("]") else ("", data)


def _record(store: StationStore, at: Moment, who: str, taken: Delivery, hold: str | None) -> None:
    from station.core.ids import new_uid
    from station.core.receiving import delivery_fact, hold_lot_fact
    from station.line.ports import StoreFault

    entries = [delivery_fact(taken, new_uid(at))]
    if hold is not None:
        entries.append(hold_lot_fact(new_uid(at), taken.lot.code, hold))
    try:
        store.record(entries, at, who)
    except StoreFault as fault:
        raise BadInput("the delivery", str(fault)) from fault


def _received(taken: Delivery, hold: str | None) -> Answer:
    lot = taken.lot
    status = "held" if hold is not None else str(lot.status)
    came = "not weighed" if taken.quantity is None else str(taken.quantity)
    document: dict[str, Json] = {
        "code": lot.code,
        "supplier_code": taken.supplier_code,
        "component": lot.component,
        "supplier": lot.supplier,
        "received": iso(lot.received),
        "harvested": iso(lot.harvested),
        "packed": iso(taken.packed),
        "use_by": iso(lot.use_by),
        "quantity": None if taken.quantity is None else str(taken.quantity),
        "temperature": None if taken.temperature is None else str(taken.temperature),
        "reference": taken.reference,
        "code_source": taken.code_source,
        "gtin": taken.gtin,
        "status": status,
    }
    rows = [
        ("Component", lot.component),
        ("From", lot.supplier),
        ("Came", came),
        ("Status", status),
    ]
    if taken.supplier_code:
        rows.append(("Supplier's code", taken.supplier_code))
    weight = Weight.PLAIN if status == "free" else Weight.ATTEND
    return Answer(document, (heading(f"Lot {lot.code} received", weight), facts(rows)))


def _day(option: str, text: str | None) -> date | None:
    return None if text is None else read_day(option, text)


def _degrees(text: str | None) -> Decimal | None:
    from decimal import Decimal, InvalidOperation

    if text is None:
        return None
    try:
        return Decimal(text)
    except InvalidOperation as fault:
        raise BadInput("--temperature", f"{text!r} is no number of °C, such as 3.5") from fault
