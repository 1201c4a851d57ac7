"""Least height of the figures of the declared net quantity, in millimetres, by market.

The height is that of the printed figures themselves, not of the type body.

Sources:
    EU, DE, AT: Directive 76/211/EEC Annex I 3.1; FPackV 2020 s. 38(2); FPVO 1993 s. 11.
    GB: Weights and Measures (Packaged Goods) Regulations 2006 carry the same four steps (from
        memory).
    CA: Safe Food for Canadians Regulations, Schedule 6, by area of the principal display surface.
    US: 21 CFR 101.7(i), by area of the principal display panel (from memory).
    OIML: OIML R 79 carries the four steps of the EU by nominal quantity (from memory).
    NZ: no text seen; the steps of OIML R 79 stand in its place until one is (assumed).
"""

from dataclasses import dataclass
from decimal import Decimal

from labels.errors import LabelError, shown

# Its form is that of U+212E in the typeface, which has the same parts in other typefaces; the
# drawing of 71/316/EEC Annex II, now 2009/34/EC Annex II, was not seen (from memory).
E_MARK = "℮"
E_MARK_MM = Decimal(3)  # Directive 76/211/EEC Annex I 3.3: the sign at least 3 mm high


@dataclass(frozen=True, slots=True)
class HeightTable:
    """One market's table.

    Attributes:
        basis: 'grams' (nominal quantity) or 'panel_cm2' (principal display panel).
        steps: (largest basis value still in this step, least height in mm), rising.
        beyond_mm: Least height above the last step, mm.
        source: Clause the figures were taken from.
        status: 'public text', 'from memory' or 'assumed'.
    """

    basis: str
    steps: tuple[tuple[Decimal, Decimal], ...]
    beyond_mm: Decimal
    source: str
    status: str


def _steps(*pairs: tuple[str, str]) -> tuple[tuple[Decimal, Decimal], ...]:
    return tuple((Decimal(limit), Decimal(height)) for limit, height in pairs)


_BY_QUANTITY = _steps(("50", "2"), ("200", "3"), ("1000", "4"))
_INCH_2 = Decimal("6.4516")  # cm2, exact
_INCH = Decimal("25.4")  # mm, exact

TABLES = {
    "EU": HeightTable("grams", _BY_QUANTITY, Decimal(6), "76/211/EEC Annex I 3.1", "public text"),
    "DE": HeightTable("grams", _BY_QUANTITY, Decimal(6), "FPackV 2020 s. 38(2)", "public text"),
    "AT": HeightTable("grams", _BY_QUANTITY, Decimal(6), "FPVO 1993 s. 11", "public text"),
    "GB": HeightTable("grams", _BY_QUANTITY, Decimal(6), "SI 2006/659", "from memory"),
    "OIML": HeightTable("grams", _BY_QUANTITY, Decimal(6), "OIML R 79", "from memory"),
    "NZ": HeightTable("grams", _BY_QUANTITY, Decimal(6), "none seen; as OIML R 79", "assumed"),
    "CA": HeightTable(
        "panel_cm2",
        _steps(("32", "1.6"), ("258", "3.2"), ("645", "6.4"), ("2580", "9.5")),
        Decimal("12.7"),
        "SFCR Schedule 6",
        "public text",
    ),
    "US": HeightTable(
        "panel_cm2",
        tuple(
            (Decimal(square_inches) * _INCH_2, _INCH * sixteenths / 16)
            for square_inches, sixteenths in ((5, 1), (25, 2), (100, 3), (400, 4))
        ),
        _INCH / 2,
        "21 CFR 101.7(i)",
        "from memory",
    ),
}
MARKETS = tuple(sorted(TABLES))


def least_figure_height(market: str, nominal_grams: Decimal, panel_cm2: Decimal) -> Decimal:
    """Return the least height of the figures of the net quantity, in millimetres.

    Args:
        market: One of `MARKETS`.
        nominal_grams: Nominal quantity, g; a quantity exactly at a limit is in the lower step.
        panel_cm2: Area of the principal display panel of the pack, cm2; used by US and CA.

    Raises:
        LabelError: The market is not known.
    """
    table = TABLES.get(market)
    if table is None:
        raise LabelError("Market", f"{shown(market)} is not known; allowed: {', '.join(MARKETS)}")
    value = {"grams": nominal_grams, "panel_cm2": panel_cm2}[table.basis]
    return next((height for limit, height in table.steps if value <= limit), table.beyond_mm)
