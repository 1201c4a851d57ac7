"""The short form of the campaign: 100,000 bytes of each kind into each parser and the chain."""

from tests.campaigns.scale_bytes import SHORT, faults_of


def test_bytes_that_mean_nothing_do_no_harm() -> None:
    said: list[str] = []
    assert faults_of(SHORT, said.append) == []
    assert len(said) == 14
