"""From a durable bag and its run to the facts on its label."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta, timezone
from functools import lru_cache
from textwrap import shorten

from labels.content import InputLot, PackLabel, Translation
from labels.design import DESIGNS, LabelDesign
from labels.net_quantity import declared
from labels.reject import RejectTicket
from station.core.metrology.verdict import Verdict
from station.core.pack import PackId, PackRecord
from station.core.product import Product
from station.core.product_label import Wording
from station.core.run import Run
from station.core.training import MARK, is_training

SPECIMEN = "SPECIMEN"


def pack_label(serial: str, run: Run, packer: str, copy_mark: str = "") -> PackLabel:
    """Return the label of one bag of a run.

    The net quantity is the declared nominal quantity, never the measured one: a pack of constant
    nominal quantity declares the same on every label (EU 76/211/EEC Annex I).

    Args:
        serial: serial as printed.
        run: the frozen run; gives name, quantity, dates, blend lot and every input lot.
        packer: name and address of the packhouse, for runs that do not name it themselves.
        copy_mark: empty on a first print; every label of training bears the mark of training.

    Raises:
        labels.errors.LabelError: a fact cannot be carried by a label or a bar code.
    """
    mark = MARK if is_training(serial) else copy_mark
    return replace(_first(run, packer), serial=serial, copy_mark=mark)


def specimen_label(run: Run, site: str, station: str, packer: str) -> PackLabel:
    """Return the specimen of a run's label, with a serial no bag can have."""
    return pack_label(PackId(site, station, 0, 0).serial, run, packer, SPECIMEN)


def design_of(product: Product) -> LabelDesign:
    """Return the design a product's label is set in."""
    chosen = product.label
    return replace(DESIGNS[chosen.design], link_stem=chosen.link_stem)


def reject_ticket(record: PackRecord, run: Run, reason: str) -> RejectTicket:
    """Return the ticket of a bag that was set aside; the record keeps what is too long for it.

    Args:
        record: the bag.
        run: its run.
        reason: why it was set aside.
    """
    draft, at = record.draft, record.draft.judged_at
    net, window = draft.weighing.net, run.window
    bounds = {
        Verdict.BELOW_T2: f"below T2 {window.limits.t2}",
        Verdict.BELOW_T1: f"below T1 {window.limits.t1}",
        Verdict.BELOW_FLOOR: f"below {window.floor}",
        Verdict.OVER: f"above {window.upper}",
        Verdict.IN_WINDOW: f"in {window.floor} to {window.upper}",
    }
    return RejectTicket(
        serial=record.serial,
        product=shorten(f"{run.product.name}, {run.product.nominal}", 80, placeholder="…"),
        lot=draft.blend_lot,
        reason=shorten(reason, 40, placeholder="…"),
        weight=f"{net}",
        verdict=bounds[draft.verdict],
        at=at.utc.astimezone(timezone(timedelta(minutes=at.offset_minutes))),
        training=is_training(record.serial),
    )


@lru_cache(4)
def _first(run: Run, packer: str) -> PackLabel:
    """Return the label of a run with serial 0; only serial and copy mark differ between bags."""
    product, chosen = run.product, run.product.label
    return PackLabel(
        product_name=product.name,
        net_quantity_text=declared(
            product.nominal.digits, str(product.nominal.unit), product.market, chosen.language
        ),
        nominal_grams=product.nominal.grams,
        market=product.market,
        use_by=run.dating.use_by,
        use_by_words=product.use_by_words,
        packed_on=run.dating.production_day,
        blend_lot=run.blend_lot,
        input_lots=tuple(
            InputLot(component.name, lot)
            for component in product.components
            for lot in run.lot_set.lots_of(component.code)
        ),
        ingredients=tuple(component.name for component in product.components),
        allergens=tuple(one.name for one in product.components if one.allergen),
        storage_text=product.storage,
        packer_text=chosen.packer or packer,
        serial="0",
        gtin=product.gtin,
        shares=tuple(sorted((share.percent for share in product.recipe), reverse=True)),
        e_mark=chosen.e_mark,
        origin=chosen.origin,
        language=chosen.language,
        second=_translation(product, chosen.second) if chosen.second else None,
    )


def _translation(product: Product, second: Wording) -> Translation:
    return Translation(
        language=second.language,
        product_name=second.name,
        ingredients=tuple(second.component(one.code) for one in product.components),
        allergens=tuple(second.component(one.code) for one in product.components if one.allergen),
        storage_text=second.storage,
    )
