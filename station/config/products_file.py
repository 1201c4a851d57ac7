"""``products.toml``: components, bags and products, each product held against every rule it meets.

Each check names its own key, so that one reading of the file shows everything wrong with it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal

from labels.errors import LabelError
from labels.gs1_digits import gtin_14
from station.config.check import check_keys, check_rows, codes
from station.config.faults import Faults, shown, unknown
from station.config.label_choice import date_words, label_problems, product_label
from station.config.packhouse import (
    LabelSettings,
    Person,
    ScaleSettings,
    ShelfLife,
    StationSettings,
)
from station.config.quality_file import limits_of, qa_problems
from station.config.recipe import recipe_problems
from station.config.settings import BagRow, ComponentRow, ProductRow
from station.config.shelf_life import Policy, life_problems, read_policy
from station.config.toml_file import read_toml
from station.core.checks.qa import QaLimit
from station.core.mass import Mass, MassError
from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_sets.registry import RULE_SETS, rule_set
from station.core.metrology.scale_suitability import Level, check_scale
from station.core.metrology.verdict import Window, WindowError
from station.core.product import BagItem, Component, PackMode, Product, ProductError, Share

FILE = "products.toml"
_KEYS = ("component", "bag", "shelf_life", "product")

_Problem = tuple[str, str, str]
"""Key within the product, what is wrong, what is allowed."""


@dataclass(frozen=True, slots=True)
class Goods:
    """What the file defines, by code; ``…_codes`` name faulty ones too."""

    components: Mapping[str, Component]
    bags: Mapping[str, BagItem]
    products: Mapping[str, Product]
    prices: Mapping[str, Decimal]
    component_codes: tuple[str, ...]
    product_codes: tuple[str, ...]
    qa: Mapping[str, tuple[QaLimit, ...]]
    lives: tuple[ShelfLife, ...] = ()


@dataclass(frozen=True, slots=True)
class _Around:
    """What a product is checked against."""

    components: Mapping[str, Component]
    component_rows: Mapping[str, ComponentRow]
    component_codes: tuple[str, ...]
    bags: Mapping[str, BagItem]
    bag_codes: tuple[str, ...]
    settings: StationSettings | None
    policy: Policy


def read_products(
    settings: StationSettings | None, people: Mapping[str, Person], faults: Faults
) -> Goods | None:
    """Return what the file defines, or None after noting that it cannot be read.

    Args:
        settings: the station they are packed on, or None where its own file is faulty.
        people: who may approve a life outside the policy.
        faults: takes every fault found.
    """
    table = read_toml(FILE, faults)
    if table is None:
        return None
    check_keys(table, _KEYS, "[[{}]]", FILE, faults)
    rows = check_rows(ComponentRow, table, "component", FILE, faults)
    components = {
        row.code: Component(
            row.code, row.name, row.allergen, row.max_age_days, row.stains, row.smells
        )
        for row in rows.values()
    }
    bags = {
        row.code: BagItem(row.code, row.name, row.tare, row.basis)
        for row in check_rows(BagRow, table, "bag", FILE, faults).values()
    }
    around = _Around(
        components,
        {row.code: row for row in rows.values()},
        codes(table, "component"),
        bags,
        codes(table, "bag"),
        settings,
        read_policy(table, people, FILE, faults),
    )
    sold = check_rows(ProductRow, table, "product", FILE, faults)
    prices = {row.code: row.price_per_kg for row in sold.values() if row.price_per_kg is not None}
    products = _products(sold, around, faults)
    listed = codes(table, "product")
    qa = {row.code: limits_of(row) for row in sold.values() if row.code in products}
    lives = tuple(
        ShelfLife(row.atmosphere, row.least_days, row.most_days, row.basis)
        for row in around.policy.lives.values()
    )
    return Goods(components, bags, products, prices, around.component_codes, listed, qa, lives)


def _products(
    rows: Mapping[int, ProductRow], around: _Around, faults: Faults
) -> dict[str, Product]:
    products: dict[str, Product] = {}
    gtins: dict[str, str] = {}
    for number, row in rows.items():
        problems = [problem for check in _CHECKS for problem in check(row, around)]
        other = gtins.setdefault(row.gtin.zfill(14), row.code)
        if other != row.code:
            why = f"{shown(row.gtin)} is the GTIN of product {other} already"
            problems.append(("gtin", why, "a GTIN of its own"))
        sound = row.bag in around.bags and all(
            share.component in around.components for share in row.recipe
        )
        if not problems and sound and around.settings is not None:
            try:
                products[row.code] = _product(row, around, around.settings.label)
            except ProductError as fault:
                problems.append(("", str(fault), ""))
        for key, why, allowed in problems:
            path = f"product[{number}]{key and f'.{key}'} ({row.code})"
            faults.add(FILE, path, why, allowed)
    return products


def _product(row: ProductRow, around: _Around, label: LabelSettings) -> Product:
    return Product(
        code=row.code,
        version=row.version,
        name=row.name,
        gtin=row.gtin,
        market=row.market or label.market,
        rule_set=row.rule_set,
        nominal=row.nominal,
        floor=row.floor,
        target=row.target,
        upper=row.upper,
        bag=around.bags[row.bag],
        mode=PackMode(row.mode),
        recipe=tuple(
            Share(around.components[share.component], share.percent, share.min, share.max)
            for share in row.recipe
        ),
        life_days=row.life_days,
        atmosphere=row.atmosphere,
        storage=row.storage,
        use_by_words=date_words(row, label),
        label=product_label(row, around.component_rows, label),
        life_approved_by=row.life_approved_by or "",
        effective_from=row.effective_from,
        effective_until=row.effective_until,
        approved_by=row.approved_by or "",
    )


# --- checks of one product, each with the key it is about -----------------------------------------


def _check_gtin(row: ProductRow, _around: _Around) -> Iterator[_Problem]:
    allowed = "13 or 14 digits in quotes, the last one their check digit"
    if len(row.gtin) not in (13, 14):
        yield "gtin", f"{shown(row.gtin)} has {len(row.gtin)} characters", allowed
        return
    try:
        gtin_14(row.gtin)
    except LabelError as fault:
        yield "gtin", fault.detail, allowed


def _check_bag(row: ProductRow, around: _Around) -> Iterator[_Problem]:
    if row.bag not in around.bag_codes:
        yield "bag", unknown(row.bag, around.bag_codes), ", ".join(around.bag_codes)
    bag = around.bags.get(row.bag)
    if bag is not None and bag.tare >= row.nominal:
        why = f"bag {bag.code} has a tare of {bag.tare}, the product a nominal of {row.nominal}"
        yield "bag", why, "a bag whose tare is below the nominal quantity"


def _check_recipe(row: ProductRow, around: _Around) -> Iterator[_Problem]:
    yield from recipe_problems(row, around.component_codes, around.policy.people)


def _check_limits(row: ProductRow, _around: _Around) -> Iterator[_Problem]:
    if row.rule_set not in RULE_SETS:
        yield "rule_set", unknown(row.rule_set, RULE_SETS), ", ".join(RULE_SETS)
        return
    try:
        limits = rule_set(row.rule_set).limits(row.nominal)
    except RuleRefused as fault:
        yield "nominal", str(fault), ""
        return
    try:
        Window(row.floor, row.target, row.upper, limits)
    except WindowError as fault:
        yield "floor, target, upper", str(fault), ""


def _check_scale(row: ProductRow, around: _Around) -> Iterator[_Problem]:
    """Whether the station's scale can weigh the product, exactly and within its capacity."""
    bag = around.bags.get(row.bag)
    if around.settings is None or bag is None:
        return
    scale = around.settings.scale
    try:
        bag.tare.in_unit(scale.unit)
        Mass.of(1, scale.unit).in_unit(row.nominal.unit)
    except MassError as fault:
        yield "nominal", f"{fault}, so the scale in {scale.unit} cannot weigh it", ""
        return
    heaviest = row.upper.grams + bag.tare.grams
    if heaviest > scale.capacity.grams:
        why = f'"{row.upper}" with the tare {bag.tare} is more than the scale can weigh'
        yield "upper", why, f"at most {scale.capacity} with the tare"
        return
    yield from _unsuitable(row, bag, scale)


