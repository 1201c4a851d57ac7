"""Lines cut from a stream with their times, marks carried on, and a verdict line by line."""

from drivers.frames.description import Meaning, Poll
from drivers.frames.lesson import carried, lines_of, teach, verdict, with_mark
from drivers.frames.proposal import Mark, MarkedLine
from drivers.wire import Passed

MS = 1_000_000
REST, MOVES = frozenset({Meaning.STABLE}), frozenset({Meaning.MOTION})


def line(flag: str, value: str) -> bytes:
    return f"{flag}={value:>8} g \r\n".encode()


def test_lines_have_the_time_of_their_last_byte() -> None:
    stream = b"x\r\n" + line("q", "1") + line("q", "2") + b"q="
    passed = [
        Passed(0, stream[:10]),
        Passed(50 * MS, b"?w", sent=True),
        Passed(100 * MS, stream[10:25]),
        Passed(250 * MS, stream[25:]),
    ]
    rows = lines_of(passed)
    assert [(row.data, row.at_ns // MS, row.gap_ms) for row in rows] == [
        (line("q", "1"), 100, None),
        (line("q", "2"), 250, 150),
    ]
    assert lines_of([]) == ()


def test_marks_are_carried_over_a_value_of_another_length() -> None:
    marks = (Mark("flag1", 0, 2), Mark("value", 3, 6), Mark("unit", 7, 8), Mark("check", 9, 11))
    moved = carried(marks, b"01,254 g,AB\n", b"01,-1.254 g,AB\n")
    assert [(mark.begin, mark.end) for mark in moved] == [(0, 2), (3, 9), (10, 11), (12, 14)]
    assert carried(marks, b"x" * 12, b"y" * 12) == marks
    assert carried(marks, b"x" * 12, b"y" * 5) == ()
    assert carried(marks[:1], b"x" * 12, b"y" * 13) == ()


def test_new_mark_takes_the_place_of_those_it_touches() -> None:
    marks = with_mark((), "value", 2, 6)
    marks = with_mark(marks, "flag", 0, 1)
    marks = with_mark(marks, "flag", 8, 9)
    assert [mark.name for mark in marks] == ["flag1", "value", "flag2"]
    marks = with_mark(marks, "value", 3, 7)
    assert [(m.name, m.begin) for m in marks] == [("flag1", 0), ("value", 3), ("flag2", 8)]
    assert [mark.name for mark in with_mark(marks, "unit", 6, 9)] == ["flag1", "unit"]


def test_verdict_says_what_a_description_makes_of_each_line() -> None:
    marks = (Mark("flag1", 0, 1), Mark("value", 2, 10), Mark("unit", 11, 13))
    lines = [
        MarkedLine(line("q", "254"), marks, "254", "g", REST),
        MarkedLine(line("w", "12"), marks, "12", "g", MOVES),
    ]
    taught = teach("Plain", lines, b"?w\r")
    assert taught.poll == Poll(b"?w\r", 200)
    assert teach("Plain", lines).poll is None
    heard = [Passed(0, line("q", "7")), Passed(1, line("w", "8")), Passed(2, b"?\r\n")]
    judged = verdict(taught, heard)
    assert [row.what[:3] for row in judged.rows] == ["7 g", "8 g", "lin"]
    assert (judged.read, judged.refused) == (2, 1)
    assert "2 lines are weights, 1 are not" in judged.words
    assert "all 2 lines" in verdict(taught, heard[:2]).words
    assert "none of what was heard" in verdict(taught, heard[2:]).words
