"""Where everything of the gap strip lies, as fractions of its width; no Qt, no verdict.

The slab grows from the left with the product in the bag; the slot is the accepted window. Five
landmarks stand at the same places for every product, and masses between two of them are spread
evenly, so that a packer learns one picture for 200 g and for 2 kg. Places are fractions meant for
pixels and may be floats; every mass stays exact.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum

from station.core.mass import Mass
from station.core.metrology.verdict import Verdict, Window
from station.line.state import LineState, Phase, Shown, Verb

T2_AT, T1_AT, NOMINAL_AT, TARGET_AT, UPPER_AT = 0.10, 0.28, 0.52, 0.62, 0.84
FARTHEST = 0.985
"""A heavier bag is drawn up to here; what is beyond is told by the number."""
COMB_AT_LEAST = 0.015
"""A comb is never drawn narrower than can be seen at 2 m."""
FEWEST_TEETH, MOST_TEETH = 3, 7


class Body(Enum):
    """What the strip is, as one picture; each has a shape of its own."""

    ABSENT = "absent"
    """No reading can be believed, or no run: no slab, no slot is promised."""
    EMPTY = "empty"
    """The pan is empty: only the slot."""
    SHORT = "short"
    """A hollow gap between slab and slot."""
    INSIDE = "inside"
    """The slab's edge is in the slot, not yet accepted."""
    JOINED = "joined"
    """Accepted: slab and slot are one plate."""
    LAP = "lap"
    """The slab laps over the slot's far wall."""


@dataclass(frozen=True, slots=True)
class Span:
    """From ``left`` to ``right``, fractions of the strip's width, left <= right."""

    left: float
    right: float

    @property
    def width(self) -> float:
        """Fraction of the strip's width."""
        return self.right - self.left