def _unsuitable(row: ProductRow, bag: BagItem, scale: ScaleSettings) -> Iterator[_Problem]:
    """Why the scale is too coarse for the product by its rules, each with the numbers."""
    try:
        rules = rule_set(row.rule_set)
        found = check_scale(scale.plate, rules, row.nominal, bag.tare, row.upper)
    except RuleRefused:
        return  # no rule set, or a nominal quantity outside it, is told elsewhere
    for finding in found:
        if finding.level is Level.REFUSE:
            yield "nominal", f"{finding.words}: the scale does not suit it", str(finding.clause)


def _check_life(row: ProductRow, around: _Around) -> Iterator[_Problem]:
    yield from life_problems(row, around.policy)


def _check_label(row: ProductRow, around: _Around) -> Iterator[_Problem]:
    if around.settings is not None:
        yield from label_problems(row, around.component_rows, around.settings.label)


def _check_qa(row: ProductRow, _around: _Around) -> Iterator[_Problem]:
    yield from qa_problems(row)


_CHECKS: tuple[Callable[[ProductRow, _Around], Iterator[_Problem]], ...] = (
    _check_gtin,
    _check_bag,
    _check_recipe,
    _check_limits,
    _check_scale,
    _check_life,
    _check_label,
    _check_qa,
)
