"""Text fits its box, or says that it does not."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QFontMetricsF

from station.screens.theme import Face
from station.screens.widgets.lettering import fit

WORDS = st.lists(st.text("abcdefghijkmnopXYZ", min_size=1, max_size=12), min_size=1, max_size=12)


@given(WORDS, st.integers(60, 900), st.integers(0, 200))
def test_no_word_is_lost_and_whole_means_inside(
    qapp: object, words: list[str], width: int, height: int
) -> None:
    text = " ".join(words)
    fitted = fit(text, Face.VERB, 40, width, height)
    assert " ".join(fitted.lines) == text
    assert fitted.cap <= 40
    metrics = QFontMetricsF(fitted.font)
    inside = all(metrics.horizontalAdvance(line) <= width for line in fitted.lines)
    if fitted.whole:
        assert inside
        assert fitted.height <= max(height, 40)


def test_as_large_as_asked_where_there_is_room(qapp: object) -> None:
    assert fit("SEAL", Face.VERB, 40, 1000).cap == 40


def test_wraps_rather_than_becoming_small(qapp: object) -> None:
    one = fit("set the scale back", Face.VERB, 40, 1000, 200)
    two = fit("set the scale back", Face.VERB, 40, one.width * 0.6, 200)
    assert len(one.lines) == 1
    assert len(two.lines) == 2
    assert two.cap == 40


@pytest.mark.parametrize("least", [0.5, 1.0])
def test_says_when_it_does_not_fit(qapp: object, least: float) -> None:
    assert not fit("unbreakable", Face.VERB, 40, 20, least=least).whole
