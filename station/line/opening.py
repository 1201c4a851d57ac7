"""Opens a run: from a lead's choice to everything frozen, or one sentence why not."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from station.core.dating import date_run, production_day
from station.core.lot_set import assemble, blend_lot_code, last_day
from station.core.lots import InputLot
from station.core.mass import Unit
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.verdict import Window
from station.core.pack import Moment
from station.core.product import Product, ProductError
from station.core.run import Run
from station.line.present import units_fit
from station.line.state import RunChoice


def _nothing(_: str, __: date) -> str:
    """Every known product may be run."""
    return ""


@dataclass(frozen=True, slots=True)
class Catalogue:
    """What a lead may choose from, and what the station adds to each run.

    Args:
        products: by article code; the newest version of each.
        lots: input lots by code.
        line: short code of the line.
        cut_off: wall-clock time at which the production day changes.
        scale: what identifies the scale.
        unit: the scale's unit.
        software: version of the station.
        refusal: why a product, by its code, may not be run on a production day; empty when it may.
    """

    products: Mapping[str, Product]
    lots: Mapping[str, InputLot]
    line: str
    cut_off: time
    scale: str
    unit: Unit
    software: str
    refusal: Callable[[str, date], str] = _nothing


def day_of(moment: Moment, cut_off: time) -> date:
    """The production day a moment counts to."""
    return production_day(_local(moment), cut_off)


def calendar_day(moment: Moment) -> date:
    """The day of a moment on the plant's calendar."""
    return _local(moment).date()


def _local(moment: Moment) -> datetime:
    return (moment.utc + timedelta(minutes=moment.offset_minutes)).replace(tzinfo=None)


def too_late(run: Run, day: date) -> str:
    """Why no bag of a run may be packed any more on a day of the calendar; empty while it may.

    A run may pass midnight: what was fresh enough when it opened need not be so now.
    """
    if day > run.dating.use_by:
        return f"its use-by {run.dating.use_by} is past: end the run"
    by_code = {component.code: component for component in run.product.components}
    for lot in run.lots:
        last = last_day(lot, by_code[lot.component])
        if last is not None and day > last:
            return f"lot {lot.code} had its last day on {last}: it must not be used"
    return ""


def open_run(
    choice: RunChoice, catalogue: Catalogue, at: Moment, blend_number: int, run_id: str
) -> Run:
    """Return a run with product, limits, dates and lots frozen.

    Args:
        choice: what the lead chose.
        catalogue: what there is.
        at: now.
        blend_number: number of the next blend lot of this line and production day, from 1.
        run_id: UUID version 7 as text.

    Raises:
        ValueError: (ProductError, LotError, DatingError, RuleRefused, WindowError) the choice
            cannot be packed; the message is one sentence that says why and what to do.
    """
    product = catalogue.products.get(choice.product)
    if product is None:
        raise ProductError(
            f"product {choice.product!r} is not known: choose one of "
            f"{', '.join(sorted(catalogue.products))}"
        )
    if product.version != choice.version:
        raise ProductError(
            f"product {product.code} is at version {product.version} now, not {choice.version}: "
            "choose it again"
        )
    if choice.order_size is not None and choice.order_size < 1:
        raise ProductError(
            f"an order of {choice.order_size} bags: give 1 or more, or leave it open"
        )
    if not choice.lead or not choice.operator:
        raise ProductError("a run needs a lead and a person on the scale")
    day = day_of(at, catalogue.cut_off)
    product.check_effective(day)
    if words := catalogue.refusal(product.code, day):
        raise ProductError(words)
    lot_set = assemble(product, choice.lots, catalogue.lots, calendar_day(at))
    lots = tuple(catalogue.lots[use.lot] for use in lot_set.uses)
    limits = rule_set(product.rule_set).limits(product.nominal)
    run = Run(
        id=run_id,
        product=product,
        window=Window(product.floor, product.target, product.upper, limits),
        dating=date_run(product, lots, day),
        lot_set=lot_set,
        lots=lots,
        blend_lot=blend_lot_code(catalogue.line, day, blend_number),
        line=catalogue.line,
        lead=choice.lead,
        operator=choice.operator,
        order_size=choice.order_size,
        scale=catalogue.scale,
        unit=catalogue.unit,
        software=catalogue.software,
    )
    misfit = units_fit(run)
    if misfit:
        raise ProductError(misfit)
    return run
