"""The use-by date: a black slab with the words, joined to a framed slot with the day in words.

Regulation (EU) No 1169/2011 Annex X 2: the words 'use by', then the date itself, uncoded.
"""

from labels.content import PackLabel
from labels.dates import date_in_words
from labels.errors import LabelError
from labels.layout import Box, Ink
from labels.sheet import Sheet
from labels.typeface import Face, type_of

WORDS_CAP = 3.0  # cap height of the words on the slab, mm
SLAB_PADDING = 2.2  # left and right of the words, mm
SLOT_PADDING = 2.5  # left and right of the day, mm
FRAME = 0.375  # mm
FACE = Face.STRONG


def place(sheet: Sheet, label: PackLabel, y: float) -> None:
    """Place slab and slot in the row that begins at `y` mm.

    Raises:
        LabelError: Words and day do not fit on one line with letters of the least height.
    """
    face, design = type_of(FACE), sheet.design
    words, day = label.use_by_words, date_in_words(label.use_by, sheet.language)
    words_size = WORDS_CAP / face.cap_height
    slab = sheet.on_dots(face.width(words) * words_size + 2 * SLAB_PADDING)
    room = sheet.width - slab - 2 * SLOT_PADDING
    cap = min(design.use_by_cap, room / face.width(day) * face.cap_height)
    if cap < design.use_by_cap_least:
        raise LabelError(
            "Use-by words",
            f"{words!r} and {day!r} do not fit on one line with capitals of "
            f"{design.use_by_cap_least} mm; shorten the words",
        )
    top, height = sheet.on_dots(y), sheet.on_dots(design.use_by_row)
    width, frame = sheet.on_dots(sheet.width), sheet.on_dots(FRAME)
    sheet.plates += [
        Box(sheet.left, top, slab, height),
        Box(sheet.left, top, width, frame),
        Box(sheet.left, top + height - frame, width, frame),
        Box(sheet.left + width - frame, top, frame, height),
    ]
    middle = top + height / 2
    at = (sheet.left + SLAB_PADDING, middle + WORDS_CAP / 2)
    sheet.put(words, FACE, words_size, at, "Use-by words", Ink.WHITE)
    at = (sheet.left + slab + SLOT_PADDING, middle + cap / 2)
    sheet.put(day, FACE, cap / face.cap_height, at, "Use-by date")
