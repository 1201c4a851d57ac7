"""Boxes and fitted text."""

from hypothesis import given
from hypothesis import strategies as st

from labels.layout import (
    Box,
    Span,
    break_code,
    set_line,
    steps_down,
    width_of,
    words_of,
    wrap,
)
from labels.typeface import Face

WORD = st.text("abcdefghijklmnop", min_size=1, max_size=12)


def test_boxes_touching_do_not_overlap() -> None:
    left, right = Box(0, 0, 2, 2), Box(2, 0, 2, 2)
    assert not left.overlaps(right)
    assert left.overlaps(Box(1.9, 1.9, 1, 1))
    assert Box(0, 0, 4, 2).contains(right)
    assert not right.contains(left)


@given(st.lists(WORD, min_size=1, max_size=40), st.floats(30, 120))
def test_wrapping_keeps_every_word_in_order_and_every_line_within(
    words: list[str], width: float
) -> None:
    row = words_of(" ".join(words), Face.NARROW)
    lines = wrap(row, width, 2.5)
    assert lines is not None
    assert [word for line in lines for word in line] == row
    for line in lines:
        placed = set_line(line, 0, 0, 2.5, "Sample")
        assert placed[-1].x + placed[-1].width <= width + 1e-9


def test_a_word_wider_than_the_line_is_not_cut() -> None:
    assert wrap(words_of("incomparable", Face.NARROW), 5, 2.5) is None


def test_one_line_of_one_face_is_one_text() -> None:
    (text,) = set_line(words_of("iceberg and rocket", Face.NARROW), 3, 10, 2.5, "Sample")
    assert (text.text, text.x, text.baseline) == ("iceberg and rocket", 3, 10)


def test_faces_in_a_line_follow_one_another() -> None:
    line = [(Span("Lot ", Face.NARROW), Span("A-1", Face.CODE)), (Span("b", Face.NARROW),)]
    first, second, third = set_line(line, 0, 0, 2.0, "Sample")
    assert (first.text, second.text, third.text) == ("Lot ", "A-1", "b")
    assert abs(second.x - first.width) < 1e-9
    assert third.x > second.x + second.width


@given(st.text("ABCWM0189-./", min_size=1, max_size=20), st.floats(6, 60))
def test_a_broken_code_is_whole_again_when_joined(code: str, width: float) -> None:
    lines = break_code(code, Face.CODE, width, 2.5)
    assert "".join(lines) == code
    assert all(width_of((Span(line, Face.CODE),), 2.5) <= width for line in lines)


def test_steps_down_end_exactly_at_the_least() -> None:
    assert steps_down(1.4, 1.2, 0.1) == [1.4, 1.4 - 0.1, 1.2]
    assert steps_down(1.2, 1.2, 0.1) == [1.2]
