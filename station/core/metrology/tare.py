"""Tare: a study of empty bags, when its mean may stand for every bag, and when it is stale.

Rule for a mean tare: Brazil, Portaria Inmetro 248/2008: mean of 25; below 5 % of the nominal
quantity whatever its scatter, above it only if s <= 0.25 T, else each pack's own tare. OIML R 87
Annex B (from memory) and DE FPackV 2020 Anlage 3 no.5 b use 10 % instead of 5 %; the stricter 5 %
is the default.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from station.core.mass import Mass, MassError, Unit
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import decimal_of, root_of
from station.core.metrology.rule_set import Limits

_BAND = 4  # standard deviations


class TareUse(StrEnum):
    """How a tare may be taken off."""

    MEAN_SMALL = "mean tare: small against the nominal quantity"
    MEAN_STEADY = "mean tare: bags scatter little"
    EACH_PACK = "each pack's own tare"


@dataclass(frozen=True, slots=True)
class TareRule:
    """Thresholds for a mean tare.

    Args:
        least_bags: bags a study needs.
        small_share: share of the nominal quantity below which scatter does not matter.
        steady_share_of_t: largest s as a share of T otherwise.
        most_age: age at which a study is stale.
        packs_between_checks: an empty bag is weighed again after this many packs.
    """

    least_bags: int = 25
    small_share: Decimal = Decimal("0.05")
    steady_share_of_t: Decimal = Decimal("0.25")
    most_age: timedelta = timedelta(days=90)
    packs_between_checks: int = 1000


@dataclass(frozen=True, slots=True)
class TareStudy:
    """Empty bags of one bag item and one film lot.

    Args:
        bag_item: what the bag is.
        film_lot: lot of the film.
        includes: what was weighed with the bag, for example clip and label.
        at: when it was made.
        tares: mass of each empty bag, all in one unit; at least two.
    """

    bag_item: str
    film_lot: str
    includes: tuple[str, ...]
    at: datetime
    tares: tuple[Mass, ...]

    def __post_init__(self) -> None:
        if len(self.tares) < 2:
            raise ValueError("a tare study needs at least two empty bags")
        units = {tare.unit for tare in self.tares}
        if len(units) > 1:
            raise MassError(f"a tare study needs one unit, not {', '.join(sorted(units))}")
        if any(tare.amount <= 0 for tare in self.tares):
            raise MassError("an empty bag weighs more than nothing: weigh it again")

    @property
    def n(self) -> int:
        """Bags weighed."""
        return len(self.tares)

    @property
    def mean(self) -> Fraction:
        """Exact mean, in the unit of the tares."""
        return sum((Fraction(tare.amount) for tare in self.tares), Fraction(0)) / self.n

    @property
    def variance(self) -> Fraction:
        """Exact variance, divisor n - 1."""
        mean = self.mean
        return sum(((Fraction(tare.amount) - mean) ** 2 for tare in self.tares), Fraction(0)) / (
            self.n - 1
        )

    def mean_tare(self, interval: Mass) -> Mass:
        """Mean rounded up to the scale interval: a net is never overstated by rounding."""
        steps = -((-self.mean) // Fraction(interval.in_unit(self._unit).amount))
        return Mass(interval.in_unit(self._unit).amount * int(steps), self._unit)

    def shown(self) -> str:
        """Mean, standard deviation and number, for the record."""
        mean, spread = decimal_of(self.mean, 3), root_of(self.variance, 3)
        return f"mean {mean} {self._unit}, s {spread} {self._unit}, {self.n} bags"

    @property
    def _unit(self) -> Unit:
        return self.tares[0].unit


def tare_use(study: TareStudy, limits: Limits, rule: TareRule | None = None) -> TareUse:
    """Decide exactly whether the mean of a study may stand for every bag.

    Raises:
        RuleRefused: too few bags were weighed.
    """
    rule = rule or TareRule()
    if study.n < rule.least_bags:
        raise RuleRefused(
            f"{study.n} empty bags are too few for a mean tare: weigh {rule.least_bags}"
        )
    grams = Fraction(study.tares[0].unit.grams)
    if study.mean * grams < Fraction(rule.small_share) * Fraction(limits.nominal.grams):
        return TareUse.MEAN_SMALL
    most = Fraction(rule.steady_share_of_t) * Fraction(limits.tolerable.grams)
    if study.variance * grams * grams <= most * most:
        return TareUse.MEAN_STEADY
    return TareUse.EACH_PACK


def plausible(tare: Mass, study: TareStudy, interval: Mass) -> bool:
    """Tell whether one empty bag fits its study: within 4 s of the mean, or one scale interval."""
    distance = abs(Fraction(tare.grams) - study.mean * Fraction(study.tares[0].unit.grams))
    grams = Fraction(study.tares[0].unit.grams)
    band_squared = _BAND * _BAND * study.variance * grams * grams
    return distance <= Fraction(interval.grams) or distance * distance <= band_squared


def stale_reason(
    study: TareStudy,
    bag_item: str,
    film_lot: str,
    now: datetime,
    rule: TareRule | None = None,
) -> str | None:
    """Say why a study may not be used now, or ``None`` when it may."""
    rule = rule or TareRule()
    if study.bag_item != bag_item:
        return f"the tare was studied on {study.bag_item}, the run uses {bag_item}: study its bags"
    if study.film_lot != film_lot:
        return f"the film lot changed from {study.film_lot} to {film_lot}: weigh its empty bags"
    age = now - study.at
    if age > rule.most_age:
        return f"the tare study is {age.days} days old, at most {rule.most_age.days} are allowed"
    if age < timedelta(0):
        return "the tare study lies in the future: check the clock"
    return None


def empty_bag_due(
    film_lot: str,
    checked_film_lot: str | None,
    packs_since: int,
    rule: TareRule | None = None,
) -> str | None:
    """Say why an empty bag must be weighed now, or ``None``.

    Args:
        film_lot: film lot in use.
        checked_film_lot: film lot of the last empty bag weighed in this run, ``None`` before one.
        packs_since: packs since then.
        rule: thresholds.
    """
    rule = rule or TareRule()
    if checked_film_lot is None:
        return "weigh one empty bag before the first pack"
    if checked_film_lot != film_lot:
        return f"new film lot {film_lot}: weigh one empty bag"
    if packs_since >= rule.packs_between_checks:
        return f"{packs_since} packs since the last empty bag: weigh one"
    return None
