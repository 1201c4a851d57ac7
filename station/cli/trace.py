"""``station trace``: from an input lot to every bag it could be in, and back from a bag or case."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import RenderableType

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import day, facts, heading, listing
from station.cli.purged import gone_answer, with_purged
from station.core.lots import InputLot
from station.core.metrology.exact import plain
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.shipping_lines import Place, ShipmentLine, UnitLine
    from station.store.answers import LotTrace, PackLine, PackTrace, RunLine
    from station.store.recall import Reach
    from station.store.unit_contents import UnitContents

_Lot = Annotated[str | None, typer.Option("--lot", metavar="CODE", help="An input lot.")]
_Pack = Annotated[str | None, typer.Option("--pack", metavar="SERIAL", help="Serial of a bag.")]
_Unit = Annotated[
    str | None, typer.Option("--unit", metavar="SSCC", help="A case or pallet, typed or scanned.")
]
_PACK_COLUMNS = ("serial", "packed", "blend_lot", "net", "quality", "label")
_LOT_COLUMNS = ("lot", "component", "supplier", "harvested", "received", "use_by")
_RUN_COLUMNS = ("product", "nominal", "line", "started", "ended", "lead")
_MOST_SHOWN = 200
_MICRO_TO_KILO = Decimal("1e-9")


def trace(
    lot: _Lot = None,
    pack: _Pack = None,
    unit: _Unit = None,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Trace an input lot forward to its bags, or a bag, case or pallet back to its lots."""

    def work() -> Answer:
        from station.reports.unit_scan import named_by_scan  # slow to load, like all here
        from station.store.purged import gone_with_bag, gone_with_bags, gone_with_lot
        from station.store.queries import trace_lot, trace_pack
        from station.store.recall import reach_of_serials
        from station.store.shipping import places_of
        from station.store.unit_contents import contents_of_unit

        if sum(one is not None for one in (lot, pack, unit)) != 1:
            raise BadInput("what to trace", "give one of --lot CODE, --pack SERIAL, --unit SSCC")
        folder = home_of(home, config)
        if lot is not None:
            traced = trace_lot(folder, lot)
            serials = [one.serial for one in traced.packs]
            answer = _lot_answer(traced, tuple(places_of(folder, serials).values()))
            return with_purged(answer, gone_with_lot(folder, lot))
        if pack is not None:
            if (gone := gone_with_bag(folder, pack)) is not None:
                return gone_answer(pack, gone, places_of(folder, (pack,)).get(pack))
            found = trace_pack(folder, pack)
            return _pack_answer(found, places_of(folder, (pack,)).get(pack))
        held = contents_of_unit(folder, named_by_scan(unit or ""))
        left = _unit_answer(held, reach_of_serials(folder, held.serials))
        return with_purged(left, gone_with_bags(folder, held.serials))

    run_verb(as_json, work)


def _lot_answer(found: LotTrace, places: tuple[Place, ...]) -> Answer:
    kilograms = plain(found.kilograms)
    cases = sorted({one.case for one in places})
    pallets = sorted({one.pallet for one in places if one.pallet})
    gone = {one.shipment.number: one.shipment for one in places if one.shipment is not None}
    sent = (f"{number} to {one.customer.name}" for number, one in sorted(gone.items()))
    document: dict[str, Json] = {
        "lot": _lot(found.lot),
        "count": len(found.packs),
        "counts": {str(quality): number for quality, number in found.counts.items()},
        "kilograms": kilograms,
        "blend_lots": list(found.blend_lots),
        "runs": [_run(run) for run in found.runs],
        "cases": list(cases),
        "pallets": list(pallets),
        "shipments": [_shipment(one) for _, one in sorted(gone.items())],
        "packs": [_pack(pack) for pack in found.packs],
    }
    counts = ", ".join(f"{number} {quality}" for quality, number in found.counts.items())
    page: tuple[RenderableType, ...] = (
        heading(f"Input lot {found.lot.code} could be in {len(found.packs)} bags"),
        facts(
            (
                *_lot_facts(found.lot),
                ("Bags", counts or "none"),
                ("Together", f"{kilograms} kg net"),
                ("Blend lots", ", ".join(found.blend_lots) or "none"),
                ("Packed up", f"cases: {len(cases)}, pallets: {len(pallets)}"),
                ("Left with", "; ".join(sent) or "no shipment"),
            )
        ),
    )
    if found.runs:
        page += (listing(_RUN_COLUMNS, map(_run_cells, found.runs), "nominal", "product"),)
    return Answer(document, page + _pack_list(found.packs))


