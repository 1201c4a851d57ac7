"""The short form of the campaign: three seconds of noise at 115 200 baud."""

from tests.campaigns.scale_flood import SHORT_S, flood


def test_flood_costs_little_and_is_told() -> None:
    said: list[str] = []
    assert flood(SHORT_S, said.append) == []
    assert len(said) == 1
