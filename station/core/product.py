"""What is packed: components, bag items, recipes and versions of a product.

A run freezes one version of a product; nothing here changes while it is packed.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from station.core.mass import Mass
from station.core.product_label import USUAL, ProductLabel


class ProductError(ValueError):
    """A product that cannot be packed; the message names the part, its value, what is allowed."""


class PackMode(StrEnum):
    """How a bag meets the scale."""

    FILL = "fill"
    """Open bag, topped up on the scale; a label only once it is in the window."""
    CHECK = "check"
    """Sealed bag, weighed once; below the window it is a reject."""


@dataclass(frozen=True, slots=True)
class Component:
    """One cut ingredient of a blend.

    Args:
        code: short code, unique in the packhouse.
        name: the ingredient's name as the label gives it.
        allergen: whether the label must emphasise it.
        max_age_days: latest day of packing after harvest, or None for no limit of its own.
        stains: it colours what comes after it, as red cabbage does.
        smells: it is tasted in what comes after it, as onion is.
    """

    code: str
    name: str
    allergen: bool = False
    max_age_days: int | None = None
    stains: bool = False
    smells: bool = False


@dataclass(frozen=True, slots=True)
class BagItem:
    """A kind of empty bag and its tare.

    Args:
        code: article code of the bag.
        name: what a person calls it.
        tare: mean mass of the empty bag with what stays on it (clip, label).
        basis: where the tare comes from, in words: how many bags, when, which film lot.
    """

    code: str
    name: str
    tare: Mass
    basis: str

    def __post_init__(self) -> None:
        if self.tare.amount <= 0:
            raise ProductError(f"bag {self.code}: tare {self.tare} must be above zero")


@dataclass(frozen=True, slots=True)
class Share:
    """The share of one component in a recipe, in percent of the net quantity.

    Args:
        component: which.
        percent: the share aimed at.
        least, most: bounds of a well mixed bag; None where the recipe gives none.
    """

    component: Component
    percent: Decimal
    least: Decimal | None = None
    most: Decimal | None = None

    def __post_init__(self) -> None:
        if not self.percent.is_finite() or not 0 < self.percent <= 100:
            raise ProductError(
                f"share of {self.component.code}: {self.percent} % must be above 0 and at most 100"
            )
        bounds = (self.low, self.high)
        if not all(one.is_finite() for one in bounds) or not (
            0 <= self.low <= self.percent <= self.high <= 100
        ):
            raise ProductError(
                f"share of {self.component.code}: {self.low} to {self.high} % must enclose "
                f"{self.percent} % and lie within 0 to 100"
            )

    @property
    def low(self) -> Decimal:
        """The least share a bag may have."""
        return self.percent if self.least is None else self.least

    @property
    def high(self) -> Decimal:
        """The greatest share a bag may have."""
        return self.percent if self.most is None else self.most


@dataclass(frozen=True, slots=True)
class Product:
    """One version of a product, complete enough to pack.

    Args:
        code: article code; with ``version`` it names this record for ever.
        version: whole number from 1, raised at each change.
        name: name of the food as the label gives it.
        gtin: 13 or 14 digits.
        market: whose label rules hold (``EU``, ``GB``, ...).
        rule_set: id of the net-quantity rules (``eu-76-211``, ...).
        nominal: the declared net quantity.
        floor, target, upper: the line's own limits, in the unit of ``nominal``.
        bag: the bag item and its tare.
        mode: fill or check.
        recipe: components and shares, heaviest first; shares add up to 100 %.
        life_days: days from the pack day (day 0) to the use-by date.
        atmosphere: the gas in the bag, in the packhouse's words; the life depends on it.
        storage: storage words of the label.
        use_by_words: ``Use by`` or ``Best before``.
        label: how its label is set, and in which languages.
        life_approved_by: id of the person who approved a life outside the shelf-life policy; empty
            where it is within.
        effective_from, effective_until: first and last production day of this version, where bound.
        approved_by: id of the person who approved the recipe; empty where nobody is named.
    """

    code: str
    version: int
    name: str
    gtin: str
    market: str
    rule_set: str
    nominal: Mass
    floor: Mass
    target: Mass
    upper: Mass
    bag: BagItem
    mode: PackMode
    recipe: tuple[Share, ...]
    life_days: int
    atmosphere: str
    storage: str
    use_by_words: str = "Use by"
    label: ProductLabel = USUAL
    life_approved_by: str = ""
    effective_from: date | None = None
    effective_until: date | None = None
    approved_by: str = ""

    def __post_init__(self) -> None:
        named = f"product {self.code} version {self.version}"
        if self.version < 1:
            raise ProductError(f"{named}: version must be a whole number from 1")
        if self.life_days < 1:
            raise ProductError(f"{named}: life of {self.life_days} days must be at least 1")
        if self.nominal.amount <= 0:
            raise ProductError(f"{named}: nominal quantity {self.nominal} must be above zero")
        if self.bag.tare >= self.nominal:
            raise ProductError(
                f"{named}: tare {self.bag.tare} of bag {self.bag.code} must be below the nominal "
                f"quantity {self.nominal}"
            )
        for word, mass in (("floor", self.floor), ("target", self.target), ("upper", self.upper)):
            if mass.unit is not self.nominal.unit:
                raise ProductError(
                    f"{named}: {word} {mass} must be in {self.nominal.unit}, the unit of the "
                    "nominal quantity"
                )
        if not self.floor <= self.target < self.upper:
            raise ProductError(
                f"{named}: floor {self.floor}, target {self.target} and upper limit {self.upper} "
                "must rise in this order"
            )
        if not self.recipe:
            raise ProductError(f"{named}: the recipe has no component")
        # As fractions: a decimal sum is rounded to the digits of whoever happens to call.
        if sum(Fraction(share.percent) for share in self.recipe) != 100:
            total = sum((share.percent for share in self.recipe), Decimal(0))
            raise ProductError(f"{named}: the shares add up to {total} %, they must give 100 %")
        codes = [share.component.code for share in self.recipe]
        if len(set(codes)) != len(codes):
            raise ProductError(f"{named}: a component stands twice in the recipe")

    def check_effective(self, day: date) -> None:
        """Refuse a production day on which this version does not hold.

        Raises:
            ProductError: names the version's days.
        """
        first, last = self.effective_from, self.effective_until
        if (first is not None and day < first) or (last is not None and day > last):
            raise ProductError(
                f"product {self.code} version {self.version} holds from {first or 'any day'} to "
                f"{last or 'any day'}, not on {day}: choose the version that holds"
            )

    @property
    def components(self) -> tuple[Component, ...]:
        """The components, heaviest share first (ties in the order given)."""
        ordered = sorted(self.recipe, key=lambda share: share.percent, reverse=True)
        return tuple(share.component for share in ordered)
