"""The plan of a pack label: where each text, plate and bar code goes, before any ink.

From top to bottom: name and net quantity in one field of vision; the use-by date as a black slab
joined to a framed slot; storage, ingredients, input lots and packer as running text; two bar codes
with lot and serial in words beside them, or one matrix symbol in a column beside the running text,
or both. Running text takes what it needs down to its least height; the bar codes take the rest.
Input lots that do not fit go to a second label, whole; what does not fit there is refused.
"""

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.parts import bar_codes, heading, matrix_column, running_text, specimen, till, use_by
from labels.parts.running_text import Which
from labels.sheet import PackSheet, Plan

SECOND_MARK = "2 / 2"


def arrange_pack(
    label: PackLabel, design: LabelDesign, dots_per_mm: int = 8, language: str | None = None
) -> tuple[Plan, ...]:
    """Place everything one pack label says, on a second label too where the input lots need one.

    Fixed words and dates are in the given language, or in that of the label.

    Raises:
        LabelError: A text or bar code does not fit, or a character has no glyph.
    """
    try:
        return (arrange(label, design, dots_per_mm, language),)
    except LabelError as refusal:
        if refusal.title != running_text.TITLE:
            raise
        try:
            first = arrange(label, design, dots_per_mm, language, Which.WITHOUT_LOTS)
            return (first, arrange_second(label, design, dots_per_mm, language))
        except LabelError as again:
            raise LabelError(
                refusal.title, f"{refusal.detail}. A second label does not help: {again.detail}"
            ) from again


def arrange(
    label: PackLabel,
    design: LabelDesign,
    dots_per_mm: int = 8,
    language: str | None = None,
    which: Which = Which.ALL,
) -> Plan:
    """Place everything one label says, or all but the input lots.

    Raises:
        LabelError: A text or bar code does not fit, or a character has no glyph.
    """
    sheet = PackSheet(design, dots_per_mm, language or label.language, label.market)
    y = design.top_margin
    heading.place(sheet, label, y)
    y += design.name_row + design.row_gap
    use_by.place(sheet, label, y)
    _fill(sheet, label, y + design.use_by_row + design.row_gap, which)
    return sheet.plan(f"Pack label {label.serial}")


def arrange_second(
    label: PackLabel, design: LabelDesign, dots_per_mm: int = 8, language: str | None = None
) -> Plan:
    """Place the input lots of a label on a second one, with name, lot, serial and bar codes.

    Raises:
        LabelError: They do not fit.
    """
    sheet = PackSheet(design, dots_per_mm, language or label.language, label.market)
    y = design.top_margin
    heading.place_second(sheet, label, SECOND_MARK, y)
    y += design.name_row + design.row_gap
    _fill(sheet, label, y, Which.LOTS)
    return sheet.plan(f"Pack label {label.serial}, {SECOND_MARK}")


def _fill(sheet: PackSheet, label: PackLabel, y: float, which: Which) -> None:
    """Place running text, column and bar codes from `y` mm to the foot."""
    design = sheet.design
    chosen = bar_codes.choose(sheet, label)
    gap = design.row_gap
    foot = design.height - design.bottom_margin - design.quantity_row
    words = bar_codes.words_height(design)
    rooms = [foot - gap - y - len(chosen) * (bar + words) for bar in design.bars]
    if not chosen:
        taken = till.height(sheet)
        rooms = [foot - y - (taken + gap if taken else 0.0)]
    column_end = matrix_column.place(sheet, label, y, foot if not chosen else rooms[-1] + y)
    till.place(sheet, label)
    width = sheet.width - (design.column + design.column_gap if design.column else 0.0)
    end = running_text.place(sheet, label, y, rooms, width, which)
    bar_codes.place(sheet, label, chosen, max(end, column_end) + gap)
    specimen.place(sheet, label)
