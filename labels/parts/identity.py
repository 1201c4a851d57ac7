"""Lot and serial in words, and the mark of a reprint."""

import re
from itertools import product

from labels.content import PackLabel
from labels.errors import LabelError
from labels.layout import Box, Ink, break_code
from labels.sheet import PackSheet
from labels.typeface import Face, type_of

TITLE_X = 1.3  # x-height of 'Lot' and 'Serial', mm
CODE_GAP = 0.9  # between two lines of a code, mm
CODE_LINES = 2
BETWEEN = 1.3  # between lot and serial where they stand one below the other, mm
MARK_PADDING = 0.8  # left and right of the mark of a reprint on its plate, mm
MARK_SHRINKS = 0.85  # how much that mark may shrink before it stands without its word
REPRINT = re.compile("R[0-9]+", re.ASCII)


def place(sheet: PackSheet, label: PackLabel, x: float, tops: tuple[float, float]) -> None:
    """Place lot and serial, each from its own height down, from `x` mm to the right margin."""
    entries = ((sheet.words.lot, label.blend_lot), (sheet.words.serial, label.serial))
    for number, (title, code) in enumerate(entries):
        mark = label.copy_mark if number else ""
        _place_entry(sheet, title, code, mark, (x, tops[number]))


def place_below(sheet: PackSheet, label: PackLabel, x: float, y: float) -> float:
    """Place serial below lot from `y` mm down; return where they end."""
    y = _place_entry(sheet, sheet.words.lot, label.blend_lot, "", (x, y)) + BETWEEN
    return _place_entry(sheet, sheet.words.serial, label.serial, label.copy_mark, (x, y))


def _place_entry(
    sheet: PackSheet, title: str, code: str, mark: str, at: tuple[float, float]
) -> float:
    """Place a title, its code below, and a copy mark beside the title; return where it ends."""
    x, y = at
    size = max(TITLE_X, sheet.least_x) / type_of(Face.NARROW).x_height
    cap = type_of(Face.NARROW).cap_height * size
    baseline = y + cap
    placed = sheet.put(title, Face.NARROW, size, (x, baseline), title)
    if REPRINT.fullmatch(mark):
        _place_copy_mark(sheet, mark, placed.x + placed.width + 1.2, baseline, cap)
    lines, code_cap = _fit_code(sheet, title, code, sheet.right - x)
    for line in lines:
        baseline += code_cap + CODE_GAP
        code_size = code_cap / type_of(Face.CODE).cap_height
        sheet.put(line, Face.CODE, code_size, (x, baseline), f"{title} in words")
    return baseline


def _fit_code(sheet: PackSheet, title: str, code: str, width: float) -> tuple[list[str], float]:
    """Return a code in lines and its cap height, mm."""
    face = type_of(Face.CODE)
    face.check(code, title)
    caps = sheet.design.code_caps
    # In the narrow column a smaller code on one line is easier to read than a parted one.
    tries = product((1, CODE_LINES), caps) if sheet.design.column else product((CODE_LINES,), caps)
    for count, cap in tries:
        lines = break_code(code, Face.CODE, width, cap / face.cap_height)
        if len(lines) <= count:
            return lines, cap
    raise LabelError(
        title,
        f"{code!r} does not fit on {CODE_LINES} lines of {width:.1f} mm with capitals of "
        f"{sheet.design.code_caps[-1]} mm; use a shorter code",
    )


def _place_copy_mark(sheet: PackSheet, mark: str, x: float, baseline: float, cap: float) -> None:
    """Set the mark of a reprint in white on a black plate, alone where its word is too long."""
    face = type_of(Face.STRONG)
    full, room = cap / face.cap_height, sheet.right - x - 2 * MARK_PADDING
    text, size = mark, full
    for text in (f"{sheet.words.copy} {mark}", mark):
        size = min(full, room / face.width(text))
        if size >= full * MARK_SHRINKS:
            break
    at = (x + MARK_PADDING, baseline)
    placed = sheet.put(text, Face.STRONG, size, at, "Copy mark", Ink.WHITE)
    sheet.plates.append(
        Box(
            sheet.on_dots(x),
            sheet.on_dots(baseline - cap - 0.5),
            sheet.on_dots(placed.width + 2 * MARK_PADDING),
            sheet.on_dots(cap + 1.0),
        )
    )
