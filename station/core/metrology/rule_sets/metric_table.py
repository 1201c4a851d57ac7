"""The table of tolerable shortages most metric laws share, row by row.

The numbers are those of EU 76/211/EEC Annex I 2.4 (to 10 kg), DE FPackV 2020 s.9, NZ Weights and
Measures Regulations 1999 Sch.7A Table 2, Canada SFCR Sch.4 Table 3 and OIML R 87 Table 1. The two
formulas on either side meet at every boundary, so the row a boundary belongs to does not matter.
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from station.core.mass import Unit
from station.core.metrology.clause import Clause
from station.core.metrology.tolerance import Band, Rounding, ToleranceTable

METRIC_UNITS = frozenset({Unit.MILLIGRAM, Unit.GRAM, Unit.KILOGRAM})
UP_TO_TENTH = (Rounding(None, Decimal("0.1")),)

# above g, up to and including g, per cent of the nominal quantity, grams
_ROWS = (
    ("0", "50", "9", None),
    ("50", "100", None, "4.5"),
    ("100", "200", "4.5", None),
    ("200", "300", None, "9"),
    ("300", "500", "3", None),
    ("500", "1000", None, "15"),
    ("1000", "10000", "1.5", None),
    ("10000", "15000", None, "150"),
    ("15000", None, "1", None),
)


def metric_table(
    clause_of: Callable[[Decimal], Clause],
    roundings: tuple[Rounding, ...],
    *,
    up_to_g: Decimal | None = None,
) -> ToleranceTable:
    """Build the shared table for one law.

    Args:
        clause_of: clause and status of the row that starts above this many grams.
        roundings: how the law rounds the shortage.
        up_to_g: where the law's table ends; ``None`` means it has no end.
    """
    bands = [
        Band(
            Decimal(above),
            _number(up_to),
            _number(percent),
            _number(grams),
            clause_of(Decimal(above)),
        )
        for above, up_to, percent, grams in _ROWS
        if up_to_g is None or Decimal(above) < up_to_g
    ]
    return ToleranceTable(Unit.GRAM, METRIC_UNITS, tuple(bands), roundings)


def _number(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)
