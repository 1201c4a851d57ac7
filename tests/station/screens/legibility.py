"""How large every text of the packer's screen is, and how far it can be read.

`python -m tests.station.screens.legibility` lays the real window out for screens of 10 to 24 inch,
upright too, and prints the height of the capitals of each text in millimetres and in minutes of arc
at 1 m and at 2 m, the smallest over all states, and how far it reaches at 16 minutes. Heights for
reading are those of ISO 9241-303 as it is quoted in public: 16 minutes of arc at least, 20 to 22
preferred; the millimetres wished for are the packhouse's own (common practice).
"""

import math
import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QApplication

from station.screens.bridge import Bridge
from station.screens.packer import NO_BAG_TO_GUIDE, PackerScreen
from station.screens.theme import MM_PER_INCH, Ruler
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state

LEAST_ARCMIN, PREFERRED_ARCMIN = 16.0, 20.0


@dataclass(frozen=True)
class Screen:
    """A screen by its diagonal and its pixels."""

    inches: float
    wide: int
    tall: int

    @property
    def lies(self) -> bool:
        return self.wide > self.tall

    @property
    def px_per_mm(self) -> float:
        return math.hypot(self.wide, self.tall) / (self.inches * MM_PER_INCH)

    def __str__(self) -> str:
        return f"{self.inches:g} in {self.wide}x{self.tall}"


SCREENS = (
    Screen(10.1, 1024, 768),
    Screen(10.1, 1280, 800),
    Screen(12.1, 1024, 768),
    Screen(15.0, 1024, 768),
    Screen(15.6, 1366, 768),
    Screen(15.6, 1920, 1080),
    Screen(17.3, 1920, 1080),
    Screen(18.5, 1366, 768),
    Screen(19.0, 1280, 1024),
    Screen(21.5, 1920, 1080),
    Screen(24.0, 1920, 1080),
    Screen(15.6, 1080, 1920),
    Screen(24.0, 1080, 1920),
)
SMALL_UPRIGHT = Screen(10.1, 800, 1280)
"""Too narrow for the wishes; nothing may be lost on it all the same."""
LEAST_NUMBER_MM = 35.0
WHOLE_FROM_IN, PLAIN_FROM_IN = 18.0, 15.0
"""Lying and wide, every wish is met from the first on; lying, all is read from where it should be
from the second on."""


@dataclass(frozen=True)
class Wish:
    """What is asked of one text: from where it is read, in m, and the height wished for, in mm."""

    metres: float
    mm: float


WISHES = {
    "number": Wish(2.0, 50.0),
    "verb": Wish(2.0, 30.0),
    "product": Wish(2.0, 13.0),
    "use_by": Wish(2.0, 13.0),
    "count": Wish(2.0, 13.0),
    "lots": Wish(1.0, 6.4),
    "use_by_words": Wish(1.0, 6.4),
    "order": Wish(1.0, 6.4),
    "due": Wish(1.0, 6.4),
    "last": Wish(1.0, 6.4),
    "landmark": Wish(1.0, 6.4),
    "reason": Wish(1.0, 6.4),
}


def arcmin(mm: float, metres: float) -> float:
    """The angle that a height is seen under, in minutes of arc."""
    return math.degrees(2 * math.atan(mm / 2 / (metres * 1000))) * 60


def reach(mm: float, minutes: float = LEAST_ARCMIN) -> float:
    """How far a height is seen under an angle, in metres."""
    return mm / 2 / math.tan(math.radians(minutes / 60) / 2) / 1000


@contextmanager
def ruler_of(screen: Screen) -> Iterator[None]:
    """Let every window believe that it stands on a screen."""
    real = Ruler.__dict__["true"]
    Ruler.true = classmethod(lambda _, __: Ruler(screen.px_per_mm))  # type: ignore[method-assign]
    Ruler.room = QSize(screen.wide, screen.tall)
    try:
        yield
    finally:
        Ruler.true, Ruler.room = real, None  # type: ignore[method-assign]


def heights(screen: Screen) -> dict[str, float]:
    """The smallest capitals of each text on a screen, over all states, in mm."""
    found: dict[str, float] = {}
    with ruler_of(screen):
        page = PackerScreen(Bridge(), FakeIntents())
        page.resize(screen.wide, screen.tall)
        page.show()
        for state in every_state().values():
            page.show_state(state)
            QApplication.processEvents()
            for name, px in _texts(page):
                found[name] = min(found.get(name, math.inf), px / screen.px_per_mm)
        page.close()
    return found


def _texts(page: PackerScreen) -> Iterator[tuple[str, float]]:
    state = page.state
    assert state is not None
    if state.run is not None:
        for name in ("product", "use_by", "use_by_words", "lots"):
            yield name, page.header.texts[name].cap
        counts = page.counts.texts
        yield "count", counts["good"].cap
        yield "order", counts["of"].cap
        yield "last", counts["last"].cap
        yield "due", counts["due"].cap
    if state.verb in NO_BAG_TO_GUIDE:
        return
    texts = page.figure.texts
    assert texts is not None
    yield "verb", texts.row.verb.cap
    if page.figure.view.number:
        yield "number", texts.row.number.cap
    if page.figure.view.because:
        yield "reason", texts.sentence.cap
    for _, _, mass in page.strip.labels:
        yield "landmark", mass.cap


def main() -> None:
    application = QApplication.instance() or QApplication([])
    print("mm, minutes of arc at 1 m and 2 m, metres it reaches at 16 minutes; * below its wish")
    for screen in SCREENS:
        print(f"\n{screen}, {screen.px_per_mm:.2f} px/mm")
        for name, mm in heights(screen).items():
            short = "*" if mm < WISHES[name].mm else " "
            print(
                f"  {name:14}{mm:6.1f} mm{short} {arcmin(mm, 1):6.1f}' {arcmin(mm, 2):6.1f}'"
                f" {reach(mm):5.1f} m  (read at {WISHES[name].metres:g} m)"
            )
    application.processEvents()


if __name__ == "__main__":
    main()
