"""The short form of the campaign: failing writes, syncs and openings, sparsely."""

import pytest

from tests.campaigns import io_errors


@pytest.mark.system("gcc")
def test_no_failing_call_loses_a_bag() -> None:
    assert io_errors.run(full=False) == 0
