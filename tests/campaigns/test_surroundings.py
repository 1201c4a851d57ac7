"""The short form of the campaign: each part once."""

from tests.campaigns import surroundings


def test_nothing_around_a_station_loses_a_bag() -> None:
    assert surroundings.run(full=False) == 0
