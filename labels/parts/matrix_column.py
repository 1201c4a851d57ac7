"""A column on the right: one matrix symbol of everything, lot and serial in words below it."""

from labels.content import PackLabel
from labels.errors import LabelError
from labels.matrix import digital_link_qr, gs1_data_matrix
from labels.parts import identity
from labels.parts.bar_codes import DOTS_OF_DESIGN, elements_of
from labels.sheet import PackSheet
from labels.symbol import Symbol

BELOW = 1.3  # between the symbol, its quiet zone counted, and the words, mm


def place(sheet: PackSheet, label: PackLabel, y: float, foot: float) -> float:
    """Place the column from `y` mm down; return where it ends, `y` itself where there is none.

    Raises:
        LabelError: It ends below `foot`, mm, or the symbol is wider than the column with the
            narrowest modules.
    """
    design, dots = sheet.design, sheet.dots_per_mm
    if not design.column:
        return y
    symbol = symbol_of(sheet, label)
    module = _widest(sheet, symbol)
    quiet = symbol.quiet[0] * module
    left = round((sheet.right - design.column) * dots) + quiet
    top = round(y * dots) + quiet
    sheet.put_symbol(symbol, (left, top), module)
    below = (top + len(symbol.rows) * module + quiet) / dots + BELOW
    end = identity.place_below(sheet, label, left / dots, below)
    if end > foot:
        raise LabelError(
            "Lot and serial",
            f"{label.blend_lot!r} and {label.serial!r} in words end {end - foot:.1f} mm below the "
            f"space beside the text of {design.name!r}; use shorter codes or a larger label",
        )
    return end


def symbol_of(sheet: PackSheet, label: PackLabel) -> Symbol:
    """Return the matrix symbol of a label: a Digital Link where the design has a stem for one."""
    row = elements_of(label)
    stem = sheet.design.link_stem
    return digital_link_qr(stem, row) if stem else gs1_data_matrix(row)


def _widest(sheet: PackSheet, symbol: Symbol) -> int:
    room = round(sheet.design.column * sheet.dots_per_mm)
    widths = [dots * sheet.dots_per_mm // DOTS_OF_DESIGN for dots in sheet.design.matrix_dots]
    for dots in widths:
        if symbol.width_with_quiet_zones * dots <= room:
            return dots
    raise LabelError(
        "Bar code",
        f"{symbol.hri}: {symbol.width_with_quiet_zones} modules, quiet zones counted; allowed: "
        f"{room // widths[-1]} modules of {widths[-1] / sheet.dots_per_mm} mm. Use shorter codes",
    )
