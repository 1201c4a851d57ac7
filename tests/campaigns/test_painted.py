"""What the campaign of the painted number reckons, on figures made by hand."""

import pytest

from station.line.state import Verb
from tests.campaigns.chain.quick_scale import Sent, load_at
from tests.campaigns.painted import Figures, Said, Seen, Wait, gone_at

MS = 1_000_000
SENT = [
    Sent(ms * MS, digits) for ms, digits in ((0, "0"), (20, "0"), (40, "7"), (60, "7"), (80, "9"))
]


def said(read_ms: int, digits: str, amount: str) -> Said:
    return Said(read_ms * MS, (read_ms + 1) * MS, digits, (Verb.ADD, amount))


@pytest.mark.parametrize(
    ("read_ms", "digits", "gone_ms"),
    [(41, "7", 40), (61, "7", 40), (81, "9", 80), (25, "0", 0), (79, "0", 0), (81, "5", None)],
)
def test_a_number_went_onto_the_wire_with_the_first_frame_that_said_it(read_ms, digits, gone_ms):
    assert gone_at(SENT, said(read_ms, digits, "")) == (None if gone_ms is None else gone_ms * MS)


def test_only_new_numbers_count_and_a_later_painting_serves_those_passed_over():
    seen = Seen()
    seen.states = [
        said(2, "0", "10"),
        said(21, "0", "10"),  # nothing new
        said(41, "7", "3"),
        said(61, "7", "3"),
        said(81, "9", "1"),
    ]
    seen.painted = [(50 * MS, 21 * MS), (95 * MS, 81 * MS)]
    assert seen.waits(SENT, 0) == [Wait(1, 2, 55), Wait(1, 2, 15)]
    assert seen.waits(SENT, 60 * MS) == [Wait(1, 2, 15)]


def test_of_a_hundred_numbers_the_slowest_but_one_is_told():
    figures = Figures([Wait(1, 2, n) for n in range(200)], [12.0], 5, 0.25)
    assert figures.p99 == 198
    assert "200 numbers painted after p50 100.0 ms, p99 198.0 ms, most 199.0 ms" in figures.words()


def test_a_bag_is_empty_pan_then_filling_then_rest():
    assert load_at(0.1, 258) == ("0", False)
    assert [load_at(at_s, 258) for at_s in (0.4, 0.9)] == [("52", True), ("224", True)]
    assert load_at(1.2, 258) == ("258", False)
    assert load_at(1.8, 258) == ("0", False)
