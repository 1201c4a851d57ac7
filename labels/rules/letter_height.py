"""Least x-height of the mandatory words of a label, in millimetres, by market.

Sources:
    EU, DE, AT: Regulation (EU) No 1169/2011 Art. 13(2): 1.2 mm. Art. 13(3) allows 0.9 mm where the
        largest surface of the pack is below 80 cm2; not used, since a label does not know its pack.
    GB: the same regulation as assimilated law (from memory).
    CA: 1.6 mm, measured on the lower-case o (C.R.C. c. 870 B.01.001 and SFCR; public text).
    US: 1/16 inch, measured on the lower-case o (21 CFR 101.2(c), from memory).
    OIML, NZ: no figure seen; that of the EU stands in its place (assumed).
"""

from decimal import Decimal

from labels.errors import LabelError, shown

LEAST_X = {
    "EU": Decimal("1.2"),
    "DE": Decimal("1.2"),
    "AT": Decimal("1.2"),
    "GB": Decimal("1.2"),
    "OIML": Decimal("1.2"),
    "NZ": Decimal("1.2"),
    "CA": Decimal("1.6"),
    "US": Decimal("1.6"),  # 1.5875 rounded up
}


def least_letter_height(market: str) -> Decimal:
    """Return the least x-height, mm.

    Raises:
        LabelError: The market is not known.
    """
    if market not in LEAST_X:
        known = ", ".join(sorted(LEAST_X))
        raise LabelError("Market", f"{shown(market)} is not known; allowed: {known}")
    return LEAST_X[market]
