"""Words in white on a black slab, joined to a framed slot with what they are about."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from labels.errors import LabelError
from labels.layout import SLACK, Box, Ink, steps_down
from labels.sheet import Sheet
from labels.typeface import Face, type_of
from labels.words import BETWEEN

FRAME = 0.375  # mm
SMALLEST = {1: 0.7, 2: 0.5}  # how much words on one line, and on two, may shrink for the value
STEP = 0.1  # of cap heights tried, mm
SETTINGS_KEPT = 32
FACE = Face.STRONG
LINE_GAP = 0.5  # between two lines of words, in cap heights
RIM = 0.2  # of the slab kept black above and below two lines, mm


@dataclass(frozen=True, slots=True)
class SlabSizes:
    """Sizes of a slab with its slot, mm.

    Attributes:
        words_cap: Cap height of the words on the slab.
        cap: Greatest cap height of the value.
        least: Least cap height of the value.
        padding: Left and right of each.
        words_least: Least cap height of the words.
    """

    words_cap: float
    cap: float
    least: float
    padding: float
    words_least: float = 0.0


@dataclass(frozen=True, slots=True)
class _Setting:
    """Value and words in lines, the words' cap height, the slab's width, the value's cap height."""

    value: str
    lines: tuple[str, ...]
    words_cap: float
    slab: float
    cap: float


def place(
    sheet: Sheet, box: Box, words: str, values: Sequence[str], sizes: SlabSizes, role: str
) -> None:
    """Place slab and slot over the whole box; words too long for one line take two.

    Args:
        sheet: Where to place them.
        box: The whole box.
        words: The words on the slab.
        values: What stands in the slot: ways to write it, the most wanted first.
        sizes: Sizes of both.
        role: What they are, for messages.

    Raises:
        LabelError: They do not fit with letters of the least height.
    """
    face = type_of(FACE)
    chosen = _chosen(box, words, tuple(values), sizes, sheet.dots_per_mm)
    if chosen is None:
        raise LabelError(
            f"{role} words",
            f"{words!r} and {values[-1]!r} do not fit on one line with capitals of {sizes.least} "
            "mm, nor with the words on two; shorten the words",
        )
    left, top = sheet.on_dots(box.x), sheet.on_dots(box.y)
    width, height = sheet.on_dots(box.width), sheet.on_dots(box.height)
    frame = sheet.on_dots(FRAME)
    sheet.plates += [
        Box(left, top, chosen.slab, height),
        Box(left, top, width, frame),
        Box(left, top + height - frame, width, frame),
        Box(left + width - frame, top, frame, height),
    ]
    size = chosen.words_cap / face.cap_height
    baseline = top + (height + chosen.words_cap) / 2
    if len(chosen.lines) > 1:
        above, below = _ink(chosen.lines)
        baseline = top + (height + (above + below) * size) / 2 - below * size
    step = chosen.words_cap * (1 + LINE_GAP)
    for number, line in enumerate(chosen.lines):
        at = (left + sizes.padding, baseline + (number - len(chosen.lines) + 1) * step)
        sheet.put(line, FACE, size, at, f"{role} words", Ink.WHITE)
    at = (left + chosen.slab + sizes.padding, top + (height + chosen.cap) / 2)
    sheet.put(chosen.value, FACE, chosen.cap / face.cap_height, at, f"{role} date")


@lru_cache(SETTINGS_KEPT)
def _chosen(
    box: Box, words: str, values: tuple[str, ...], sizes: SlabSizes, dots_per_mm: int
) -> _Setting | None:
    """Return the first setting that fits; it is the same for every label of a run."""
    fitting = (
        _fit(box, lines, value, sizes, dots_per_mm)
        for value in values
        for lines in ((words,), _two_lines(words))
    )
    return next(filter(None, fitting), None)


def _two_lines(words: str) -> tuple[str, ...]:
    """Return words in two lines: a language each, or parted at the blank nearest the middle."""
    if BETWEEN in words:
        first, second = words.split(BETWEEN, 1)
        return (f"{first} /", second)
    blanks = [place for place, sign in enumerate(words) if sign == " "]
    if not blanks:
        return (words,)
    middle = min(blanks, key=lambda place: abs(2 * place - len(words)))
    return (words[:middle], words[middle + 1 :])


def _ink(lines: tuple[str, ...]) -> tuple[float, float]:
    """Return how far lines reach above and below the last baseline, in em."""
    face = type_of(FACE)
    above = max(face.extent(sign)[1] for sign in lines[0])
    below = -min(face.extent(sign)[0] for sign in lines[-1])
    return above + (len(lines) - 1) * (1 + LINE_GAP) * face.cap_height, below


def _fit(
    box: Box, lines: tuple[str, ...], value: str, sizes: SlabSizes, dots_per_mm: int
) -> _Setting | None:
    face = type_of(FACE)
    largest = sizes.words_cap
    if len(lines) > 1:
        largest = min(largest, (box.height - 2 * RIM) / sum(_ink(lines)) * face.cap_height)
    least = max(sizes.words_least, largest * SMALLEST[len(lines)])
    for words_cap in steps_down(largest, least, STEP) if largest >= least - SLACK else ():
        longest = max(map(face.width, lines)) * words_cap / face.cap_height
        slab = round((longest + 2 * sizes.padding) * dots_per_mm) / dots_per_mm
        room = box.width - slab - 2 * sizes.padding
        cap = min(sizes.cap, room / face.width(value) * face.cap_height)
        if cap >= sizes.least:
            return _Setting(value, lines, words_cap, slab, cap)
    return None
