"""A run and readings for the line, in an invented packhouse."""

from dataclasses import replace
from datetime import UTC, date, datetime
from decimal import Decimal

from drivers.frames.base import Kind
from drivers.steady import Reading
from station.core.dating import Dating
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.mass import Mass, Unit
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.verdict import Window
from station.core.pack import Moment
from station.core.product import BagItem, Component, PackMode, Product, Share
from station.core.run import Run

MS = 1_000_000


def grams(text: str | int | Decimal) -> Mass:
    return Mass.of(text, Unit.GRAM)


def make_product(**changes: object) -> Product:
    leaf = Component("ROM", "Romaine", max_age_days=6)
    root = Component("CAR", "Carrot")
    product = Product(
        code="HARBOUR-250",
        version=1,
        name="Harbour mix",
        gtin="9521234000013",
        market="EU",
        rule_set="eu-76-211",
        nominal=grams(250),
        floor=grams(250),
        target=grams(252),
        upper=grams(262),
        bag=BagItem("B6", "retail bag", grams(6), "mean of 25"),
        mode=PackMode.FILL,
        recipe=(Share(leaf, Decimal(70)), Share(root, Decimal(30))),
        life_days=6,
        atmosphere="air",
        storage="Keep cold, 0 to 4 °C",
    )
    return replace(product, **changes)


def make_run(product: Product | None = None, order_size: int | None = None) -> Run:
    product = product or make_product()
    day = date(2026, 11, 25)
    lots = (
        InputLot("ROM-1", "ROM", "Aldermoor Growers", day),
        InputLot("CAR-7", "CAR", "Tarn Roots", day),
    )
    return Run(
        id="0193-run",
        product=product,
        window=Window(
            product.floor,
            product.target,
            product.upper,
            rule_set(product.rule_set).limits(product.nominal),
        ),
        dating=Dating(day, date(2026, 12, 1), ""),
        lot_set=LotSet.of((LotUse("ROM", "ROM-1"), LotUse("CAR", "CAR-7"))),
        lots=lots,
        blend_lot="A2632901",
        line="A",
        lead="P01",
        operator="P02",
        order_size=order_size,
        scale="bench",
        unit=Unit.GRAM,
        software="0.1.0",
    )


def make_reading(
    value: str | int, at_ms: int, *, steady: bool = True, **changes: object
) -> Reading:
    amount = Decimal(value)
    reading = Reading(
        digits=str(value),
        value=amount,
        unit="g",
        kind=Kind.GROSS,
        steady=steady,
        at_zero=abs(amount) <= Decimal("0.5"),
        over=False,
        under=amount < 0,
        fault=None,
        spread=Decimal(0),
        agreeing=2 if steady else 0,
        seen_at_ns=at_ms * MS,
        epoch=1,
        raw=b"\n 1G",
    )
    return replace(reading, **changes)


def make_moment(at_ms: int = 0) -> Moment:
    return Moment(datetime(2026, 11, 25, 9, 0, tzinfo=UTC), 0, "Europe/Dublin", at_ms * MS)
