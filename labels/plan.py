"""The plan of one label: where each text, plate and bar code goes, before any ink.

From top to bottom: name and net quantity in one field of vision; the use-by date as a black slab
joined to a framed slot; storage, ingredients, input lots and packer as running text; two bar codes
with lot and serial in words beside them. Running text takes what it needs down to its least
height; the bar codes take the rest.
"""

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.parts import bar_codes, heading, running_text, specimen, use_by
from labels.sheet import Plan, Sheet

ROW_GAP = 1.0  # between rows, mm


def arrange(
    label: PackLabel, design: LabelDesign, dots_per_mm: int = 8, language: str = "en"
) -> Plan:
    """Place everything one label says.

    Raises:
        LabelError: A text or bar code does not fit, or a character has no glyph.
    """
    sheet = Sheet(design, dots_per_mm, language)
    y = design.top_margin
    heading.place(sheet, label, y)
    y += design.name_row + ROW_GAP
    use_by.place(sheet, label, y)
    y += design.use_by_row + ROW_GAP
    chosen = bar_codes.choose(sheet, label)
    foot = design.height - design.bottom_margin - ROW_GAP
    room = [foot - y - len(chosen) * (bar + bar_codes.words_height(design)) for bar in design.bars]
    y = running_text.place(sheet, label, y, room)
    bar_codes.place(sheet, label, chosen, y + ROW_GAP)
    specimen.place(sheet, label)
    return sheet.plan()
