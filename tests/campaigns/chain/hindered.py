"""What station processes do while something else holds the record, the disk or the memory."""

import errno
import json
import os
import resource
import sqlite3
import subprocess
import sys
import threading
import time
from contextlib import closing
from pathlib import Path

from station.store import engine
from station.store.backup import check_file
from station.store.engine import database
from tests.campaigns.chain import shim
from tests.campaigns.chain.drafts import Packer
from tests.campaigns.chain.nursery import say
from tests.campaigns.chain.packing import chain
from tests.campaigns.chain.proof import Count, check
from tests.campaigns.chain.surrounded import Line, tell

_HOLD = (
    "import sqlite3, sys; c = sqlite3.connect(sys.argv[1], isolation_level=None);"
    "c.execute('BEGIN IMMEDIATE'); print('held', flush=True); sys.stdin.read()"
)
_MIB = 2**20
OUT = "memory ran out"
"""Said once, when no more memory is to be had."""


def locked(home: Path, seconds: float, busy_ms: int) -> None:
    """Another program locks the record under a line that packs, and lets go of it.

    Args:
        home: the record.
        seconds: how long it is locked after the line has said so.
        busy_ms: how long the station waits for a lock.
    """
    engine.BUSY_MS = busy_ms
    count, serials = Count(), list[str]()
    with Line(home, serials) as line:
        line.refuses()
        line.pack(2)
        before = len(serials)
        with subprocess.Popen(
            [sys.executable, "-c", _HOLD, str(database(home))],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
        ) as other:
            assert other.stdout is not None
            assert other.stdin is not None
            other.stdout.readline()
            began = time.monotonic()
            words = line.until_stopped()
            told = time.monotonic() - began
            time.sleep(max(seconds - told, 0.0))  # how long it is locked is what is tried
            if "another program holds the record locked" not in words:
                count.wrong(f"a locked record was told as {words}")
            if len(serials) > before:
                count.wrong("a bag counted as recorded while the record was locked")
            other.stdin.close()
        line.go_on()
        line.pack(2)
    tell(home, serials, count, told)


def read_only(home: Path) -> None:
    """The disk turns read-only under a line that packs: EROFS, as a journal that gave up says."""
    count, serials = Count(), list[str]()
    with Line(home, serials) as line:
        line.refuses()
        line.pack(2)
        shim.arm(home, 1, "write", True, errno.EROFS)
        began = time.monotonic()
        words = line.until_stopped()
        told = time.monotonic() - began
        if "start the station again" not in words:
            count.wrong(f"a disk that turned read-only was told as {words}")
        shown = len(serials)
        if "start the station again" not in line.may_not_go_on():
            count.wrong("the line went on after a write failed")
        if len(serials) > shown:
            count.wrong("a bag counted as recorded on a disk that is read-only")
    shim.disarm()
    with Line(home, serials) as line:  # the next start
        line.answer_doubts()
        if why := line.refuses():
            count.wrong(f"no run after the disk could be written again: {why}")
        line.pack(1)
    tell(home, serials, count, told)


def long_reader(home: Path, bags: int, pause: float) -> None:
    """Another program reads one view of the record for as long as bags are packed.

    Args:
        home: the record.
        bags: how many.
        pause: seconds between two.
    """
    count, serials, took = Count(), list[str](), list[float]()
    packer, log = Packer(home), database(home).with_name("station.sqlite-wal")
    with closing(sqlite3.connect(database(home), isolation_level=None)) as reader:
        reader.execute("BEGIN")
        reader.execute("SELECT * FROM journal").fetchall()
        for _ in range(bags):
            began = time.monotonic()
            serials.append(packer.pack())
            took.append(time.monotonic() - began)
            time.sleep(pause)  # bags come at the pace of a line
        grown = log.stat().st_size
    for _ in range(70):  # the next checkpoint with nobody reading
        serials.append(packer.pack())
    after = log.stat().st_size
    for _ in range(70):  # it let the log begin anew
        serials.append(packer.pack())
    again = log.stat().st_size
    packer.store.close()
    if again > after:
        count.wrong(f"the log goes on growing with nobody reading: {after} to {again} bytes")
    slow = sorted(took)[len(took) * 99 // 100]
    say(f"told log {grown / _MIB:.1f} MiB, bag with label p99 {slow * 1000:.1f} ms")
    tell(home, serials, count, 0.0)


def backups(home: Path, count: int, pause: float) -> None:
    """Backups are made by the station's own command while bags are packed.

    Args:
        home: the record.
        count: how many backups.
        pause: seconds from one to the next.
    """
    counted, serials = Count(), list[str]()
    packer, folder = Packer(home), home.parent / f"{home.name}-backups"
    folder.mkdir()
    command = [sys.executable, "-m", "station.app.main", "backup", "--json"]
    command += ["--home", str(home), "--to", str(folder)]
    for number in range(count):
        shown = len(serials)
        with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as process:
            while process.poll() is None:
                serials.append(packer.pack())
                time.sleep(0.05)  # the backup shares the machine with a line, not with a flood
            assert process.stdout is not None
            said = process.stdout.read()
        if process.returncode:
            counted.wrong(f"backup {number + 1} ended with {process.returncode}: {said}")
            continue
        done = json.loads(said)
        place, _ = check_file(Path(done["file"]))
        if (place.seq, place.hash.hex()) != (done["head_seq"], done["head"]):
            counted.wrong(f"backup {number + 1} has another head than it said")
        copy = folder / "copy"
        copy.mkdir(exist_ok=True)
        Path(done["file"]).replace(database(copy))
        check(copy, serials[:shown], counted, f"backup {number + 1}")
        time.sleep(pause)
    packer.store.close()
    tell(home, serials, counted, 0.0)


def little_memory(home: Path, left_mib: int) -> None:
    """Run a station that may take only so much more memory, while something eats what is left."""

    never, out = threading.Event(), f"{OUT}\n".encode()  # made while there is memory

    def eat() -> None:
        eaten = []
        while True:
            try:
                eaten.append(bytearray(_MIB // 16))
            except MemoryError:
                os.write(1, out)
                never.wait()
            time.sleep(0.005)  # slowly, so that it runs out anywhere in the chain

    def begin() -> None:
        pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[0])
        most = pages * resource.getpagesize() + left_mib * _MIB
        resource.setrlimit(resource.RLIMIT_AS, (most, most))
        threading.Thread(target=eat, daemon=True).start()

    chain(home, opened=begin)
