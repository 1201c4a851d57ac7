"""The short form of the campaign: ten cuts, and the control that must lose."""

import pytest

from tests.campaigns import power_cut


@pytest.mark.system("gcc")
def test_a_power_cut_loses_nothing_and_the_control_does() -> None:
    assert power_cut.run(full=False) == 0
