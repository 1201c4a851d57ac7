"""The code of training is refused for a station and for a line, by name."""

import pytest

from station.core.training import CODE


@pytest.mark.parametrize(("key", "old"), [("code", "A1"), ("line", "L1")])
def test_code_of_training_is_refused(spoil, refusal, key, old):
    spoil("station.toml", f'{key} = "{old}"', f'{key} = "{CODE}"')
    words = refusal()
    assert f"station.{key}" in words
    assert f"'{CODE}' is kept for training" in words
    assert "any other code" in words
