"""The n-th write, sync or opening of a file fails, n = 1, 2, 3 … until a packing process gets by.

`python -m tests.campaigns io-errors --full` tries every n, once and for ever, with an I/O error and
with a full disk (the pattern of SQLite's own tests, "How SQLite Is Tested", section 3.2); the short
form tries each 120th. Needs a C compiler, and says so where there is none. Counted as faults: a bag
acknowledged and not recorded, an error without words, a bag taken after an I/O error, a sync tried
again after one failed, a record that does not verify.
"""

import errno
import itertools
import shutil
import tempfile
from collections.abc import Callable
from pathlib import Path

from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count, check, check_whole
from tests.campaigns.chain.shim import compiled

BAGS = 4
SHORT_STEP = 120
WAYS = tuple(
    itertools.product(
        (("write", errno.EIO), ("write", errno.ENOSPC), ("sync", errno.EIO), ("open", errno.EIO)),
        (False, True),
    )
)


def fail_everywhere(step: int, folder: Path, say: Callable[[str], None]) -> Count:
    """Let each `step`-th call fail in every way; return what was counted."""
    library = compiled(folder)
    count = Count()
    if library is None:
        say("no C compiler is here: the errors cannot be injected; install gcc")
        count.wrong("not run: no C compiler")
        return count
    with Nursery(library) as nursery:
        for (kind, error), persistent in WAYS:
            rounds = count.rounds
            for call in itertools.count(1, step):
                home = folder / "home"
                where = f"{kind} {call}, {errno.errorcode[error]}, for ever: {persistent}"
                went_through = _one(nursery, home, (call, kind, persistent, error), where, count)
                shutil.rmtree(home)
                if went_through:
                    break
            often = "for ever" if persistent else "once"
            say(f"{kind}, {errno.errorcode[error]} {often}: {count.rounds - rounds} faults")
    say(count.told())
    return count


def _one(
    nursery: Nursery, home: Path, fault: tuple[int, str, bool, int], where: str, count: Count
) -> bool:
    """Pack once with a fault; whether no call was the n-th."""
    call, kind, persistent, error = fault
    nursery.ask(
        "faulty", home, count=BAGS, call=call, kind=kind, persistent=persistent, error=error
    )
    said: dict[str, str] = {}
    acknowledged = []
    for line in nursery.lines():
        what, _, words = line.partition(" ")
        if what == "bag":
            acknowledged.append(words)
        said[what] = words
    if nursery.ended or "fault" in said:
        count.wrong(f"{where}: it ended with {nursery.ended} {said.get('fault', '')}")
    count.acknowledged += len(acknowledged)
    check(home, acknowledged, count, where)
    check_whole(home, count, where)
    if int(said["calls"]) < call:
        return True
    count.rounds += 1
    if "words" in said and ":" not in said["words"]:
        count.wrong(f"{where}: the words do not say what to do: {said['words']}")
    if "words" in said and error == errno.EIO and "again" not in said:
        count.wrong(f"{where}: a bag was taken after {said['words']}")
    if said.get("syncs", "0") != "0":
        count.wrong(f"{where}: {said['syncs']} syncs after the fault")
    return False


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="io-errors-") as folder:
        count = fail_everywhere(1 if full else SHORT_STEP, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
