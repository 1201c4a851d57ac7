"""The short form of the campaign: a whole station killed eight times at random."""

from tests.campaigns import kills


def test_nothing_acknowledged_is_lost_by_kills() -> None:
    assert kills.run(full=False) == 0
