"""Exact sums of a batch while it is packed.

Sums are kept as exact decimals of the deviation from the nominal quantity, so mean and variance
are rationals without rounding: no cancellation can spoil the spread, however large the nominal
quantity is against it (the fault NIST StRD NumAcc3 and NumAcc4 show in one-pass float formulas).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from decimal import Decimal
from fractions import Fraction

from station.core.mass import Mass, MassError
from station.core.metrology.exact import EXACT, root_of
from station.core.metrology.rule_set import Limits


@dataclass(frozen=True, slots=True)
class RunningBatch:
    """Packs of one nominal quantity so far; a new value for each pack added.

    Args:
        limits: limits of the nominal quantity; packs are added in its unit.
        n: number of packs.
        deviation: exact sum of (net - Qn).
        squares: exact sum of (net - Qn)^2.
        t1_count: packs strictly below T1, the T2 packs among them.
        t2_count: packs strictly below T2.
        t1_deviation: the part of ``deviation`` that T1 packs brought.
        t1_squares: the part of ``squares`` that T1 packs brought.
        cubes: sum of (net - Qn)^3, for estimates only.
        fourths: sum of (net - Qn)^4, for estimates only.
    """

    limits: Limits
    n: int = 0
    deviation: Decimal = Decimal(0)
    squares: Decimal = Decimal(0)
    t1_count: int = 0
    t2_count: int = 0
    t1_deviation: Decimal = Decimal(0)
    t1_squares: Decimal = Decimal(0)
    cubes: float = field(default=0.0, compare=False)
    fourths: float = field(default=0.0, compare=False)

    def add(self, net: Mass) -> RunningBatch:
        """Return the batch with one pack more.

        Raises:
            MassError: the pack is in another unit than the nominal quantity.
        """
        return self.add_all((net,))

    def add_all(self, nets: Iterable[Mass]) -> RunningBatch:
        """Return the batch with these packs more; much quicker than one by one."""
        limits = self.limits
        nominal, unit = limits.nominal.amount, limits.nominal.unit
        t1, t2 = limits.t1.amount, limits.t2.amount
        n, total, squares = self.n, self.deviation, self.squares
        below_t1, below_t2 = self.t1_count, self.t2_count
        light, light_squares = self.t1_deviation, self.t1_squares
        cubes, fourths = self.cubes, self.fourths
        for net in nets:
            if net.unit is not unit:
                raise MassError(f"a pack of {net} cannot join a batch declared in {unit}")
            amount = net.amount
            difference = EXACT.subtract(amount, nominal)
            total = EXACT.add(total, difference)
            square = EXACT.multiply(difference, difference)
            squares = EXACT.add(squares, square)
            near = float(square)
            cubes += near * float(difference)
            fourths += near * near
            n += 1
            if amount < t1:
                below_t1 += 1
                below_t2 += amount < t2
                light = EXACT.add(light, difference)
                light_squares = EXACT.add(light_squares, square)
        return replace(
            self,
            n=n,
            deviation=total,
            squares=squares,
            t1_count=below_t1,
            t2_count=below_t2,
            t1_deviation=light,
            t1_squares=light_squares,
            cubes=cubes,
            fourths=fourths,
        )

    @property
    def total(self) -> Mass:
        """Exact sum of the net masses."""
        whole = EXACT.multiply(self.limits.nominal.amount, Decimal(self.n))
        return Mass(EXACT.add(whole, self.deviation), self.limits.nominal.unit)

    @property
    def mean_error(self) -> Fraction:
        """Exact mean of (net - Qn), in the unit of the nominal quantity.

        Raises:
            ValueError: no pack yet.
        """
        if self.n == 0:
            raise ValueError("a batch without packs has no mean")
        return Fraction(self.deviation) / self.n

    @property
    def mean(self) -> Fraction:
        """Exact mean net, in the unit of the nominal quantity."""
        return Fraction(self.limits.nominal.amount) + self.mean_error

    @property
    def variance(self) -> Fraction:
        """Exact variance with divisor n - 1; zero for a single pack."""
        if self.n < 2:
            return Fraction(0)
        total = Fraction(self.deviation)
        return (Fraction(self.squares) - total * total / self.n) / (self.n - 1)

    def spread(self, places: int = 9) -> Decimal:
        """Standard deviation rounded to ``places`` decimals, for showing and for estimates."""
        return root_of(self.variance, places)

    def shape(self) -> tuple[float, float]:
        """Estimate skewness and kurtosis; 0 and 3, those of a normal process, without spread."""
        if self.n < 2 or not self.variance:
            return 0.0, 3.0
        n, mean = self.n, float(self.mean_error)
        first, second = float(self.deviation) / n, float(self.squares) / n
        third, fourth = self.cubes / n, self.fourths / n
        spread2 = float(self.variance) * (n - 1) / n
        third_about = third - 3.0 * mean * second + 3.0 * mean**2 * first - mean**3
        fourth_about = fourth - 4.0 * mean * third + 6.0 * mean**2 * second - 3.0 * mean**4
        return third_about / spread2**1.5, fourth_about / spread2**2

    def mean_needed(self, expected: int) -> Fraction | None:
        """Mean the packs still to come need so that ``expected`` packs average Qn exactly.

        Args:
            expected: size of the finished batch.

        Returns:
            The mean in the unit of the nominal quantity; ``None`` when no pack is left to come.
        """
        rest = expected - self.n
        if rest <= 0:
            return None
        return Fraction(self.limits.nominal.amount) - Fraction(self.deviation) / rest
