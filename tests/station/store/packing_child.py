"""A station process for the tests that kill it or take its disk away. Runs beside conftest.py.

usage: packing_child.py (nursery | fill-disk | file-limit | read-only) HOME
"""

from __future__ import annotations

import json
import os
import resource
import sys
from pathlib import Path

from conftest import World

from station.core.pack import LabelState
from station.errors import EnvironmentFault
from station.line.ports import StoreFault
from station.store import queries
from station.store.verify import verify


def pack_for_ever(world: World) -> None:
    """Pack until killed; a serial is told only after its call came back."""
    store = world.stocked()
    last = queries.last_run(world.home)
    run = last.run if last is not None else world.start(store)
    while True:
        serial = store.add_pack(world.draft(run)).serial
        print(f"pack {serial}", flush=True)
        for state in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
            store.mark_label(serial, state, world.clock.now(), "station", "")
        print(f"label {serial}", flush=True)


def nursery(home: Path) -> None:
    """Start a packing process for each line read; tell its number, and when it has ended.

    A forked process shares no connection with another one: each opens the store itself.
    """
    for _ in sys.stdin:
        process = os.fork()
        if process == 0:
            try:
                print(f"process {os.getpid()}", flush=True)
                pack_for_ever(World(home))
            finally:
                os._exit(1)
        _, status = os.waitpid(process, 0)
        print(f"ended {os.waitstatus_to_exitcode(status)}", flush=True)


def fill_disk(world: World) -> dict[str, object]:
    """Pack on a small file system until it is full, make room, and go on without a restart."""
    store = world.stocked()
    run = world.start(store)
    ballast = world.home / "ballast"
    ballast.write_bytes(bytes(300_000))
    packed, words = _pack_until_fault(world, store, run)
    again = _fault_of_one(world, store, run)
    ballast.unlink()
    after = [store.add_pack(world.draft(run)).id.number for _ in range(3)]
    store.close()
    return {"packed": packed, "words": words, "again": again, "after": after} | _proof(world)


def file_limit(world: World) -> dict[str, object]:
    """Pack until a write fails in the middle of the log, lift the limit, and try to go on."""
    store = world.stocked()
    run = world.start(store)
    resource.setrlimit(resource.RLIMIT_FSIZE, (900_000, resource.RLIM_INFINITY))
    packed, words = _pack_until_fault(world, store, run)
    resource.setrlimit(resource.RLIMIT_FSIZE, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))
    again = _fault_of_one(world, store, run)
    store.close()
    with world.open() as store:
        number = store.add_pack(world.draft(run)).id.number
    return {"packed": packed, "words": words, "again": again, "after": [number]} | _proof(world)


def read_only(world: World) -> dict[str, object]:
    """Open a record in a folder that cannot be written."""
    try:
        world.open()
    except EnvironmentFault as fault:
        return {"words": str(fault), "bags": queries.summary(world.home).packs}
    return {"words": "opened"}


def _pack_until_fault(world, store, run):
    packed = []
    while True:
        try:
            packed.append(store.add_pack(world.draft(run)).id.number)
        except StoreFault as fault:
            return packed, str(fault)


def _fault_of_one(world, store, run):
    try:
        store.add_pack(world.draft(run))
    except StoreFault as fault:
        return str(fault)
    return ""


def _proof(world):
    report = verify(world.home)
    return {"whole": report.whole, "why": report.why, "bags": queries.summary(world.home).packs}


if __name__ == "__main__":
    what, where = sys.argv[1:]
    if what == "nursery":
        nursery(Path(where))
    else:
        ways = {"fill-disk": fill_disk, "file-limit": file_limit, "read-only": read_only}
        print(json.dumps(ways[what](World(Path(where)))))
