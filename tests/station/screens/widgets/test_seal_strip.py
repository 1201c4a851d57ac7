"""The row of gates: every word of what is wanting lies in its seal, however many there are."""

import pytest

from station.core.languages import Language
from station.line.state import Seal
from station.screens.theme import LIGHT
from station.screens.tongue import speak
from station.screens.widgets import seal_strip
from station.screens.widgets.lettering import Fitted
from station.screens.widgets.seal_strip import SealStrip

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
GATES = ("STOP", "LINE", "LOTS", "SCALE", "TARE", "ROLL", "FIRST-OFF", "SCAN", "QA")
"""All a station can have, as that of the demo has."""
WANTING = {
    "LINE": "count the bags of the run before: RUN, then CHANGE (F8)",
    "SCALE": "the run begins with a check of the scale: RUN, then CHECKS (F4)",
    "TARE": "weigh one empty bag before the first pack",
    "ROLL": "no label roll is in the printer: RUN, then LABELS (F5)",
    "FIRST-OFF": "the run begins with a first-off: RUN, then LABELS (F5)",
}
SIZES = ((800, 3.2), (1007, 4.0), (1024, 3.84), (1280, 4.0))
"""Width of a window, and pixels of a millimetre there: 10.1 inch upright and lying, with a bench
window beside it, and the smallest screens that lie."""


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize(("wide", "unit"), SIZES)
def test_no_word_of_a_gate_is_cut(
    qtbot, monkeypatch: pytest.MonkeyPatch, wide: int, unit: float, language: Language
) -> None:
    drawn: list[Fitted] = []
    drawer = seal_strip.draw

    def note(painter, text, *rest) -> None:
        drawn.append(text)
        drawer(painter, text, *rest)

    monkeypatch.setattr(seal_strip, "draw", note)
    speak(language)
    strip = SealStrip(LIGHT)
    qtbot.addWidget(strip)
    strip.set_unit(unit)
    strip.resize(round(wide - 14 * unit), round(19 * unit))
    for many in range(len(WANTING) + 1):
        open_ones = tuple(WANTING)[:many]
        strip.set(tuple(Seal(name, WANTING[name] if name in open_ones else "") for name in GATES))
        strip.grab()
        assert len(drawn) == 2 * len(GATES)
        assert not [text.lines for text in drawn if not text.whole], open_ones
        drawn.clear()