NOWHERE = Span(0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Landmark:
    """One of the five fixed masses under the strip."""

    sign: str
    at: float
    mass: str


@dataclass(frozen=True, slots=True)
class GapView:
    """All that the gap strip paints.

    Args:
        body: the picture.
        slab: the solid part.
        gap: the hollow part from the slab's edge to the slot; no width when there is none.
        slot: the accepted window.
        lap: the part beyond the slot's far wall.
        comb: the uncertain part of the slab's edge, as wide as the real spread.
        teeth: 0 for a sharp edge, else 3 to 7.
        reach: from the slab's edge to the target; the number to add stands in it.
        amount: grams to add or take out as text; may be empty.
        word: SEAL on a joined plate while the bag is being labelled.
        landmarks: T2, T1, N, target, upper; none without a run.
    """

    body: Body
    slab: Span = NOWHERE
    gap: Span = NOWHERE
    slot: Span = NOWHERE
    lap: Span = NOWHERE
    comb: Span = NOWHERE
    teeth: int = 0
    reach: Span = NOWHERE
    amount: str = ""
    word: str = ""
    landmarks: tuple[Landmark, ...] = ()


class Course:
    """Maps a net mass to its place: even between two landmarks, never backwards.

    Args:
        window: the frozen window of the run. A landmark out of the usual order (a target below
            the nominal quantity) gives up its fixed place and lies where its mass falls.
    """

    def __init__(self, window: Window) -> None:
        limits = window.limits
        wanted = (
            ("T2", limits.t2, T2_AT),
            ("T1", limits.t1, T1_AT),
            ("N", limits.nominal, NOMINAL_AT),
            ("target", window.target, TARGET_AT),
            ("upper", window.upper, UPPER_AT),
        )
        masses, places = [Decimal(0)], [Decimal(0)]
        fixed: dict[str, float] = {}
        for sign, mass, at in wanted:
            if mass.amount >= masses[-1] and mass.amount > 0:
                masses.append(mass.amount)
                places.append(Decimal(str(at)))
                fixed[sign] = at
        # Beyond the last landmark a gram stays as wide as just before it.
        grams, width = _last_rise(masses, places)
        masses.append(masses[-1] + (1 - places[-1]) * grams / width)
        places.append(Decimal(1))
        self._masses, self._places = masses, places
        self.landmarks = tuple(
            Landmark(sign, fixed.get(sign, self.at(mass)), mass_text(mass))
            for sign, mass, _ in wanted
        )

    def at(self, net: Mass) -> float:
        """Return the place of a net mass in the window's unit, 0 to 1."""
        amount = net.amount
        above = bisect_right(self._masses, amount)
        if above == 0:
            return 0.0
        if above == len(self._masses):
            return 1.0
        low, high = self._masses[above - 1], self._masses[above]
        left, right = self._places[above - 1], self._places[above]
        return float(left + (right - left) * (amount - low) / (high - low))


def _last_rise(masses: list[Decimal], places: list[Decimal]) -> tuple[Decimal, Decimal]:
    """Return mass and width of the last stretch that has both."""
    for last in range(len(masses) - 1, 0, -1):
        if masses[last] > masses[last - 1]:
            return masses[last] - masses[last - 1], places[last] - places[last - 1]
    return Decimal(1), Decimal(1)


def mass_text(mass: Mass) -> str:
    """Return a mass for people: digits without a useless ``.0``, blank, unit."""
    digits = mass.digits
    if "." in digits and mass.amount == mass.amount.to_integral_value():
        digits = format(mass.amount.quantize(Decimal(1)), "f")
    return f"{digits.replace('-', '−')}\u00a0{mass.unit}"


def gap_view(state: LineState) -> GapView:
    """Return the picture of a line's state."""
    run, shown = state.run, state.shown
    if run is None:
        return GapView(Body.ABSENT)
    window = run.window
    course = Course(window)
    marks = course.landmarks
    slot = Span(course.at(window.floor), course.at(window.upper))
    if shown is None or shown.net is None or state.verb in (Verb.NO_READING, Verb.CALL_LEAD):
        return GapView(Body.ABSENT, slot=slot, landmarks=marks)
    if shown.verdict is None and not _accepted(state):
        return GapView(Body.EMPTY, gap=Span(0.0, slot.left), slot=slot, landmarks=marks)
    if _accepted(state):
        word = str(Verb.SEAL) if state.verb is Verb.SEAL else ""
        plate = Span(0.0, slot.right)
        return GapView(Body.JOINED, slab=plate, slot=slot, word=word, landmarks=marks)
    return _open_view(state, shown, shown.net, course, slot, marks)


def _accepted(state: LineState) -> bool:
    """The bag on the pan is recorded as good."""
    if state.phase in (Phase.RECORDING, Phase.LABELLING):
        return state.verb is Verb.SEAL
    judged = state.shown is not None and state.shown.verdict is Verdict.IN_WINDOW
    return state.phase is Phase.LIFT and state.verb is Verb.LIFT_BAG and judged


def _open_view(
    state: LineState,
    shown: Shown,
    net: Mass,
    course: Course,
    slot: Span,
    marks: tuple[Landmark, ...],
) -> GapView:
    """A load that is not accepted: short, inside or over."""
    edge = min(course.at(net), FARTHEST)
    if shown.verdict is Verdict.OVER:
        edge = max(edge, slot.right)
        body, slab, gap, lap = Body.LAP, Span(0.0, slot.right), NOWHERE, Span(slot.right, edge)
    elif shown.verdict is Verdict.IN_WINDOW:
        edge = min(max(edge, slot.left), slot.right)
        body, slab, gap, lap = Body.INSIDE, Span(0.0, edge), NOWHERE, NOWHERE
    else:
        edge = min(edge, slot.left)
        body, slab, gap, lap = Body.SHORT, Span(0.0, edge), Span(edge, slot.left), NOWHERE
    comb, teeth = _comb(shown, net, course)
    target = course.at(state.run.window.target) if state.run is not None else edge
    return GapView(
        body=body,
        slab=slab,
        gap=gap,
        slot=slot,
        lap=lap,
        comb=comb,
        teeth=teeth,
        reach=Span(min(edge, target), max(edge, target)),
        amount=mass_text(state.amount) if state.amount is not None else "",
        landmarks=marks,
    )


def _comb(shown: Shown, net: Mass, course: Course) -> tuple[Span, int]:
    """The spread of the last half second about the newest net; none once it is steady."""
    if shown.steady:
        return NOWHERE, 0
    half = (shown.spread or net * 0) * Decimal("0.5")
    left, right = course.at(net - half), course.at(net + half)
    if right - left < COMB_AT_LEAST:
        middle = min((left + right) / 2, FARTHEST)
        left, right = middle - COMB_AT_LEAST / 2, middle + COMB_AT_LEAST / 2
    left, right = max(left, 0.0), min(right, FARTHEST + COMB_AT_LEAST / 2)
    teeth = min(max(round((right - left) * 60), FEWEST_TEETH), MOST_TEETH)
    return Span(left, right), teeth
