"""Bytes of each second are counted; the next second starts anew."""

from drivers.flood import FloodLimit

S = 1_000_000_000


def test_limit_holds_for_each_second() -> None:
    limit = FloodLimit(100)
    assert [limit.is_over(40, n * S // 10) for n in range(4)] == [False, False, True, True]
    assert not limit.is_over(100, S)
    assert limit.is_over(1, 2 * S - 1)
    assert not limit.is_over(0, 2 * S)
