"""What station processes do in campaigns: the whole chain on a bench scale, or the store alone."""

import os
import signal
import threading
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from drivers.printer.file import FolderPrinter
from station.app.assembly import Station
from station.app.label_desk import PrintingDesk
from station.app.practice import lead_of, second_of
from station.app.practice_labels import PracticeLabels
from station.line.ports import StoreFault
from station.store import transaction, writer
from station.store.journal import Journal
from station.store.projections import Projections
from station.store.writer import StationStore
from tests.campaigns.chain import shim
from tests.campaigns.chain.drafts import Packer
from tests.campaigns.chain.nursery import say
from tests.end_to_end.line import Bench

STEPS: dict[str, tuple[Any, str, bool]] = {
    "before the bag is recorded": (StationStore, "add_pack", True),
    "before its entry": (Journal, "add", True),
    "after its entry": (Journal, "add", False),
    "before its row": (Projections, "add_pack", True),
    "after its row": (Projections, "add_pack", False),
    "before a commit": (transaction, "commit", True),
    "after a commit": (transaction, "commit", False),
    "after the bag is recorded": (StationStore, "add_pack", False),
    "before its label goes out": (PrintingDesk, "issue", True),
    "after its label went out": (PrintingDesk, "issue", False),
    "before a label's state": (StationStore, "mark_label", True),
    "after a label's state": (StationStore, "mark_label", False),
    "before the printer": (FolderPrinter, "submit", True),
    "after the printer": (FolderPrinter, "submit", False),
    "before a fact": (StationStore, "record", True),
    "after a fact": (StationStore, "record", False),
    "before the run is recorded": (StationStore, "start_run", True),
    "after the run is recorded": (StationStore, "start_run", False),
    "before the log is folded": (StationStore, "_checkpoint", True),
    "after the log is folded": (StationStore, "_checkpoint", False),
}
"""Named steps of the chain: what is wrapped, and whether the process dies before or after it."""


def _nothing() -> None:
    """Nothing more is done."""


def chain(
    home: Path,
    step: str = "",
    hit: int = 1,
    late: bool = False,
    opened: Callable[[], None] = _nothing,
) -> None:
    """Run a station on the bench, answer for its doubts and pack until killed.

    Args:
        home: the record.
        step: a name of STEPS at which the process kills itself; empty for none.
        hit: at which passing of it.
        late: passings count from the open run on, not from the start.
        opened: done once the run is open.
    """
    if step:
        writer.CHECKPOINT_EVERY = 10  # so that its steps come within a few bags
    if step and not late:
        die_at(step, hit)
    told: list[str] = []

    def seen(state: Any) -> None:
        if state.last is not None and state.last.serial not in told[-1:]:
            told.append(state.last.serial)
            say(f"bag {state.last.serial}")

    began, used = time.monotonic(), time.process_time()
    line = Bench(home, seen)
    station: Station = line.station
    say(f"opened {time.monotonic() - began:.3f} {time.process_time() - used:.3f}")
    papers = PracticeLabels(
        station.label_checks,
        station.line,
        line.watch,
        line.labels,
        lead_of(line.house),
        second_of(line.house),
    )
    papers.answer_doubts()
    product = line.open_run()
    if late:
        die_at(step, hit)
    opened()
    with line.packer(product, seed=os.getpid()):
        threading.Event().wait(60.0)


def die_at(step: str, hit: int) -> None:
    """Wrap a step so that the process kills itself there."""
    owner, name, before = STEPS[step]
    real: Callable[..., Any] = getattr(owner, name)
    left = [hit]

    def wrapped(*args: Any, **named: Any) -> Any:
        left[0] -= 1
        if before and left[0] <= 0:
            os.kill(os.getpid(), signal.SIGKILL)
        result = real(*args, **named)
        if left[0] <= 0:
            os.kill(os.getpid(), signal.SIGKILL)
        return result

    setattr(owner, name, wrapped)


def bags(home: Path, count: int, log: str, synchronous: str, fold_every: int) -> None:
    """Pack with the store alone while the disk is watched: each bag and its label's three states.

    Args:
        home: the record, which does not exist yet.
        count: how many.
        log: file that takes in what is written and synced.
        synchronous: FULL as ever, or another mode for a control that must fail.
        fold_every: commits between checkpoints.
    """
    home.mkdir(parents=True)
    shim.log(home, Path(log))
    writer.CHECKPOINT_EVERY = fold_every
    packer = Packer(home)
    packer.store._driver.execute(f"PRAGMA synchronous={synchronous}")
    taker = os.open(home / "acknowledged", os.O_WRONLY | os.O_CREAT | os.O_APPEND)
    for _ in range(count):
        os.write(taker, f"{packer.pack()}\n".encode())


def faulty(home: Path, count: int, call: int, kind: str, persistent: bool, error: int) -> None:
    """Pack while the n-th call of a kind fails; say what was acknowledged and what was said.

    A fault that leaves the disk unknown must be followed by refusals only. The process then ends
    as a killed one does, and the campaign opens the record itself.
    """
    packer = Packer(home)
    say("opened")
    shim.arm(home, call, kind, persistent, error)
    try:
        for _ in range(count):
            say(f"bag {packer.pack()}")
    except StoreFault as fault:
        say(f"words {fault}")
        syncs = shim.calls("sync")
        try:
            serial = packer.pack()
        except StoreFault as again:
            say(f"again {again}")
            say(f"syncs {shim.calls('sync') - syncs}")
        else:
            say(f"bag {serial}")
    finally:
        say(f"calls {shim.calls(kind)}")
        shim.disarm()
