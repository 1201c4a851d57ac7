"""``station recall``: every bag that a lot, a blend, a bag or a day means, and where it stands."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import RenderableType

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, Config, Force, home_of, read_day
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.purged import with_purged
from station.core.metrology.exact import plain
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.balance import Span, Water
    from station.reports.recall import Group, Recall, Scope
    from station.reports.recall_back import PackBack
    from station.reports.recall_lots import LotAccount
    from station.reports.sent import Whereabouts

_Lot = Annotated[str | None, typer.Option("--lot", metavar="CODE", help="An input lot.")]
_Pack = Annotated[
    str | None, typer.Option("--pack", metavar="SERIAL", help="A bag's serial, typed or scanned.")
]
_Blend = Annotated[str | None, typer.Option("--blend", metavar="CODE", help="A blend lot.")]
_Unit = Annotated[
    str | None, typer.Option("--unit", metavar="SSCC", help="A case or pallet, typed or scanned.")
]
_Day = Annotated[str | None, typer.Option("--day", metavar="DATE", help="A production day.")]
_Homes = Annotated[
    list[Path] | None,
    typer.Option("--home", metavar="DIR", envvar="STATION_HOME", help="A record; once or more."),
]
_Drill = Annotated[bool, typer.Option("--drill", help="Mark it as an exercise.")]
_Pdf = Annotated[Path | None, typer.Option("--pdf", metavar="FILE", help="Write the report here.")]
_Csv = Annotated[Path | None, typer.Option("--csv", metavar="FILE", help="Write the bags here.")]
_BLENDS = ("station", "product", "blend_lot", "use_by", "lots", "bags", "kg", "free")


def recall(
    lot: _Lot = None,
    pack: _Pack = None,
    blend: _Blend = None,
    day: _Day = None,
    unit: _Unit = None,
    drill: _Drill = False,
    pdf: _Pdf = None,
    csv: _Csv = None,
    force: Force = False,
    home: _Homes = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """List every bag that could hold a lot, with its mass balance; exit 1 while one is free."""

    def work() -> Answer:
        from station.clock import SystemClock
        from station.reports.files import check_free, write_whole
        from station.reports.recall import recall as ask
        from station.reports.recall_back import look_back
        from station.store.weighed import plant_zone

        homes = [home_of(each, config) for each in home] if home else [home_of(None, config)]
        scope, asked = _asked(lot, pack, blend, day, unit)
        for path in (pdf, csv):
            if path is not None:
                check_free(path, force=force)
        at = SystemClock(plant_zone(homes[0]).key).now().utc
        found = ask(homes, scope, asked, at, drill=drill, water=_water(config))
        back = None if pack is None else look_back(_home_with(homes, asked), asked)
        if pdf is not None:
            from station.reports.recall_pdf import recall_pdf

            write_whole(pdf, recall_pdf(found))
        if csv is not None:
            from station.reports.recall_csv import recall_csv

            write_whole(csv, recall_csv(found))
        return with_purged(_answer(found, back), found.gone)

    run_verb(as_json, work)


def _asked(
    lot: str | None, pack: str | None, blend: str | None, day: str | None, unit: str | None
) -> tuple[Scope, str]:
    from station.reports.recall import Scope
    from station.reports.serial_scan import serial_of

    given = [
        (scope, text)
        for scope, text in (
            (Scope.LOT, lot), (Scope.PACK, pack), (Scope.BLEND, blend), (Scope.DAY, day),
            (Scope.UNIT, unit),
        )
        if text is not None
    ]  # fmt: skip
    if len(given) != 1:
        raise BadInput(
            "what to recall",
            "give one of --lot CODE, --pack SERIAL, --blend CODE, --day DATE, --unit SSCC",
        )
    ((scope, text),) = given
    if scope is Scope.PACK:
        return scope, serial_of(text)
    if scope is Scope.UNIT:
        from station.reports.unit_scan import named_by_scan

        return scope, named_by_scan(text)
    if scope is Scope.DAY:
        return scope, read_day("--day", text).isoformat()
    return scope, text


def _home_with(homes: list[Path], serial: str) -> Path:
    from station.store.recall import blend_of_pack

    for home in homes[:-1]:
        with suppress(BadInput):
            blend_of_pack(home, serial)
            return home
    return homes[-1]


def _water(config: Path | None) -> Water | None:
    if config is None:
        return None
    from station.config.load import load_settings

    return load_settings(config).lots.water


def _answer(found: Recall, back: PackBack | None) -> Answer:
    from station.reports.recall_words import (
        SENT_COLUMNS,
        account,
        answer,
        counted,
        labelled,
        sent_rows,
        title,
        where_rows,
    )

    document: dict[str, Json] = {
        "scope": str(found.scope),
        "asked": found.asked,
        "drill": found.drill,
        "made": iso(found.made),
        "seconds": round(found.seconds, 4),
        "stations": [
            {"station": one.name, "entry": one.seq, "hash": one.hash} for one in found.stations
        ],
        **_group(found.total),
        "where": _where(found.where),
        "lots": [_lot(one) for one in found.lots],
        "blends": [
            {
                "station": one.station,
                "run": one.blend.run.uid,
                "product": one.blend.run.product,
                "blend_lot": one.blend.code,
                "production_day": iso(one.blend.production_day),
                "use_by": iso(one.blend.use_by),
                "lots": [use.lot for use in one.blend.uses],
                **_group(one.group),
            }
            for one in found.blends
        ],
        "days": [{"day": iso(day), **_group(group)} for day, group in found.by_day.items()],
        "runs": [{"run": uid, **_group(group)} for uid, group in found.by_run.items()],
        "serials": [pack.serial for one in found.stations for pack in one.packs],
        "back": None if back is None else _back(back),
    }
    page = (
        heading(title(found), Weight.PLAIN),
        heading(answer(found), Weight.PLAIN if found.done else Weight.STOP),
        facts((("By state", counted(found.total)), ("Labels", labelled(found.total)))),
        heading("Where the bags are"),
        facts(where_rows(found.where)),
        *((listing(SENT_COLUMNS, sent_rows(found.where), "cases bags kg",
                   wraps="customer left paper"),) if found.where.sent else ()),
        *(part for one in found.lots for part in (
            heading(f"Lot {one.lot.code}, {one.lot.component} from {one.lot.supplier}, "
                    f"{one.lot.status}"), facts(account(one)))),
        listing(_BLENDS, (
            (
                one.station, one.blend.run.name, one.blend.code, one.blend.use_by.isoformat(),
                " ".join(use.lot for use in one.blend.uses), str(one.group.bags),
                plain(one.group.kilograms), str(one.group.free),
            )
            for one in found.blends
        ), "bags kg free", wraps="product lots"),
        *(() if back is None else _back_page(back)),
        note(f"Asked and added up in {found.seconds:.2f} s; --csv lists every bag."),
    )  # fmt: skip
    return Answer(document, page, yes=found.done)


def _where(where: Whereabouts) -> dict[str, Json]:
    parts = {"customers": where.gone, "cases": where.cased, "loose": where.loose, "out": where.out}
    return {
        **{
            name: {"bags": part.bags, "kilograms": plain(part.kilograms)}
            for name, part in parts.items()
        },
        "shipments": [
            {
                "shipment": one.shipment.number,
                "customer": one.shipment.customer.name,
                "place": one.shipment.customer.place,
                "left": iso(one.shipment.at),
                "reference": one.shipment.reference,
                "cases": list(one.cases),
                "bags": one.part.bags,
                "kilograms": plain(one.part.kilograms),
            }
            for one in where.sent
        ],
    }


def _group(group: Group) -> dict[str, Json]:
    return {
        "bags": group.bags,
        "free": group.free,
        "kilograms": plain(group.kilograms),
        "counts": dict(group.counts),
        "labels": dict(group.labels),
    }


def _lot(one: LotAccount) -> dict[str, Json]:
    lot, balance = one.lot, one.balance
    return {
        "code": lot.code,
        "component": lot.component,
        "supplier": lot.supplier,
        "received": iso(lot.received),
        "status": str(lot.status),
        "stations": list(one.stations),
        "holds": [
            {"hold": held.fact.uid, "why": str(held.fact.details["reason"]), "who": held.who}
            for held in one.holds
        ],
        "received_g": None if one.received is None else str(one.received),
        "loaded_g": None if balance.loaded is None else str(balance.loaded),
        "in_bags_g": _span(balance.used),
        "wasted_g": str(one.wasted),
        "rest_g": None if one.rest is None else _span(one.rest),
        "adds_up": one.adds_up,
    }


def _span(span: Span) -> dict[str, Json]:
    return {"low": str(span.low), "likely": str(span.likely), "high": str(span.high)}


def _back(back: PackBack) -> dict[str, Json]:
    from station.reports.recall_back import place_words

    trace = back.trace
    return {
        "serial": trace.record.serial,
        "quality": str(trace.quality),
        "label": str(trace.label),
        "place": place_words(back.place),
        "lots": [
            {"code": lot.code, "component": lot.component, "supplier": lot.supplier}
            for lot in trace.lots
        ],
        "neighbours": [one.serial for one in trace.neighbours],
        "around": [
            {
                "kind": str(one.fact.kind),
                "at": iso(one.at.utc),
                "about": one.fact.subject,
                "result": one.fact.result,
                "who": one.who,
            }
            for one in back.around
        ],
        "people": [{"who": who, "did": what} for who, what in back.people],
    }


def _back_page(back: PackBack) -> tuple[RenderableType, ...]:
    from station.reports.recall_back import place_words

    trace = back.trace
    near = trace.neighbours
    rows = [
        (f"{one.at.utc:%Y-%m-%d %H:%M}", str(one.fact.kind), one.fact.subject, one.fact.result,
         one.who)
        for one in back.around
    ]  # fmt: skip
    return (
        heading(f"Bag {trace.record.serial}: {trace.quality}, label {trace.label}"),
        facts(
            (
                *((lot.code, f"{lot.component} from {lot.supplier}") for lot in trace.lots),
                ("It is", place_words(back.place)),
                ("Bags beside it", f"{near[0].serial} to {near[-1].serial}" if near else "none"),
                ("People", "; ".join(f"{who} {what}" for who, what in back.people)),
            )
        ),
        *((listing(("at_UTC", "check", "about", "result", "who"), rows, wraps="about"),)
          if rows else ()),
    )  # fmt: skip
