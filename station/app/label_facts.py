"""From a durable bag and its run to the facts on its label."""

from __future__ import annotations

from labels.content import InputLot, PackLabel
from station.core.pack import PackId
from station.core.run import Run

SPECIMEN = "SPECIMEN"


def pack_label(serial: str, run: Run, packer: str, copy_mark: str = "") -> PackLabel:
    """Return the label of one bag of a run.

    The net quantity is the declared nominal quantity, never the measured one: a pack of constant
    nominal quantity declares the same on every label (EU 76/211/EEC Annex I).

    Args:
        serial: serial as printed.
        run: the frozen run; gives name, quantity, dates, blend lot and every input lot.
        packer: name and address of the packhouse.
        copy_mark: empty on a first print.

    Raises:
        labels.errors.LabelError: a fact cannot be carried by a label or a bar code.
    """
    product = run.product
    return PackLabel(
        product_name=product.name,
        net_quantity_text=str(product.nominal),
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
        packer_text=packer,
        serial=serial,
        gtin=product.gtin,
        copy_mark=copy_mark,
        shares=tuple(sorted((share.percent for share in product.recipe), reverse=True)),
    )


def specimen_label(run: Run, site: str, station: str, packer: str) -> PackLabel:
    """Return the specimen of a run's label, with a serial no bag can have."""
    return pack_label(PackId(site, station, 0, 0).serial, run, packer, SPECIMEN)
