"""Labels laid out in fixed frames: cases, pallets, reject tickets.

A design is data: frames in millimetres, each naming the fact it shows and how. A fact without a
frame, a frame outside the paper and two frames that overlap are errors, so nothing is left out and
nothing is printed over.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from labels.errors import LabelError
from labels.layout import Box
from labels.symbol import Symbol
from labels.typeface import Face

EDGE = 1.0  # of the paper, kept free of text, mm


class Part(Enum):
    """How a fact is shown in its frame."""

    TEXT = "text, as large as the frame takes it"
    FACT = "a small heading with the text below it"
    PLATE = "white text on a black plate"
    SLAB = "its heading white on a black slab, the text in a framed slot beside it"
    LINEAR = "a linear bar code with its words below, centred"
    MATRIX = "a matrix symbol, as large as the frame takes it"


@dataclass(frozen=True, slots=True)
class Frame:
    """One frame of a design; lengths in mm.

    Attributes:
        part: How the fact is shown.
        fact: Name of the fact.
        box: Where; the quiet zones of a bar code lie within it.
        cap: Greatest cap height of a text.
        least: Least cap height; a text that needs less is refused.
        lines: Most lines of a text.
        face: Face of a text.
        module_dots: Module widths of a bar code to try, in dots of an 8 dots/mm head, wide first.
    """

    part: Part
    fact: str
    box: Box
    cap: float = 3.0
    least: float = 1.8
    lines: int = 1
    face: Face = Face.STRONG
    module_dots: tuple[int, ...] = (4, 3)


@dataclass(frozen=True, slots=True)
class FrameDesign:
    """A label of fixed frames; lengths in mm.

    Raises:
        LabelError: A frame lies outside the paper, or two overlap.
    """

    name: str
    width: float
    height: float
    frames: tuple[Frame, ...]

    left_margin = EDGE
    right_margin = EDGE

    def __post_init__(self) -> None:
        page = Box(0, 0, self.width, self.height)
        for number, frame in enumerate(self.frames):
            where = f"Label design {self.name}"
            if not page.contains(frame.box):
                raise LabelError(
                    where,
                    f"the frame of {frame.fact!r} ({_box(frame.box)}) lies outside the paper of "
                    f"{self.width:g} x {self.height:g} mm; move it or make it smaller",
                )
            for other in self.frames[:number]:
                if frame.box.overlaps(other.box):
                    raise LabelError(
                        where,
                        f"the frames of {frame.fact!r} ({_box(frame.box)}) and {other.fact!r} "
                        f"({_box(other.box)}) overlap; move one",
                    )

    @property
    def facts(self) -> frozenset[str]:
        """The facts this design has a frame for."""
        return frozenset(frame.fact for frame in self.frames)


def _box(box: Box) -> str:
    return f"x {box.x:g} y {box.y:g}, {box.width:g} x {box.height:g} mm"


@dataclass(frozen=True, slots=True)
class Fact:
    """One text of a framed label with its small heading."""

    name: str
    text: str
    heading: str = ""


@dataclass(frozen=True, slots=True)
class Framed:
    """Everything one framed label says.

    Attributes:
        title: What the label is, such as 'Case label 095...'.
        serial: What it is known by in messages.
        subject: What it is of, in a few words.
        facts: Its texts.
        symbols: Its bar codes by the name of their fact.
        language: Language of fixed words.
    """

    title: str
    serial: str
    subject: str
    facts: tuple[Fact, ...]
    symbols: tuple[tuple[str, Symbol], ...]
    language: str = "en"

    def placeable(self, design: FrameDesign) -> None:
        """Check that facts and frames are the same ones.

        Raises:
            LabelError: A fact has no frame, or a frame no fact.
        """
        names = [*(fact.name for fact in self.facts), *(name for name, _ in self.symbols)]
        missing = sorted(set(names) - design.facts)
        empty = sorted(design.facts - set(names))
        if missing or empty:
            raise LabelError(
                f"Label design {design.name}",
                f"no frame for {_list(missing)}; no fact for {_list(empty)}; choose a design made "
                f"for this label: {self.title}",
            )


def _list(names: Sequence[str]) -> str:
    return ", ".join(map(repr, names)) or "nothing"
