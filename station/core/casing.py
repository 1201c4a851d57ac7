"""From bags to a case, from cases to a pallet: what their entries must say.

The record looks at every bag again when it takes the entry; here only what a person can put right
at once is refused.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from station.core.mass import Mass
from station.core.shipping import Case, Pallet, ShippingError, spans_of


@dataclass(frozen=True, slots=True)
class CasedBag:
    """One bag as a case takes it.

    Args:
        serial: as printed.
        product, version, name, gtin: what it is.
        run: id of its run.
        blend_lot, use_by: as printed.
        micrograms: exact net.
    """

    serial: str
    product: str
    version: int
    name: str
    gtin: str
    run: str
    blend_lot: str
    use_by: date
    micrograms: int


def fill_case(
    sscc: str, bags: Sequence[CasedBag], case_gtin: str = "", date_words: str = "Use by"
) -> Case:
    """Return the case that some bags make.

    Args:
        sscc: 18 digits of its own.
        bags: what is put into it.
        case_gtin: article number of the case; only a full one carries it.
        date_words: words of the date on its label.

    Raises:
        ShippingError: no bag, one twice, or bags of two products or two blend lots.
    """
    if not bags:
        raise ShippingError("scan the bags of the case first")
    first, seen = bags[0], set[str]()
    for bag in bags:
        if bag.serial in seen:
            raise ShippingError(f"bag {bag.serial} was scanned twice")
        seen.add(bag.serial)
        if (bag.product, bag.version) != (first.product, first.version):
            raise ShippingError(
                f"bag {bag.serial} is {bag.name} v{bag.version}, the case {first.name} "
                f"v{first.version}: one product in a case"
            )
        if (bag.blend_lot, bag.use_by) != (first.blend_lot, first.use_by):
            raise ShippingError(
                f"bag {bag.serial} is of blend lot {bag.blend_lot}, the case of "
                f"{first.blend_lot}: close this case and begin another"
            )
    return Case(
        sscc=sscc,
        product=first.product,
        version=first.version,
        name=first.name,
        gtin=first.gtin,
        case_gtin=case_gtin,
        blend_lot=first.blend_lot,
        use_by=first.use_by,
        spans=spans_of(seen),
        bags=len(bags),
        micrograms=sum(bag.micrograms for bag in bags),
        date_words=date_words,
    )


def first_case(bags: Sequence[CasedBag], full: int) -> tuple[CasedBag, ...]:
    """Return the bags of the next case out of loose ones in the order of packing.

    It ends where the blend lot changes, so that the next case begins with the new one.

    Args:
        bags: loose bags of one product.
        full: bags of a full case.
    """
    alike = bags[:1]
    for bag in bags[1:full]:
        if (bag.blend_lot, bag.use_by) != (bags[0].blend_lot, bags[0].use_by):
            break
        alike = (*alike, bag)
    return tuple(alike)


def stack_pallet(sscc: str, cases: Sequence[Case], gross: Mass) -> Pallet:
    """Return the pallet that some cases make.

    Its label counts cases where all carry one article number of their own, and bags otherwise.

    Args:
        sscc: 18 digits of its own.
        cases: what stands on it.
        gross: what it weighs as it stands.

    Raises:
        ShippingError: no case, one twice, or cases of two products, or of dates that mean two
            things.
    """
    if not cases:
        raise ShippingError("scan the cases of the pallet first")
    first, seen = cases[0], set[str]()
    for case in cases:
        if case.sscc in seen:
            raise ShippingError(f"case {case.sscc} was scanned twice")
        seen.add(case.sscc)
        if case.product != first.product:
            raise ShippingError(
                f"case {case.sscc} is {case.name}, the pallet {first.name}: one product on a pallet"
            )
        if case.date_words != first.date_words:  # its one date cannot mean both
            case_is, pallet_is = (f"{one.name}, {one.date_words}" for one in (case, first))
            raise ShippingError(
                f"case {case.sscc} is {case_is}, the pallet {pallet_is}: one product on a pallet"
            )
    alike = {case.case_gtin for case in cases} == {first.case_gtin} and first.case_gtin
    return Pallet(
        sscc=sscc,
        product=first.product,
        name=first.name,
        gtin=first.case_gtin if alike else first.gtin,
        count=len(cases) if alike else sum(case.bags for case in cases),
        blend_lots=tuple(dict.fromkeys(case.blend_lot for case in cases)),
        use_by=min(case.use_by for case in cases),
        cases=tuple(case.sscc for case in cases),
        gross=gross,
        date_words=first.date_words,
    )
