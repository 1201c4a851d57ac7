"""The overprint of a specimen: in outline across the words, clear of the bar codes.

A specimen is approved before a run and never sold; its bar codes must still be read back.
"""

import math

from labels.content import PackLabel
from labels.layout import Ink
from labels.sheet import PackSheet
from labels.typeface import Face, type_of

ANGLE = 9.0  # degrees
SHARE = 0.96  # of the width between the margins


def place(sheet: PackSheet, label: PackLabel) -> None:
    """Overprint a label whose copy mark says SPECIMEN."""
    if label.copy_mark != "SPECIMEN":
        return
    face = type_of(Face.STRONG)
    slope = math.radians(ANGLE)
    design = sheet.design
    width = sheet.width - (design.column + design.column_gap if design.column else 0.0)
    size = width * SHARE / (face.width(label.copy_mark) * math.cos(slope))
    beyond = (sheet.left + width) * sheet.dots_per_mm
    below = [
        symbol.y_dots / sheet.dots_per_mm for symbol in sheet.symbols if symbol.x_dots < beyond
    ]
    foot = design.height - design.bottom_margin - design.quantity_row
    lowest = min(below, default=foot)
    at = (sheet.left + size * 0.1, lowest - size * 0.1)
    sheet.put(label.copy_mark, Face.STRONG, size, at, "Specimen", Ink.OUTLINE, ANGLE)
