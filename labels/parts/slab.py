"""Words in white on a black slab, joined to a framed slot with what they are about."""

from dataclasses import dataclass

from labels.errors import LabelError
from labels.layout import Box, Ink
from labels.sheet import Sheet
from labels.typeface import Face, type_of

FRAME = 0.375  # mm
SMALLER = (1.0, 0.85, 0.7)  # how much words may shrink to leave the value its least height
FACE = Face.STRONG


@dataclass(frozen=True, slots=True)
class SlabSizes:
    """Sizes of a slab with its slot, mm.

    Attributes:
        words_cap: Cap height of the words on the slab.
        cap: Greatest cap height of the value.
        least: Least cap height of the value.
        padding: Left and right of each.
    """

    words_cap: float
    cap: float
    least: float
    padding: float


def place(sheet: Sheet, box: Box, words: str, value: str, sizes: SlabSizes, role: str) -> None:
    """Place slab and slot over the whole box.

    Raises:
        LabelError: They do not fit on one line with letters of the least height.
    """
    face = type_of(FACE)
    for smaller in SMALLER:
        words_cap = sizes.words_cap * smaller
        words_size = words_cap / face.cap_height
        slab = sheet.on_dots(face.width(words) * words_size + 2 * sizes.padding)
        room = box.width - slab - 2 * sizes.padding
        cap = min(sizes.cap, room / face.width(value) * face.cap_height)
        if cap >= sizes.least:
            break
    else:
        raise LabelError(
            f"{role} words",
            f"{words!r} and {value!r} do not fit on one line with capitals of {sizes.least} mm; "
            "shorten the words",
        )
    left, top = sheet.on_dots(box.x), sheet.on_dots(box.y)
    width, height = sheet.on_dots(box.width), sheet.on_dots(box.height)
    frame = sheet.on_dots(FRAME)
    sheet.plates += [
        Box(left, top, slab, height),
        Box(left, top, width, frame),
        Box(left, top + height - frame, width, frame),
        Box(left + width - frame, top, frame, height),
    ]
    middle = top + height / 2
    at = (left + sizes.padding, middle + words_cap / 2)
    sheet.put(words, FACE, words_size, at, f"{role} words", Ink.WHITE)
    at = (left + slab + sizes.padding, middle + cap / 2)
    sheet.put(value, FACE, cap / face.cap_height, at, f"{role} date")
