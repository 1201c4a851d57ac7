"""Two GS1-128 symbols one above the other, with lot and serial in words beside them.

GTIN, use-by date, lot and serial do not fit one linear symbol on a label of 100 mm, so the first
carries (01)(17), the second (10)(21). Modules are whole printer dots: 3 dots of an 8 dots/mm head
(0.375 mm) where they fit, else 2 (0.250 mm). GS1 General Specifications ask for 0.495 mm in general
distribution; narrower modules are for use inside the house and by agreement with a trading partner.
"""

import re
from collections.abc import Sequence

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.gs1 import Element, check_pairs
from labels.gs1_dates import date_value
from labels.gs1_digits import gtin_14
from labels.layout import Box, Ink, break_code
from labels.linear import gs1_128
from labels.sheet import PlacedSymbol, Sheet
from labels.symbol import QUIET_ZONE_MODULES, Symbol
from labels.typeface import Face, type_of

COLUMN_GAP = 0.5  # between the slot of the bar codes and the column beside it, mm
WORDS_GAP = 0.6  # between a bar code and its words, mm
BELOW_WORDS = 0.7  # between those words and what follows, mm
BETWEEN_ELEMENTS = 1.6  # mm
TITLE_X = 1.3  # x-height of 'Lot' and 'Serial', mm
CODE_GAP = 0.9  # between two lines of a code, mm
CODE_LINES = 2
DOTS_OF_DESIGN = 8  # dots/mm the module widths of a design are stated for
REPRINT = re.compile("R[0-9]+", re.ASCII)

Chosen = Sequence[tuple[Symbol, int]]


def words_height(design: LabelDesign) -> float:
    """Return what the words below one bar code take, mm."""
    return design.hri_cap + WORDS_GAP + BELOW_WORDS


def choose(sheet: Sheet, label: PackLabel) -> Chosen:
    """Return each symbol of a label with its module width in dots, the widest that fits.

    A long lot may leave no room for the serial in its symbol; the serial then stands in words only.

    Raises:
        LabelError: A symbol does not fit its slot with the narrowest modules.
    """
    item = (Element("01", gtin_14(label.gtin)), Element("17", date_value(label.use_by)))
    lot, serial = Element("10", label.blend_lot), Element("21", label.serial)
    check_pairs((*item, lot, serial))
    return (_widest(sheet, (item,)), _widest(sheet, ((lot, serial), (lot,))))


def _widest(sheet: Sheet, choices: Sequence[tuple[Element, ...]]) -> tuple[Symbol, int]:
    left = round(sheet.left * sheet.dots_per_mm)
    slot = round(sheet.design.symbol_slot * sheet.dots_per_mm)
    widths = [dots * sheet.dots_per_mm // DOTS_OF_DESIGN for dots in sheet.design.module_dots]
    tried = []
    for elements in choices:
        symbol = gs1_128(elements)
        for dots in widths:
            quiet = QUIET_ZONE_MODULES * dots
            if quiet <= left and left + len(symbol.modules) * dots + quiet <= slot:
                return symbol, dots
        tried.append(f"{symbol.hri}: {symbol.width_with_quiet_zones} modules")
    raise LabelError(
        "Bar code",
        f"{'; '.join(tried)}, quiet zones counted; allowed: "
        f"{QUIET_ZONE_MODULES + (slot - left) // widths[-1]} modules of "
        f"{widths[-1] / sheet.dots_per_mm} mm. Use a shorter code",
    )


def place(sheet: Sheet, label: PackLabel, chosen: Chosen, y: float) -> None:
    """Place the bar codes from `y` mm down to the lower margin, and the words about them."""
    design, dots = sheet.design, sheet.dots_per_mm
    room = (design.height - design.bottom_margin - y) / len(chosen)
    height = int((room - words_height(design)) * dots)
    left = round(sheet.left * dots)
    for number, (symbol, module) in enumerate(chosen):
        top = round((y + number * room) * dots)
        sheet.symbols.append(PlacedSymbol(symbol, left, top, module, height))
        _place_interpretation(sheet, symbol, (top + height) / dots)
    _place_identity(sheet, label, y, room)


def _place_interpretation(sheet: Sheet, symbol: Symbol, y: float) -> None:
    """Set what a bar code says below it, element by element (GenSpecs 4.14)."""
    cap = sheet.design.hri_cap
    size = cap / type_of(Face.CODE).cap_height
    x = sheet.left
    for element in symbol.elements:
        text = f"({element.ai}){element.value}"
        placed = sheet.put(text, Face.CODE, size, (x, y + WORDS_GAP + cap), "Bar code in words")
        x += placed.width + BETWEEN_ELEMENTS


def _place_identity(sheet: Sheet, label: PackLabel, y: float, room: float) -> None:
    """Set the lot beside the first bar code and the serial beside the second."""
    x = sheet.design.symbol_slot + COLUMN_GAP
    size = TITLE_X / type_of(Face.NARROW).x_height
    cap = type_of(Face.NARROW).cap_height * size
    entries = ((sheet.words.lot, label.blend_lot), (sheet.words.serial, label.serial))
    for number, (title, code) in enumerate(entries):
        baseline = y + number * room + cap
        placed = sheet.put(title, Face.NARROW, size, (x, baseline), title)
        if number and REPRINT.fullmatch(label.copy_mark):
            _place_copy_mark(sheet, label, placed.x + placed.width + 1.2, baseline, cap)
        lines, code_cap = _fit_code(sheet, title, code, sheet.right - x)
        for line in lines:
            baseline += code_cap + CODE_GAP
            code_size = code_cap / type_of(Face.CODE).cap_height
            sheet.put(line, Face.CODE, code_size, (x, baseline), f"{title} in words")


def _fit_code(sheet: Sheet, title: str, code: str, width: float) -> tuple[list[str], float]:
    """Return a code in lines and its cap height, mm."""
    face = type_of(Face.CODE)
    face.check(code, title)
    for cap in sheet.design.code_caps:
        lines = break_code(code, Face.CODE, width, cap / face.cap_height)
        if len(lines) <= CODE_LINES:
            return lines, cap
    raise LabelError(
        title,
        f"{code!r} does not fit on {CODE_LINES} lines of {width:.1f} mm with capitals of "
        f"{sheet.design.code_caps[-1]} mm; use a shorter code",
    )


def _place_copy_mark(sheet: Sheet, label: PackLabel, x: float, baseline: float, cap: float) -> None:
    """Set the mark of a reprint in white on a small black plate."""
    padding = 0.8
    face = type_of(Face.STRONG)
    text = f"{sheet.words.copy} {label.copy_mark}"
    size = min(cap / face.cap_height, (sheet.right - x - 2 * padding) / face.width(text))
    at = (x + padding, baseline)
    placed = sheet.put(text, Face.STRONG, size, at, "Copy mark", Ink.WHITE)
    sheet.plates.append(
        Box(
            sheet.on_dots(x),
            sheet.on_dots(baseline - cap - 0.5),
            sheet.on_dots(placed.width + 2 * padding),
            sheet.on_dots(cap + 1.0),
        )
    )
