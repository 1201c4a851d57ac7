"""Tables of the tolerable shortage of one pack by nominal quantity, clause by clause."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from station.core.mass import Unit
from station.core.metrology.clause import Clause
from station.core.metrology.exact import EXACT, round_up, trimmed

_HUNDRED = Decimal(100)


@dataclass(frozen=True, slots=True)
class Band:
    """One row: nominal quantities above ``above`` up to and including ``up_to``.

    Args:
        above: lower end, itself outside unless ``from_included``; in the table's unit.
        up_to: upper end; ``None`` means without end.
        percent: shortage as per cent of the nominal quantity, or ``None``.
        fixed: shortage as a mass in the table's unit, or ``None``; exactly one of the two is set.
        clause: where the row comes from.
        from_included: the lower end belongs to the row.
        up_to_included: the upper end belongs to the row.
    """

    above: Decimal
    up_to: Decimal | None
    percent: Decimal | None
    fixed: Decimal | None
    clause: Clause
    from_included: bool = False
    up_to_included: bool = True

    def __post_init__(self) -> None:
        if (self.percent is None) is (self.fixed is None):
            raise ValueError(f"a band needs either a percentage or a mass: {self!r}")

    def covers(self, nominal: Decimal) -> bool:
        """Tell whether the row holds for this nominal quantity, in the table's unit."""
        lower = nominal >= self.above if self.from_included else nominal > self.above
        if self.up_to is None:
            return lower
        return lower and (nominal <= self.up_to if self.up_to_included else nominal < self.up_to)

    def unrounded(self, nominal: Decimal) -> Decimal:
        """Shortage before the table's rounding, in the table's unit, exact."""
        if self.percent is not None:
            return EXACT.divide(EXACT.multiply(nominal, self.percent), _HUNDRED)
        assert self.fixed is not None
        return self.fixed


@dataclass(frozen=True, slots=True)
class Rounding:
    """Round the shortage up to ``step`` for nominal quantities up to and including ``up_to``."""

    up_to: Decimal | None
    step: Decimal


@dataclass(frozen=True, slots=True)
class ToleranceTable:
    """A whole table in one unit.

    Args:
        unit: unit of every figure in the table.
        units: units of declared quantities the table serves.
        bands: rows in rising order.
        roundings: first one that reaches the nominal quantity counts; none means unrounded.
    """

    unit: Unit
    units: frozenset[Unit]
    bands: tuple[Band, ...]
    roundings: tuple[Rounding, ...] = ()

    def band(self, nominal: Decimal) -> Band | None:
        """Row that covers a nominal quantity in the table's unit, or ``None``."""
        return next((band for band in self.bands if band.covers(nominal)), None)

    def shortage(self, nominal: Decimal) -> Decimal | None:
        """Tolerable shortage in the table's unit, exact; ``None`` where no row reaches."""
        band = self.band(nominal)
        if band is None:
            return None
        raw = band.unrounded(nominal)
        for rounding in self.roundings:
            if rounding.up_to is None or nominal <= rounding.up_to:
                return trimmed(round_up(raw, rounding.step))
        return trimmed(raw)
