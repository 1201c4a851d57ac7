"""The short form of the campaign."""

from tests.campaigns.sync_faults import SHORT, faults_of


def test_nothing_is_lost_or_doubled_by_lost_replies_and_ended_servers():
    said: list[str] = []
    assert faults_of(SHORT, said.append) == []
    assert len(said) == 2
