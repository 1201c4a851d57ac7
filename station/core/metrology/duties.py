"""What a rule set asks beside the limits: batch, figure height, records, scale interval."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from station.core.metrology.clause import Clause


@dataclass(frozen=True, slots=True)
class BatchRule:
    """Which packs are judged together.

    Args:
        hourly: at the end of the line the batch is the largest hourly output, of any size.
        most_elsewhere: largest batch when not tested at the end of the line, in packs; ``None``
            where the text sets none.
        words: the rule in one sentence.
        clause: where it comes from.
    """

    hourly: bool
    most_elsewhere: int | None
    words: str
    clause: Clause


class FigureBasis(StrEnum):
    """What the least height of the figures of the net quantity depends on."""

    NOMINAL_G = "nominal quantity in g"
    PANEL_CM2 = "principal display surface in cm2"
    PANEL_IN2 = "principal display panel in square inches"
    CATCH_WEIGHT = "catch weight printed by a scale"
    FRESH_PRODUCE = "fresh fruits or vegetables"
    E_MARK = "the e-mark itself"


@dataclass(frozen=True, slots=True)
class FigureHeight:
    """One row: least figure height, in mm, for a basis above ``above`` up to and with ``up_to``."""

    basis: FigureBasis
    above: Decimal
    up_to: Decimal | None
    height_mm: Decimal
    clause: Clause

    def covers(self, basis: FigureBasis, value: Decimal) -> bool:
        """Tell whether the row is for this basis and value."""
        return (
            basis is self.basis
            and value > self.above
            and (self.up_to is None or value <= self.up_to)
        )


@dataclass(frozen=True, slots=True)
class Retention:
    """How long records of checks are kept.

    Args:
        words: the rule in one sentence.
        least_days: days after packing that always satisfy the rule and the advice of OIML G 21;
            what a store may purge after.
        clause: where it comes from.
    """

    words: str
    least_days: int
    clause: Clause


@dataclass(frozen=True, slots=True)
class IntervalRow:
    """Largest scale interval e for a nominal quantity from ``from_g`` to below ``below_g``."""

    from_g: Decimal
    below_g: Decimal
    most_e_g: Decimal


@dataclass(frozen=True, slots=True)
class IntervalRule:
    """How fine the scale must be.

    Args:
        share_of_t: the error or interval named in ``by_interval`` may be at most this share of T.
        by_interval: the scale interval itself counts (US); else the in-service error counts.
        rows: printed table of largest intervals, empty where the law has none.
        least_intervals: least number of intervals in the nominal quantity, 0 where none is asked.
        clause: where it comes from.
    """

    share_of_t: Fraction
    by_interval: bool
    rows: tuple[IntervalRow, ...]
    least_intervals: int
    clause: Clause
