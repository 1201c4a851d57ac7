"""The overprint of a specimen or copy: in outline across the words, clear of the bar codes.

A specimen is approved before a run and never sold, a copy is of a label that was issued; the bar
codes of both must still be read back.
"""

import math

from labels.content import OVERPRINTS, PackLabel
from labels.layout import Ink
from labels.sheet import PackSheet
from labels.typeface import Face, type_of

ANGLE = 9.0  # degrees
SHARE = 0.96  # of the width between the margins
BELOW = 0.1  # free paper left of the word and below it, in em


def place(sheet: PackSheet, label: PackLabel) -> None:
    """Overprint a label whose copy mark is one of `OVERPRINTS`."""
    if label.copy_mark not in OVERPRINTS:
        return
    face = type_of(Face.STRONG)
    slope = math.radians(ANGLE)
    design = sheet.design
    width = sheet.width - (design.column + design.column_gap if design.column else 0.0)
    length = face.width(label.copy_mark)
    beyond = (sheet.left + width) * sheet.dots_per_mm
    below = [
        symbol.y_dots / sheet.dots_per_mm for symbol in sheet.symbols if symbol.x_dots < beyond
    ]
    foot = design.height - design.bottom_margin - design.quantity_row
    lowest = min(below, default=foot)
    high = length * math.sin(slope) + face.cap_height * math.cos(slope) + BELOW
    size = min(width * SHARE / (length * math.cos(slope)), (lowest - design.top_margin) / high)
    at = (sheet.left + size * BELOW, lowest - size * BELOW)
    sheet.put(label.copy_mark, Face.STRONG, size, at, "Specimen", Ink.OUTLINE, ANGLE)
