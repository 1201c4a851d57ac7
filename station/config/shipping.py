"""Whom the packhouse ships to and how bags are packed for them, frozen."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from labels.gs1_digits import sscc
from station.config.printer import PrinterSettings
from station.core.shipping import Customer, ShippingError

_DIGITS = 13
"""Of an SSCC without extension, check digit and the mark; the company prefix takes some of them."""


@dataclass(frozen=True, slots=True)
class CaseSpec:
    """How one product is cased.

    Args:
        product: its code.
        bags: of a full case.
        gtin: article number of the case; empty where it has none of its own.
    """

    product: str
    bags: int
    gtin: str = ""


@dataclass(frozen=True, slots=True)
class ShippingSettings:
    """Cases, pallets and customers.

    Args:
        prefix: GS1 company prefix; every SSCC begins with the extension digit and it.
        extension: digit before it; tells stations of one packhouse apart.
        printer: where labels of cases and pallets go; None for the station's own printer.
        cases: by code of the product.
        customers: by code.
    """

    prefix: str
    extension: int
    printer: PrinterSettings | None = None
    cases: Mapping[str, CaseSpec] = field(default_factory=dict)
    customers: Mapping[str, Customer] = field(default_factory=dict)

    def sscc(self, mark: int, count: int) -> str:
        """Return the SSCC of the next unit.

        Three digits mark the incarnation of the record, so that one restored from an older copy
        gives no number again; the rest counts its units.

        Args:
            mark: of the record, 0 to 1023.
            count: units made so far.

        Raises:
            ShippingError: every number of this extension digit is given.
        """
        room = _DIGITS - len(self.prefix)
        if count + 1 >= 10**room:
            raise ShippingError(
                f"all {10**room - 1} numbers of extension digit {self.extension} are given: "
                "choose another one in customers.toml"
            )
        return sscc(self.extension, self.prefix, mark % 1000 * 10**room + count + 1)
