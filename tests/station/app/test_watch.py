"""What is told to whoever waits for a line in vain."""

import pytest

from station.app.watch import Watch
from station.errors import EnvironmentFault
from tests.station.screens.states import every_state


def test_who_waits_in_vain_hears_what_the_line_said_last():
    states, watch = every_state(), Watch()
    first, last = states["bag_on"], states["stopped"]
    watch.state(first)

    def never(_):
        watch.state(last)
        return False

    with pytest.raises(EnvironmentFault) as fault:
        watch.until(never, 0.01)
    assert str(last.verb) in str(fault.value)
    assert str(first.verb) not in str(fault.value)
