"""The use-by date: a black slab with the words, joined to a framed slot with the day in words.

Regulation (EU) No 1169/2011 Annex X 2: the words 'use by', then the date itself, uncoded.
"""

from labels.content import PackLabel
from labels.dates import dates_for_market
from labels.layout import Box
from labels.parts import slab
from labels.parts.slab import SlabSizes
from labels.sheet import PackSheet
from labels.typeface import type_of


def place(sheet: PackSheet, label: PackLabel, y: float) -> None:
    """Place slab and slot in the row that begins at `y` mm; the weekday stands where it fits.

    Raises:
        LabelError: Words and day do not fit on one line with letters of the least height.
    """
    design, face = sheet.design, type_of(slab.FACE)
    box = Box(sheet.left, y, sheet.width, design.use_by_row)
    sizes = SlabSizes(
        *(design.use_by_words_cap, design.use_by_cap, design.use_by_cap_least),
        design.use_by_padding,
        words_least=sheet.least_x * face.cap_height / face.x_height,
    )
    days = dates_for_market(label.use_by, label.market, sheet.language)
    slab.place(sheet, box, label.use_by_words, days, sizes, "Use-by")
