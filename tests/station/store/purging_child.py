"""A purge that is killed at a step. usage: purging_child.py HOME STEP"""

import os
import signal
import sys
from pathlib import Path

from tests.station.store.conftest import World
from tests.station.store.old_runs import YEARS, OldRuns
from tests.station.store.signed_world import DayClock

home, step = Path(sys.argv[1]), sys.argv[2]
world = World(home)
clock = DayClock(world.clock, YEARS)
world.clock.count = 100_000


def told(words: str, *_: int) -> None:
    if words == step:
        os.kill(os.getpid(), signal.SIGKILL)


OldRuns(world, clock).purge(home.with_name("out"), told)
