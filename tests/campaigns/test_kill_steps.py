"""The short form of the campaign: a station killed at five named steps."""

from tests.campaigns import kill_steps


def test_nothing_is_lost_at_a_named_step() -> None:
    assert kill_steps.run(full=False) == 0
