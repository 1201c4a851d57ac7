"""The station's process is killed while it packs, again and again, on one record."""

import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

from station.core.pack import LabelState
from station.store import queries
from station.store.verify import verify

CHILD = Path(__file__).with_name("packing_child.py")
KILLS = 15


def pack_and_kill(nursery, chance):
    """Return the serials told as packed and as labelled before the process was killed."""
    told = {"pack": [], "label": []}
    nursery.stdin.write("one more\n")
    nursery.stdin.flush()
    _, process = nursery.stdout.readline().split()
    for _ in range(chance.randint(1, 60)):
        what, serial = nursery.stdout.readline().split()
        told[what].append(serial)
    deadline = time.monotonic() + chance.random() * 0.003
    while time.monotonic() < deadline:
        pass
    os.kill(int(process), signal.SIGKILL)
    while True:  # what was acknowledged before the kill and not yet read
        what, serial = nursery.stdout.readline().split()
        if what == "ended":
            assert int(serial) == -signal.SIGKILL
            return told
        told[what].append(serial)


def test_killed_while_packing_nothing_acknowledged_is_lost(world):
    chance = random.Random(20260304)
    packed, labelled = [], []
    command = [sys.executable, str(CHILD), "nursery", str(world.home)]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as nursery:
        for _ in range(KILLS):
            told = pack_and_kill(nursery, chance)
            packed += told["pack"]
            labelled += told["label"]
            report = verify(world.home)
            assert report.whole, report.why
        nursery.stdin.close()

    with world.open() as store:
        doubtful = store.in_doubt()
    serials = [pack.serial for pack in queries.trace_lot(world.home, "LF-101").packs]
    assert set(packed) <= set(serials)
    assert len(packed) == len(set(packed))
    assert [int(serial[-6:]) for serial in serials] == list(range(1, len(serials) + 1))
    # one bag at most is on its way in each process
    assert len(serials) - len(packed) <= KILLS
    applied = queries.labels_in(world.home, LabelState.APPLIED)
    assert set(labelled) <= set(applied)
    assert sorted((*applied, *doubtful)) == serials
    assert len(doubtful) <= KILLS
