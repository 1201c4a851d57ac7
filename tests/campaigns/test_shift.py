"""The short form of the campaign: 24 bags and two changeovers in the real window."""

import pytest

from station.line.state import Verb
from tests.campaigns.shift import RUNS, SHORT, Shift, faults_of, growth_kb, pack_shift

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


def test_a_short_shift_needs_no_touch(qapp, tmp_path) -> None:
    made = pack_shift(SHORT, tmp_path / "home", lambda _: None)
    assert faults_of(made, SHORT) == []
    assert made.touches == 0
    assert len({run.product.code for run in made.runs}) == RUNS
    assert all({Verb.LIFT_BAG, Verb.ORDER_DONE} <= verbs for _, _, verbs in made.shown)


def test_growth_is_that_of_the_later_runs() -> None:
    grows = Shift(memory_kb=[(bag, 1000 + 20 * bag) for bag in range(1, 400)])
    assert growth_kb(grows) == pytest.approx(20)
    level = Shift(memory_kb=[(bag, 50_000 if bag > 130 else 10 * bag) for bag in range(1, 400)])
    assert growth_kb(level) == 0
