"""Two GS1-128 symbols one above the other, with lot and serial in words beside them.

GTIN, use-by date, lot and serial do not fit one linear symbol on a label of 100 mm, so the first
carries (01)(17), the second (10)(21). Modules are whole printer dots: 3 dots of an 8 dots/mm head
(0.375 mm) where they fit, else 2 (0.250 mm). GS1 General Specifications ask for 0.495 mm in general
distribution; narrower modules are for use inside the house and by agreement with a trading partner.
"""

from collections.abc import Sequence
from functools import lru_cache

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.gs1 import Element, check_pairs
from labels.gs1_dates import date_value
from labels.gs1_digits import gtin_14
from labels.linear import gs1_128
from labels.parts import identity
from labels.sheet import PackSheet
from labels.symbol import QUIET_ZONE_MODULES, Symbol
from labels.typeface import Face, type_of

COLUMN_GAP = 0.5  # between the slot of the bar codes and the column beside it, mm
WORDS_GAP = 0.6  # between a bar code and its words, mm
BETWEEN_ELEMENTS = 1.6  # mm
LABELS_KEPT = 4
DOTS_OF_DESIGN = 8  # dots/mm the module widths of a design are stated for

Chosen = Sequence[tuple[Symbol, int]]


def words_height(design: LabelDesign) -> float:
    """Return what the words below one bar code take, mm."""
    return design.hri_cap + WORDS_GAP + design.below_hri


def choose(sheet: PackSheet, label: PackLabel) -> Chosen:
    """Return each symbol of a label with its module width in dots, the widest that fits.

    A long lot may leave no room for the serial in its symbol; the serial then stands in words only.

    Raises:
        LabelError: A symbol does not fit its slot with the narrowest modules.
    """
    if not sheet.design.foot:
        return ()
    *item, lot, serial = elements_of(label)
    return (_widest(sheet, (tuple(item),)), _widest(sheet, ((lot, serial), (lot,))))


@lru_cache(LABELS_KEPT)
def elements_of(label: PackLabel) -> tuple[Element, ...]:
    """Return what the bar codes of a label carry: GTIN, date, measured weight, lot, serial."""
    row = (
        Element("01", gtin_14(label.gtin)),
        Element(label.durability.value, date_value(label.use_by)),
        *([label.catch_weight.element] if label.catch_weight else []),
        Element("10", label.blend_lot),
        Element("21", label.serial),
    )
    check_pairs(row)
    return row


def _widest(sheet: PackSheet, choices: Sequence[tuple[Element, ...]]) -> tuple[Symbol, int]:
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


def place(sheet: PackSheet, label: PackLabel, chosen: Chosen, y: float) -> None:
    """Place the bar codes from `y` mm down to the lower margin, and the words about them."""
    if not chosen:
        return
    design, dots = sheet.design, sheet.dots_per_mm
    most = len(chosen) * (design.tallest_bar + words_height(design))
    y = max(y, design.height - design.bottom_margin - most)
    room = (design.height - design.bottom_margin - y) / len(chosen)
    height = int((room - words_height(design)) * dots)
    left = round(sheet.left * dots)
    for number, (symbol, module) in enumerate(chosen):
        top = round((y + number * room) * dots)
        sheet.put_symbol(symbol, (left, top), module, height)
        _place_interpretation(sheet, symbol, (top + height) / dots)
    if not design.column:
        identity.place(sheet, label, design.symbol_slot + COLUMN_GAP, (y, y + room))


def _place_interpretation(sheet: PackSheet, symbol: Symbol, y: float) -> None:
    """Set what a bar code says below it, element by element (GenSpecs 4.14)."""
    cap = sheet.design.hri_cap
    size = cap / type_of(Face.CODE).cap_height
    x = sheet.left
    for element in symbol.elements:
        text = f"({element.ai}){element.value}"
        placed = sheet.put(text, Face.CODE, size, (x, y + WORDS_GAP + cap), "Bar code in words")
        x += placed.width + BETWEEN_ELEMENTS
