"""What must hold of a record after anything: nothing acknowledged lost, no gap, nothing twice."""

import itertools
from collections.abc import Collection
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path

from station.core.pack import LabelState
from station.store import engine
from station.store.queries import in_doubt
from station.store.verify import verify

_WAY = (LabelState.RECORDED, LabelState.SUBMITTED, LabelState.SPOOLED)


@dataclass
class Count:
    """What a campaign counted.

    Args:
        rounds: kills, cuts or faults.
        acknowledged: bags a process told of.
    """

    rounds: int = 0
    acknowledged: int = 0
    lost: int = 0
    duplicates: int = 0
    gaps: int = 0
    strangers: int = 0
    faults: list[str] = field(default_factory=list)

    def wrong(self, words: str) -> None:
        """Note what was wrong; the first few are told at once, should the campaign itself break."""
        if len(self.faults) < 5:
            print(words)
        self.faults.append(words)

    def told(self) -> str:
        """All counts in a line."""
        return (
            f"{self.rounds} rounds, {self.acknowledged} bags acknowledged, {self.lost} lost, "
            f"{self.duplicates} duplicate serials, {self.gaps} gaps, "
            f"{self.strangers} labels without a record"
        )


def bags_of(home: Path) -> dict[str, str]:
    """Serials of all bags with the state of their label, in the order packed."""
    with engine.reading(home) as connection:
        rows = connection.exec_driver_sql("SELECT serial, label FROM pack ORDER BY id").all()
    return {row.serial: row.label for row in rows}


def check(home: Path, acknowledged: Collection[str], count: Count, where: str) -> dict[str, str]:
    """Look at a record: all bags that were acknowledged are there once, their numbers gapless."""
    found = bags_of(home)
    with engine.reading(home) as connection:
        rows = connection.exec_driver_sql("SELECT epoch, number FROM pack ORDER BY id").all()
    lost = [serial for serial in acknowledged if serial not in found]
    count.lost += len(lost)
    count.duplicates += len(rows) - len(found)
    numbers = [row.number for row in rows]
    gaps = sum(after != before + 1 for before, after in itertools.pairwise(numbers))
    gaps += bool(numbers) and numbers[0] != 1
    count.gaps += gaps
    if lost or gaps or len(rows) != len(found):
        count.wrong(f"{where}: lost {lost[:5]}, {gaps} gaps, {len(rows) - len(found)} twice")
    return found


def check_whole(home: Path, count: Count, where: str) -> None:
    """Verify the whole record."""
    report = verify(home)
    if not report.whole:
        count.wrong(f"{where}: {report.why}")


def on_the_way(found: dict[str, str]) -> set[str]:
    """Serials of labels whose fate a start cannot know."""
    return {serial for serial, label in found.items() if label in _WAY}


def doubts_of(home: Path) -> set[str]:
    """Serials a person is asked about."""
    return set(in_doubt(home))


def damaged(path: Path, offset: int, new: bytes) -> None:
    """Overwrite bytes of a file."""
    with closing(path.open("r+b")) as file:
        file.seek(offset)
        file.write(new)
