"""The short form of the campaign: one clock of each kind through the whole chain."""

from pathlib import Path

import pytest

from tests.campaigns.clock import SHORT, go_through


@pytest.mark.parametrize("case", SHORT, ids=lambda case: case.name)
def test_a_clock_that_does_not_go_right_is_found_and_moves_no_date(case, tmp_path: Path) -> None:
    assert go_through(case, tmp_path) == []
