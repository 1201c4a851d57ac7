"""Journal bodies: the facts of each kind of entry as text and whole numbers, and back.

A body is complete: a run or a bag can be read back from it years later without any table. Masses
stand as shown digits with their unit (``0.250 kg``), days as ISO dates.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from decimal import Decimal
from functools import lru_cache
from typing import Any

from station.core.dating import Dating
from station.core.journal import Value
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot, LotStatus
from station.core.mass import Mass, Unit
from station.core.metrology.rule_set import Limits
from station.core.metrology.verdict import Verdict, Window
from station.core.pack import LabelState, Moment, PackDraft, PackId, Quality, Residue, Weighing
from station.core.product import BagItem, PackMode, Product, Share
from station.core.run import Run
from station.store.label_body import label_body, label_of
from station.store.recipe_body import bounds_of, component_of, recipe_body, share_body

Body = dict[str, Value]
_Read = Mapping[str, Any]
"""A body as read back; its values were written by the functions here."""


@lru_cache(maxsize=4096)
def mass(text: str) -> Mass:
    """Read a mass as written in a body; bags share most of them."""
    digits, unit = text.split(" ")
    return Mass.of(digits, unit)


def _day(text: str | None) -> date | None:
    return None if text is None else date.fromisoformat(text)


def _text(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def lot_body(lot: InputLot) -> Body:
    """Body of an input lot."""
    return {
        "code": lot.code,
        "component": lot.component,
        "supplier": lot.supplier,
        "received": lot.received.isoformat(),
        "harvested": _text(lot.harvested),
        "use_by": _text(lot.use_by),
        "status": str(lot.status),
    }


def lot_of(body: _Read) -> InputLot:
    """Input lot of a body."""
    return InputLot(
        code=body["code"],
        component=body["component"],
        supplier=body["supplier"],
        received=date.fromisoformat(body["received"]),
        harvested=_day(body["harvested"]),
        use_by=_day(body["use_by"]),
        status=LotStatus(body["status"]),
    )


def lot_set_body(lot_set: LotSet) -> list[Value]:
    """Members of a lot set: pairs of component and lot."""
    return [[use.component, use.lot] for use in lot_set.uses]


def lot_set_of(members: Sequence[Sequence[str]]) -> LotSet:
    """Lot set of its members."""
    return LotSet(tuple(LotUse(component, lot) for component, lot in members))


def _product_body(product: Product) -> Body:
    return {
        "code": product.code,
        "version": product.version,
        "name": product.name,
        "gtin": product.gtin,
        "market": product.market,
        "rule_set": product.rule_set,
        "nominal": str(product.nominal),
        "floor": str(product.floor),
        "target": str(product.target),
        "upper": str(product.upper),
        "bag": {
            "code": product.bag.code,
            "name": product.bag.name,
            "tare": str(product.bag.tare),
            "basis": product.bag.basis,
        },
        "mode": str(product.mode),
        "recipe": [
            {
                "code": share.component.code,
                "name": share.component.name,
                "allergen": share.component.allergen,
                "max_age_days": share.component.max_age_days,
                "percent": format(share.percent, "f"),
                **share_body(share),
            }
            for share in product.recipe
        ],
        "life_days": product.life_days,
        "atmosphere": product.atmosphere,
        "storage": product.storage,
        "use_by_words": product.use_by_words,
        "label": label_body(product.label),
        "life_approved_by": product.life_approved_by,
        **recipe_body(product),
    }


def _product_of(body: _Read) -> Product:
    bag = body["bag"]
    return Product(
        code=body["code"],
        version=body["version"],
        name=body["name"],
        gtin=body["gtin"],
        market=body["market"],
        rule_set=body["rule_set"],
        nominal=mass(body["nominal"]),
        floor=mass(body["floor"]),
        target=mass(body["target"]),
        upper=mass(body["upper"]),
        bag=BagItem(bag["code"], bag["name"], mass(bag["tare"]), bag["basis"]),
        mode=PackMode(body["mode"]),
        recipe=tuple(
            Share(
                component_of(part),
                Decimal(part["percent"]),
                *bounds_of(part),
            )
            for part in body["recipe"]
        ),
        life_days=body["life_days"],
        atmosphere=body["atmosphere"],
        storage=body["storage"],
        use_by_words=body["use_by_words"],
        label=label_of(body.get("label")),  # runs of the first shape have neither
        life_approved_by=body.get("life_approved_by", ""),
        effective_from=_day(body.get("effective_from")),
        effective_until=_day(body.get("effective_until")),
        approved_by=body.get("approved_by", ""),
    )


def _window_body(window: Window) -> Body:
    limits = window.limits
    return {
        "floor": str(window.floor),
        "target": str(window.target),
        "upper": str(window.upper),
        "rule_set": limits.rule_set,
        "rule_version": limits.version,
        "nominal": str(limits.nominal),
        "tolerable": str(limits.tolerable),
        "t1": str(limits.t1),
        "t2": str(limits.t2),
        "source": limits.source,
    }


def _window_of(body: _Read) -> Window:
    limits = Limits(
        rule_set=body["rule_set"],
        version=body["rule_version"],
        nominal=mass(body["nominal"]),
        tolerable=mass(body["tolerable"]),
        t1=mass(body["t1"]),
        t2=mass(body["t2"]),
        source=body["source"],
    )
    return Window(mass(body["floor"]), mass(body["target"]), mass(body["upper"]), limits)


def run_body(run: Run) -> Body:
    """Body of a run: everything that judges and names its bags."""
    return {
        "run": run.id,
        "product": _product_body(run.product),
        "window": _window_body(run.window),
        "production_day": run.dating.production_day.isoformat(),
        "use_by": run.dating.use_by.isoformat(),
        "shortened_by": run.dating.shortened_by,
        "lot_set": run.lot_set.key,
        "members": lot_set_body(run.lot_set),
        "lots": [lot_body(lot) for lot in run.lots],
        "blend_lot": run.blend_lot,
        "line": run.line,
        "lead": run.lead,
        "operator": run.operator,
        "order_size": run.order_size,
        "scale": run.scale,
        "unit": str(run.unit),
        "software": run.software,
    }


def run_of(body: _Read) -> Run:
    """Run of a body."""
    return Run(
        id=body["run"],
        product=_product_of(body["product"]),
        window=_window_of(body["window"]),
        dating=Dating(
            date.fromisoformat(body["production_day"]),
            date.fromisoformat(body["use_by"]),
            body["shortened_by"],
        ),
        lot_set=lot_set_of(body["members"]),
        lots=tuple(lot_of(lot) for lot in body["lots"]),
        blend_lot=body["blend_lot"],
        line=body["line"],
        lead=body["lead"],
        operator=body["operator"],
        order_size=body["order_size"],
        scale=body["scale"],
        unit=Unit(body["unit"]),
        software=body["software"],
    )


def run_frame(run: Run) -> Body:
    """The part of every bag's body that its run fixes; built once for a run."""
    window = _window_body(run.window)
    del window["source"]
    return {
        "run": run.id,
        "product": {"code": run.product.code, "version": run.product.version},
        "window": window,
        "line": run.line,
        "scale": run.scale,
        "software": run.software,
    }


