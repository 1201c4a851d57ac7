"""Boxes and fitted text on a label, in millimetres from its upper left corner, y downwards.

Text is fitted by stated steps only: it wraps, it shrinks to a stated least height, and then it is
refused. Nothing is ever cut or left out.
"""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum

from labels.typeface import Face, type_of

SLACK = 1e-9  # mm; sums of binary fractions are off by less


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle, mm."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """The x of the right edge, mm."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """The y of the lower edge, mm."""
        return self.y + self.height

    def contains(self, other: "Box") -> bool:
        """Tell whether the other box lies within this one, edges included."""
        return (
            other.x >= self.x - SLACK
            and other.y >= self.y - SLACK
            and other.right <= self.right + SLACK
            and other.bottom <= self.bottom + SLACK
        )

    def overlaps(self, other: "Box") -> bool:
        """Tell whether the two boxes share an area; touching edges do not count."""
        return (
            min(self.right, other.right) - max(self.x, other.x) > SLACK
            and min(self.bottom, other.bottom) - max(self.y, other.y) > SLACK
        )


class Ink(Enum):
    """How a text is printed."""

    BLACK = "black"
    WHITE = "white on a black plate"
    OUTLINE = "outline only, over other text"


@dataclass(frozen=True, slots=True)
class Span:
    """Characters in one face."""

    text: str
    face: Face


Word = tuple[Span, ...]  # spans that stay together on a line


@dataclass(frozen=True, slots=True)
class PlacedText:
    """One text on the label.

    Attributes:
        text: The characters.
        face: The face they are set in.
        size: Size of the em, mm.
        x: Left end, mm.
        baseline: Baseline, mm from the upper edge.
        role: What the text is, for messages and tests.
        ink: How it is printed.
        angle: Turn about its left end, degrees, against the clock.
    """

    text: str
    face: Face
    size: float
    x: float
    baseline: float
    role: str
    ink: Ink = Ink.BLACK
    angle: float = 0.0

    @property
    def width(self) -> float:
        """Advance width, mm."""
        return type_of(self.face).width(self.text) * self.size

    @property
    def box(self) -> Box:
        """The ink of an upright text: from its lowest to its highest glyph, mm."""
        spans = [type_of(self.face).extent(character) for character in self.text]
        low = min(span[0] for span in spans) * self.size
        high = max(span[1] for span in spans) * self.size
        return Box(self.x, self.baseline - high, self.width, high - low)


def width_of(spans: Iterable[Span], size: float) -> float:
    """Return the width of spans set one after another at an em of `size` mm, mm."""
    return sum(type_of(span.face).width(span.text) for span in spans) * size


def words_of(text: str, face: Face) -> list[Word]:
    """Return a text as words that may be parted at its blanks."""
    return [(Span(part, face),) for part in text.split()]


def wrap(words: Sequence[Word], width: float, size: float) -> list[list[Word]] | None:
    """Part words into lines no wider than `width` mm, or None if one word is wider.

    A line is filled before the next begins; one blank of the following word's face parts words.
    """
    lines: list[list[Word]] = []
    used = math.inf
    for word in words:
        own = width_of(word, size)
        if own > width:
            return None
        gap = type_of(word[0].face).width(" ") * size
        if used + gap + own > width:
            lines.append([word])
            used = own
        else:
            lines[-1].append(word)
            used += gap + own
    return lines


def set_line(
    line: Sequence[Word], x: float, baseline: float, size: float, role: str
) -> list[PlacedText]:
    """Place one line of words, neighbours of one face joined into one text."""
    runs: list[Span] = []
    for number, word in enumerate(line):
        for part, span in enumerate(word):
            blank = " " if number and not part else ""
            if runs and runs[-1].face is span.face:
                runs[-1] = Span(runs[-1].text + blank + span.text, span.face)
            else:
                runs.append(Span(blank + span.text, span.face))
    placed = []
    for run in runs:
        text = run.text.lstrip(" ")
        indent = type_of(run.face).width(run.text[: len(run.text) - len(text)]) * size
        if text:
            placed.append(PlacedText(text, run.face, size, x + indent, baseline, role))
        x += width_of((run,), size)
    return placed


def break_code(code: str, face: Face, width: float, size: float) -> list[str]:
    """Part a code into lines no wider than `width` mm, after punctuation where that helps."""
    lines = []
    rest = code
    while width_of((Span(rest, face),), size) > width:
        fits = next(
            count
            for count in range(len(rest) - 1, 0, -1)
            if count == 1 or width_of((Span(rest[:count], face),), size) <= width
        )
        after = max((place + 1 for place in range(fits) if rest[place] in "-./"), default=0)
        cut = after if after > fits // 2 else fits
        lines.append(rest[:cut])
        rest = rest[cut:]
    return [*lines, rest]


def steps_down(largest: float, smallest: float, step: float) -> list[float]:
    """Return sizes from largest to smallest, both included."""
    count = round((largest - smallest) / step)
    return [*(largest - step * number for number in range(count)), smallest]
