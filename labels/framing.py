"""Sets a framed label: each fact into its frame, as large as it may be, or refused."""

from labels.errors import LabelError
from labels.frames import Fact, Frame, Framed, FrameDesign, Part
from labels.layout import (
    Box,
    Ink,
    PlacedText,
    Word,
    break_code,
    set_line,
    steps_down,
    words_of,
    wrap,
)
from labels.parts import slab
from labels.parts.slab import SlabSizes
from labels.sheet import Plan, Sheet
from labels.symbol import Symbol
from labels.typeface import Face, type_of

HEADING_X = 1.3  # x-height of a heading, mm
HEADING_GAP = 1.5  # below a heading, mm
LINE_GAP = 0.55  # between lines, in cap heights
STEP = 0.1  # of cap heights tried, mm
SLAB_WORDS, SLAB_PADDING = 0.34, 0.26  # of the height of a slab
PLATE_PADDING = 2.0  # left and right on a plate, mm
HRI_CAP = 2.2  # words below a linear bar code, mm
HRI_GAP = 0.8  # mm
BETWEEN_ELEMENTS = 2.4  # mm
DOTS_OF_DESIGN = 8  # dots/mm module widths are stated for


def arrange_frames(label: Framed, design: FrameDesign, dots_per_mm: int = 8) -> Plan:
    """Place everything a framed label says.

    Raises:
        LabelError: Facts and frames differ, something does not fit, or a glyph is missing.
    """
    label.placeable(design)
    sheet = Sheet(design, dots_per_mm, label.language)
    facts = {fact.name: fact for fact in label.facts}
    symbols = dict(label.symbols)
    for frame in design.frames:
        match frame.part:
            case Part.TEXT:
                _set_text(sheet, frame, facts[frame.fact].text, frame.box)
            case Part.FACT:
                _set_fact(sheet, frame, facts[frame.fact])
            case Part.PLATE:
                _set_plate(sheet, frame, facts[frame.fact].text)
            case Part.SLAB:
                _set_slab(sheet, frame, facts[frame.fact])
            case Part.LINEAR:
                _set_linear(sheet, frame, symbols[frame.fact])
            case Part.MATRIX:
                _set_matrix(sheet, frame, symbols[frame.fact])
    return sheet.plan(label.title)


def _set_fact(sheet: Sheet, frame: Frame, fact: Fact) -> None:
    size = HEADING_X / type_of(Face.NARROW).x_height
    cap = type_of(Face.NARROW).cap_height * size
    at = (frame.box.x, frame.box.y + cap)
    sheet.put(fact.heading, Face.NARROW, size, at, f"{fact.heading} heading")
    used = cap + HEADING_GAP
    rest = Box(frame.box.x, frame.box.y + used, frame.box.width, frame.box.height - used)
    _set_text(sheet, frame, fact.text, rest)


def _set_text(sheet: Sheet, frame: Frame, text: str, box: Box) -> None:
    lines, cap = _fit(frame, text, box)
    size = cap / type_of(frame.face).cap_height
    baseline = box.y + cap
    for line in lines:
        sheet.texts += set_line(line, box.x, baseline, size, frame.fact)
        baseline += cap * (1 + LINE_GAP)


def _fit(frame: Frame, text: str, box: Box) -> tuple[list[list[Word]], float]:
    """Return the text in lines and its cap height, the greatest that fits the box."""
    face = type_of(frame.face)
    face.check(text, frame.fact.capitalize())
    for cap in steps_down(frame.cap, frame.least, STEP):
        size = cap / face.cap_height
        lines = _lines(frame, text, box.width, size)
        if lines is None or len(lines) > frame.lines:
            continue
        if len(lines) * cap + (len(lines) - 1) * cap * LINE_GAP <= box.height:
            return lines, cap
    raise LabelError(
        frame.fact.capitalize(),
        f"{text[:60]!r} does not fit {frame.lines} line(s) in {box.width:.0f} x {box.height:.1f} "
        f"mm with capitals of {frame.least} mm; shorten it",
    )


def _lines(frame: Frame, text: str, width: float, size: float) -> list[list[Word]] | None:
    if frame.face is Face.CODE and " " not in text:
        return [words_of(line, frame.face) for line in break_code(text, frame.face, width, size)]
    return wrap(words_of(text, frame.face), width, size)


def _set_plate(sheet: Sheet, frame: Frame, text: str) -> None:
    box = frame.box
    left, top = sheet.on_dots(box.x), sheet.on_dots(box.y)
    sheet.plates.append(Box(left, top, sheet.on_dots(box.width), sheet.on_dots(box.height)))
    inner = Box(box.x + PLATE_PADDING, box.y, box.width - 2 * PLATE_PADDING, box.height)
    lines, cap = _fit(frame, text, inner)
    face = type_of(frame.face)
    size = cap / face.cap_height
    block = cap * (len(lines) + LINE_GAP * (len(lines) - 1))
    baseline = box.y + (box.height - block) / 2 + cap
    for line in lines:
        words = " ".join(span.text for word in line for span in word)
        x = box.x + (box.width - face.width(words) * size) / 2
        placed = PlacedText(words, frame.face, size, x, baseline, frame.fact, Ink.WHITE)
        sheet.texts.append(placed)
        baseline += cap * (1 + LINE_GAP)


def _set_slab(sheet: Sheet, frame: Frame, fact: Fact) -> None:
    high = frame.box.height
    sizes = SlabSizes(high * SLAB_WORDS, frame.cap, frame.least, high * SLAB_PADDING)
    slab.place(sheet, frame.box, fact.heading, (fact.text,), sizes, frame.fact.capitalize())


def _module(sheet: Sheet, frame: Frame, symbol: Symbol, needed: int, room: float) -> int:
    """Return the widest module in dots with which `needed` modules fit in `room` mm."""
    widths = [dots * sheet.dots_per_mm // DOTS_OF_DESIGN for dots in frame.module_dots]
    for dots in widths:
        if needed * dots <= room * sheet.dots_per_mm:
            return dots
    raise LabelError(
        "Bar code",
        f"{symbol.hri}: {needed} modules, quiet zones counted; allowed in {room:g} mm: "
        f"{int(room * sheet.dots_per_mm) // widths[-1]}. Use shorter codes",
    )


def _set_linear(sheet: Sheet, frame: Frame, symbol: Symbol) -> None:
    box, dots = frame.box, sheet.dots_per_mm
    module = _module(sheet, frame, symbol, symbol.width_with_quiet_zones, box.width)
    wide = symbol.width_with_quiet_zones * module
    left = round(box.x * dots + (box.width * dots - wide) / 2) + symbol.quiet[0] * module
    top = round(box.y * dots)
    height = int((box.height - HRI_CAP - HRI_GAP) * dots)
    sheet.put_symbol(symbol, (left, top), module, height)
    size = HRI_CAP / type_of(Face.CODE).cap_height
    x, baseline = left / dots, (top + height) / dots + HRI_GAP + HRI_CAP
    for element in symbol.elements:
        text = f"({element.ai}){element.value}"
        placed = sheet.put(text, Face.CODE, size, (x, baseline), "Bar code in words")
        x += placed.width + BETWEEN_ELEMENTS


def _set_matrix(sheet: Sheet, frame: Frame, symbol: Symbol) -> None:
    box, dots = frame.box, sheet.dots_per_mm
    needed = symbol.width_with_quiet_zones
    module = _module(sheet, frame, symbol, needed, min(box.width, box.height))
    quiet = symbol.quiet[0] * module
    left = round(box.right * dots) - needed * module + quiet
    sheet.put_symbol(symbol, (left, round(box.y * dots) + quiet), module)
