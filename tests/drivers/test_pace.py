"""Weights that come too seldom are told by that, not as a silent scale."""

from drivers.pace import Pace

MS = 1_000_000
SELDOM = "weights come 1.0 s apart, and one counts for 0.5 s"


def seen(*at_ms: int) -> list[str]:
    pace = Pace(500 * MS)
    return [pace.see(one * MS) for one in at_ms]


def test_one_a_second_is_told_until_they_come_quickly_for_a_while() -> None:
    said = seen(*range(0, 10_000, 1_000), *range(9_100, 12_000, 100))
    assert said[:4] == [""] * 4
    assert all(SELDOM in words for words in said[4:10])
    assert said[-1] == ""


def test_lots_a_second_apart_are_told() -> None:
    said = seen(*(second * 1_000 + n for second in range(10) for n in (0, 1, 5, 9)))
    assert SELDOM in said[-1]


def test_a_wait_now_and_then_is_no_pace() -> None:
    said = seen(
        *(at for start in range(0, 60_000, 6_000) for at in range(start, start + 4_000, 50))
    )
    assert not any(said)


def test_ten_a_second_are_well() -> None:
    assert not any(seen(*range(0, 60_000, 100)))
