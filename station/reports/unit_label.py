"""What the label of a case or a pallet says, from the entry that keeps it."""

from __future__ import annotations

from labels.frame_designs import CASE_100_BY_100, PALLET_100_BY_150
from labels.frames import Framed
from labels.logistics import WEIGHT_STEP, CaseLabel, PalletLabel, Unit
from labels.pdf import LabelDrawer, drawer_of
from station.core.label_life import copy_mark
from station.core.mass import Unit as MassUnit
from station.core.metrology.exact import plain
from station.core.shipping import Case, Pallet


def unit_label(
    unit: Case | Pallet, packer: str, copy: int = 0, dots_per_mm: int = 8
) -> tuple[LabelDrawer, Framed]:
    """Return the drawer and the content of a unit's label.

    Args:
        unit: as its entry keeps it.
        packer: name and address of the packhouse.
        copy: 0 for the first label; a copy carries its mark.
        dots_per_mm: of the print head; bars are laid on its dots.

    Raises:
        LabelError: a field a label or a bar code cannot carry.
    """
    mark = f", copy {copy_mark(copy)}" if copy else ""
    if isinstance(unit, Case):
        return drawer_of(CASE_100_BY_100, dots_per_mm), _case(unit, packer, mark)
    return drawer_of(PALLET_100_BY_150, dots_per_mm), _pallet(unit, packer, mark)


def _case(case: Case, packer: str, mark: str) -> Framed:
    word = "bag" if case.bags == 1 else "bags"
    unit = Unit(
        sscc=case.sscc,
        content_gtin=case.gtin,
        count=case.bags,
        product=case.name,
        contents=f"{case.bags} {word}, {plain(case.kilograms)} kg{mark}",
        use_by=case.use_by,
        date_words=case.date_words,
        lot=case.blend_lot,
        packer=packer,
    )
    return CaseLabel(unit, case.spans[0][0], case.spans[-1][1]).framed()


def _pallet(pallet: Pallet, packer: str, mark: str) -> Framed:
    word = "case" if len(pallet.cases) == 1 else "cases"
    unit = Unit(
        sscc=pallet.sscc,
        content_gtin=pallet.gtin,
        count=pallet.count,
        product=pallet.name,
        contents=f"{len(pallet.cases)} {word}{mark}",
        use_by=pallet.use_by,
        date_words=pallet.date_words,
        lot=pallet.blend_lots[0] if len(pallet.blend_lots) == 1 else "",
        packer=packer,
    )
    gross = pallet.gross.in_unit(MassUnit.KILOGRAM).amount.quantize(WEIGHT_STEP)
    return PalletLabel(unit, gross).framed()
