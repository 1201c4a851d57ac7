"""The short form of the campaign; how fast it is is judged by hand, not in a busy test run."""

from tests.campaigns.sync_backlog import SHORT, faults_of


def test_a_backlog_is_drained_while_bags_are_packed():
    said: list[str] = []
    assert faults_of(SHORT, said.append, judge_speed=False) == []
    assert len(said) == 2
