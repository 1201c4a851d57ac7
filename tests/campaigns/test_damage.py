"""The short form of the campaign: ten pages, ten bytes, two tails, an old image, a log away."""

from tests.campaigns import damage


def test_all_damage_is_found_and_named() -> None:
    assert damage.run(full=False) == 0