def _pack_answer(found: PackTrace, place: Place | None) -> Answer:
    from station.reports.recall_back import place_words

    draft = found.record.draft
    weighing = draft.weighing
    document: dict[str, Json] = {
        "serial": found.record.serial,
        "uid": found.record.uid,
        "quality": str(found.quality),
        "label": str(found.label),
        "reason": found.reason,
        "verdict": str(draft.verdict),
        "gross": weighing.gross.digits,
        "tare": weighing.tare.digits,
        "net": weighing.net.digits,
        "unit": str(weighing.net.unit),
        "packed_utc": draft.judged_at.utc.isoformat(),
        "offset_minutes": draft.judged_at.offset_minutes,
        "production_day": draft.production_day.isoformat(),
        "use_by": draft.use_by.isoformat(),
        "blend_lot": draft.blend_lot,
        "operator": draft.operator,
        "place": place_words(place),
        "entry": found.record.entry_seq,
        "entry_hash": found.record.entry_hash,
        "run": _run(found.run),
        "lots": [_lot(lot) for lot in found.lots],
        "neighbours": [_pack(pack) for pack in found.neighbours],
    }
    reason = f", {found.reason}" if found.reason else ""
    page = (
        heading(f"Bag {found.record.serial}: {found.run.name}, {found.run.nominal}"),
        facts(
            (
                ("Quality", f"{found.quality}{reason}"),
                ("Label", str(found.label)),
                ("Net", f"{weighing.net}  (gross {weighing.gross} - tare {weighing.tare})"),
                ("Verdict", str(draft.verdict)),
                ("Packed", f"{draft.judged_at.utc:%Y-%m-%d %H:%M:%S} UTC by {draft.operator}"),
                ("Production day", day(draft.production_day)),
                ("Use by", day(draft.use_by)),
                ("Blend lot", draft.blend_lot),
                ("It is", place_words(place)),
                ("Journal entry", f"{found.record.entry_seq}, {found.record.entry_hash[:16]}…"),
            )
        ),
        heading("Input lots that could be in it"),
        listing(_LOT_COLUMNS, map(_lot_cells, found.lots), wraps="supplier"),
        heading("Bags before and after"),
        *_pack_list(found.neighbours),
    )
    return Answer(document, page)


def _unit_answer(held: UnitContents, reach: Reach) -> Answer:
    its = held.unit
    kilograms = plain(its.net_ug * _MICRO_TO_KILO)
    document: dict[str, Json] = {
        "sscc": its.sscc,
        "kind": str(its.kind),
        "state": _state(its),
        "product": its.product,
        "blend_lots": list(its.blend_lot.split()),
        "use_by": its.use_by.isoformat(),
        "made": iso(its.at),
        "pallet": its.pallet,
        "shipment": its.shipment,
        "label": str(its.label),
        "bags": its.bags,
        "held": its.held,
        "kilograms": kilograms,
        "cases": list(held.cases),
        "lots": [_lot(lot) for lot in reach.lots],
        "serials": list(held.serials),
    }
    bags = (
        (row.serial, f"{row.at:%Y-%m-%d %H:%M:%S}", f"{row.net}", row.quality, row.label)
        for row in reach.packs[:_MOST_SHOWN]
    )
    left = len(reach.packs) - _MOST_SHOWN
    page = (
        heading(f"{its.kind} {its.sscc}: {its.name}"),
        facts(
            (
                ("It is", _state(its)),
                ("Bags", f"{its.bags}, {kilograms} kg net"),
                ("Held", f"{its.held} of them must not leave" if its.held else "none"),
                ("Blend lot", its.blend_lot),
                ("Use by", day(its.use_by)),
                ("Made", f"{its.at:%Y-%m-%d %H:%M}"),
                ("Its label", str(its.label)),
                *((("Cases", " ".join(held.cases)),) if held.cases != (its.sscc,) else ()),
            )
        ),
        heading("Input lots that could be in it"),
        listing(_LOT_COLUMNS, map(_lot_cells, reach.lots), wraps="supplier"),
        heading("Its bags"),
        listing(("serial", "packed", "net", "quality", "label"), bags, "net"),
        *((heading(f"and {left} more: --json lists them all"),) if left > 0 else ()),
    )
    return Answer(document, page)


