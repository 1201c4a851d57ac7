"""Product name and net quantity, side by side in one field of vision.

Regulation (EU) No 1169/2011 Art. 13(5): name and net quantity in the same field of vision.
"""

import re
from collections.abc import Sequence
from functools import lru_cache

from labels.content import PackLabel
from labels.design import NameStep
from labels.errors import LabelError
from labels.layout import SLACK, Word, set_line, steps_down, words_of, wrap
from labels.rules.figure_height import E_MARK, E_MARK_MM, least_figure_height
from labels.sheet import PackSheet
from labels.typeface import Face, type_of

BETWEEN = 4.0  # between name and net quantity, mm
LINE_GAP, LINE_GAP_CAPS = 1.55, 0.5  # mm, at least these cap heights: baseline to capitals
SECOND_CAP = 3.0  # of the mark of a second label, mm
DESCENT = 1.1  # kept free below the baseline of the row, mm
FACE = Face.STRONG  # of the net quantity
QUANTITY_LEADING = 1.02  # distance of the baselines of its two lines, in em
NAMES_KEPT = 32
EVEN_STEP = 0.5  # mm


def place(sheet: PackSheet, label: PackLabel, y: float) -> None:
    """Place both in the row that begins at `y` mm.

    Raises:
        LabelError: One does not fit with letters and figures of the least height.
    """
    lines, size = net_quantity(sheet, label)
    if sheet.design.quantity_row:
        _place_pair(sheet, label.names, "", size, "Net quantity", y)
        _place_quantity(sheet, lines, size)
    else:
        _place_pair(sheet, label.names, lines[0], size, "Net quantity", y)


def _place_quantity(sheet: PackSheet, lines: Sequence[str], size: float) -> None:
    """Place the net quantity in a row of its own at the foot (21 CFR 101.7(f))."""
    baseline = sheet.page.height - sheet.design.bottom_margin - type_of(FACE).extent("g")[0] * -size
    for line in reversed(lines):
        sheet.put(line, FACE, size, (sheet.left, baseline), "Net quantity")
        baseline -= size * QUANTITY_LEADING


def place_second(sheet: PackSheet, label: PackLabel, mark: str, y: float) -> None:
    """Place the name again, with the mark of a second label where the net quantity stood."""
    size = SECOND_CAP / type_of(FACE).cap_height
    _place_pair(sheet, label.names, mark, size, "Label number", y)


def _place_pair(
    sheet: PackSheet, names: tuple[str, ...], aside: str, size: float, role: str, y: float
) -> None:
    """Place the name on the left and a text of an em of `size` mm on the right."""
    width = type_of(FACE).width(aside) * size
    lines, face, cap = fit_name(sheet.design.name_steps, names, sheet.width - width - BETWEEN)
    row = sheet.design.name_row - DESCENT
    gap = max(LINE_GAP, LINE_GAP_CAPS * cap)
    block = len(lines) * cap + (len(lines) - 1) * gap
    baseline = y + (row - block) / 2 + cap
    figures = y + (row + size * type_of(FACE).cap_height) / 2
    for number, line in enumerate(lines):
        down = baseline + number * (cap + gap)
        sheet.texts += set_line(line, sheet.left, down, cap / type_of(face).cap_height, "Name")
    at = (sheet.right - width, baseline if len(lines) == 1 else figures)
    if aside:
        sheet.put(aside, FACE, size, at, role)


def net_quantity(sheet: PackSheet, label: PackLabel) -> tuple[tuple[str, ...], float]:
    """Return the net quantity in lines and its em, mm: its figures reach the height asked for.

    In a row of its own a quantity in several units may take two lines, parted before the bracket.
    """
    text, face, design = label.quantity_shown, type_of(FACE), sheet.design
    face.check(text, "Net quantity")
    least = least_figure_height(label.market, label.nominal_grams, design.panel_cm2)
    figure = face.height("".join(re.findall("[0-9]", text)))
    sign = float(E_MARK_MM) / face.height(E_MARK) if E_MARK in text else 0.0
    room = sheet.width if design.quantity_row else sheet.width / 2
    head, bracket, rest = text.partition(" (")
    parted = (head, f"({rest}") if bracket and design.quantity_row else (text,)
    wanted = max(max(design.net_figure, float(least)) / figure, sign)
    needed = max(float(least) / figure, sign)
    found = []
    for lines in ((text,), parted):
        most = room / max(map(face.width, lines))
        if len(lines) > 1:
            most = min(most, design.quantity_row / (1 + (len(lines) - 1) * QUANTITY_LEADING))
        found.append((min(wanted, most), lines))
    size, lines = max(found, key=lambda one: one[0])
    if size >= needed - SLACK:
        return lines, size
    raise LabelError(
        "Net quantity",
        f"{text!r} with figures of {least:.1f} mm, as {label.market} asks for, takes more than "
        f"{room:.0f} mm of the width of the label; shorten it or use a larger label",
    )


@lru_cache(NAMES_KEPT)
def fit_name(
    steps: tuple[NameStep, ...], names: tuple[str, ...], room: float
) -> tuple[list[list[Word]], Face, float]:
    """Return the name in lines, its face and its cap height in mm; each language begins a line."""
    for step in steps:
        face = type_of(step.face)
        for name in names:
            face.check(name, "Product name")
        for cap in steps_down(step.largest_cap, step.smallest_cap, 0.1):
            size = cap / face.cap_height
            wrapped = [wrap(words_of(name, step.face), room, size) for name in names]
            lines = [line for part in wrapped if part is not None for line in part]
            if None not in wrapped and len(lines) <= step.lines:
                even = [_evenly(words_of(name, step.face), room, size) for name in names]
                return [line for part in even for line in part], step.face, cap
    last = steps[-1]
    raise LabelError(
        "Product name",
        f"{' / '.join(names)!r} does not fit on {last.lines} lines of {room:.0f} mm with capitals "
        f"of {last.smallest_cap} mm; shorten the name",
    )


def _evenly(words: list[Word], room: float, size: float) -> list[list[Word]]:
    """Return a name in the fewest lines, of lengths as even as that number allows."""
    fewest = wrap(words, room, size)
    assert fewest is not None
    for width in steps_down(room, 0.0, EVEN_STEP):
        lines = wrap(words, width, size)
        if lines is None or len(lines) > len(fewest):
            break
        fewest = lines
    return fewest