def pack_body(
    frame: Body, members: list[Value], draft: PackDraft, identity: PackId, uid: str
) -> Body:
    """Body of a bag: its name, its weighing and judgement, and every lot that could be in it."""
    weighing = draft.weighing
    good = draft.quality is Quality.GOOD
    return {
        **frame,
        "number": identity.number,
        "serial": identity.serial,
        "uid": uid,
        "gross": str(weighing.gross),
        "tare": str(weighing.tare),
        "net": str(weighing.net),
        "spread": str(weighing.spread),
        "dwell_ms": weighing.dwell_ms,
        "top_ups": weighing.top_ups,
        "frame": weighing.frame,
        "verdict": str(draft.verdict),
        "quality": str(draft.quality),
        "reason": draft.reason,
        "label": str(LabelState.RECORDED if good else LabelState.NONE),
        "blend_lot": draft.blend_lot,
        "lot_set": draft.lot_set,
        "members": members,
        "use_by": draft.use_by.isoformat(),
        "production_day": draft.production_day.isoformat(),
        "operator": draft.operator,
        "residue": residue_body(draft.residue),
    }


def residue_body(residue: Residue | None) -> Value:
    """The empty pan's part of a bag's body."""
    if residue is None:
        return None
    return {"at": residue.at.isoformat(), "reading": str(residue.reading)}


def residue_of(body: _Read | None) -> Residue | None:
    """What the empty pan showed, of its part of a bag's body."""
    if body is None:
        return None
    return Residue(datetime.fromisoformat(body["at"]), mass(body["reading"]))


def draft_of(body: _Read, at: Moment) -> PackDraft:
    """The bag of a body, as it was judged."""
    return PackDraft(
        run=body["run"],
        weighing=Weighing(
            gross=mass(body["gross"]),
            tare=mass(body["tare"]),
            net=mass(body["net"]),
            spread=mass(body["spread"]),
            dwell_ms=body["dwell_ms"],
            top_ups=body["top_ups"],
            frame=body["frame"],
        ),
        verdict=Verdict(body["verdict"]),
        quality=Quality(body["quality"]),
        reason=body["reason"],
        blend_lot=body["blend_lot"],
        lot_set=body["lot_set"],
        use_by=date.fromisoformat(body["use_by"]),
        production_day=date.fromisoformat(body["production_day"]),
        operator=body["operator"],
        judged_at=at,
        residue=residue_of(body.get("residue")),  # entries of the first shape have none
    )