def _state(its: UnitLine) -> str:
    if its.undone:
        return "undone: its bags went on"
    on = f"on pallet {its.pallet}" if its.pallet else "by itself"
    return f"{on}, left with {its.shipment}" if its.shipment else f"{on}, in the house"


def _pack_list(packs: tuple[PackLine, ...]) -> tuple[RenderableType, ...]:
    if not packs:
        return ()
    shown = listing(_PACK_COLUMNS, map(_pack_cells, packs[:_MOST_SHOWN]), "net")
    left = len(packs) - _MOST_SHOWN
    return (shown,) if left <= 0 else (shown, heading(f"and {left} more: --json lists them all"))


# --- one thing in its two forms -------------------------------------------------------------------


def _lot(lot: InputLot) -> dict[str, Json]:
    return {
        "code": lot.code,
        "component": lot.component,
        "supplier": lot.supplier,
        "received": lot.received.isoformat(),
        "harvested": iso(lot.harvested),
        "use_by": iso(lot.use_by),
        "status": str(lot.status),
    }


def _lot_facts(lot: InputLot) -> tuple[tuple[str, str], ...]:
    return (
        ("Component", lot.component),
        ("Supplier", lot.supplier),
        ("Harvested", day(lot.harvested)),
        ("Received", day(lot.received)),
        ("Last day of its own", day(lot.use_by)),
        ("Status", str(lot.status)),
    )


def _lot_cells(lot: InputLot) -> tuple[str, ...]:
    days = (iso(at) or "–" for at in (lot.harvested, lot.received, lot.use_by))
    return (lot.code, lot.component, lot.supplier, *days)


def _pack(pack: PackLine) -> dict[str, Json]:
    return {
        "serial": pack.serial,
        "at": pack.at.isoformat(),
        "blend_lot": pack.blend_lot,
        "use_by": pack.use_by.isoformat(),
        "net": pack.net.digits,
        "unit": str(pack.net.unit),
        "quality": str(pack.quality),
        "label": str(pack.label),
    }


def _pack_cells(pack: PackLine) -> tuple[str, ...]:
    packed = f"{pack.at:%Y-%m-%d %H:%M:%S}"
    return (pack.serial, packed, pack.blend_lot, f"{pack.net}", str(pack.quality), str(pack.label))


def _shipment(gone: ShipmentLine) -> dict[str, Json]:
    return {
        "shipment": gone.number,
        "customer": gone.customer.name,
        "place": gone.customer.place,
        "left": iso(gone.at),
        "reference": gone.reference,
    }


def _run(run: RunLine) -> dict[str, Json]:
    return {
        "uid": run.uid,
        "line": run.line,
        "product": run.product,
        "version": run.version,
        "name": run.name,
        "gtin": run.gtin,
        "nominal": run.nominal.digits,
        "unit": str(run.nominal.unit),
        "lead": run.lead,
        "operator": run.operator,
        "started": run.started.isoformat(),
        "ended": iso(run.ended),
    }


def _run_cells(run: RunLine) -> tuple[str, ...]:
    started = f"{run.started:%Y-%m-%d %H:%M}"
    ended = f"{run.ended:%H:%M}" if run.ended else "open"
    return (f"{run.name} v{run.version}", f"{run.nominal}", run.line, started, ended, run.lead)
