"""The bar code for the till, EAN-13 or UPC-A, at the foot, its digits below as ISO/IEC 15420 shows.

GS1 General Specifications 5.2: modules of 0.264 to 0.660 mm (from memory), quiet zones of 11 and 7
modules (EAN-13) or 9 and 9 (UPC-A).
"""

from labels.content import PackLabel
from labels.errors import LabelError
from labels.linear import ean_13, retail
from labels.parts.bar_codes import DOTS_OF_DESIGN
from labels.sheet import PackSheet
from labels.symbol import Symbol
from labels.typeface import Face, type_of

DIGIT_CAP = 2.5  # mm
DIGIT_GAP = 0.5  # between bars and digits, mm
DIGIT_MODULES = 7
GUARD, CENTRE = 3, 5  # modules of the outer guards and of the centre one
FACE = Face.TEXT


def height(sheet: PackSheet) -> float:
    """Return what the bar code takes with its digits, mm; 0 where the design has none."""
    bars = sheet.design.till_bars
    return bars + DIGIT_GAP + DIGIT_CAP if bars else 0.0


def place(sheet: PackSheet, label: PackLabel) -> None:
    """Place the bar code so that its digits end at the lower margin.

    Raises:
        LabelError: The GTIN is none for a till.
    """
    if not sheet.design.till_bars:
        return
    weighed = label.catch_weight
    symbol = ean_13(weighed.number) if weighed else retail(label.gtin)
    dots = sheet.dots_per_mm
    module = sheet.design.till_dots * dots // DOTS_OF_DESIGN
    left = max(round(sheet.left * dots), symbol.quiet[0] * module)
    top = round((sheet.page.height - sheet.design.bottom_margin - height(sheet)) * dots)
    bars = round(sheet.design.till_bars * dots)
    if bars / dots < DIGIT_CAP:
        raise LabelError("Till bar code", f"bars of {sheet.design.till_bars} mm; make them higher")
    sheet.put_symbol(symbol, (left, top), module, bars)
    _place_digits(sheet, symbol, left / dots, (top + bars) / dots, module / dots)


def _place_digits(sheet: PackSheet, symbol: Symbol, x: float, y: float, module: float) -> None:
    """Set each digit below its own seven modules, the first (of UPC-A, the last too) outside."""
    digits = symbol.hri.replace(" ", "")
    outside_right = len(digits) == 12
    cells = [GUARD + DIGIT_MODULES * place for place in range(6)]
    cells += [GUARD + 6 * DIGIT_MODULES + CENTRE + DIGIT_MODULES * place for place in range(6)]
    if outside_right:
        cells[0], cells[-1] = -DIGIT_MODULES - 1, len(symbol.modules) + 1
    else:
        cells.insert(0, -DIGIT_MODULES - 1)
    size = DIGIT_CAP / type_of(FACE).cap_height
    baseline = y + DIGIT_GAP + DIGIT_CAP
    for digit, cell in zip(digits, cells, strict=True):
        middle = x + (cell + DIGIT_MODULES / 2) * module
        at = (middle - type_of(FACE).width(digit) * size / 2, baseline)
        sheet.put(digit, FACE, size, at, "Till digits")
