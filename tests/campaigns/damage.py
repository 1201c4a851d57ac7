"""A closed record damaged in every way a disk or a person can, and whether that is found and named.

`python -m tests.campaigns damage --full` damages 100 pages, changes 100 bytes of entries, cuts 20
tails, puts 10 older images back, puts another record in its place 10 times and takes the log away
10 times, each on a copy of one record; the short form a tenth of it. Each time the command `station
journal verify --home DIR --json` must exit with 1 and name the exact place: the page that was
overwritten, or an entry whose bytes lay there; the entry that was changed; the first entry that is
missing; the record that is another one. Anything else is a fault. Also told, and none: how many of
the damaged records a start refuses. A start looks at the last 1000 entries; what lies before is
found by verifying.
"""

import contextlib
import io
import json
import random
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

from station.app.places import demo_settings
from station.cli.entry import run as run_command
from station.cli.verbs import build
from station.config.load import load_settings
from station.errors import StationError
from station.store.engine import database
from station.store.verify import verify
from station.store.writer import StationStore
from tests.campaigns.chain.drafts import CLOCK, Packer
from tests.campaigns.chain.proof import Count

FULL, SHORT = (100, 100, 20, 10, 10, 10), (10, 10, 2, 1, 1, 1)
SEED = 5
BAGS = 320
PAGE = 4096
Said = dict[str, object]
"""What the command says, as read from its JSON."""
Named = Callable[[Said], bool]
"""Whether it names the exact place."""
Damaged = Iterator[tuple[Path, str, Named]]
_GUARDS = ("journal_no_delete", "journal_no_update", "journal_gapless")


class Record:
    """One record of some bags, with the images it left on its way.

    Args:
        folder: takes it and its copies.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self.home = folder / "record"
        self.images: list[Path] = []
        packer = Packer(self.home)
        for bag in range(BAGS):
            packer.pack()
            if bag in (BAGS // 4, BAGS // 2, BAGS - 20):
                self._image(packer.store, bag)
        packer.store.end_run(packer.run.id, CLOCK.now(), "station")
        self.running = self._copy(self.home, "running")  # its last commits are in the log alone
        packer.store.close()
        stranger = Packer(folder / "stranger")
        stranger.pack()
        stranger.store.close()
        self.stranger = database(folder / "stranger")

    def _image(self, store: StationStore, bag: int) -> None:
        store._checkpoint("TRUNCATE")
        self.images.append(shutil.copy(database(self.home), self._folder / f"image-{bag}"))

    def copy(self) -> Path:
        """A fresh copy of the closed record."""
        return self._copy(self.home, "copy")

    def copy_of_running(self) -> Path:
        """A fresh copy of the record as its process left it when it died, log and all."""
        return self._copy(self.running, "copy")

    def _copy(self, source: Path, name: str) -> Path:
        target = self._folder / name
        shutil.rmtree(target, ignore_errors=True)
        target.mkdir()
        for path in source.iterdir():
            if path.is_file() and not path.name.endswith(("-shm", ".lock")):
                shutil.copy(path, target / path.name)
        return target


def damage(sizes: tuple[int, ...], folder: Path, say: Callable[[str], None]) -> Count:
    """Damage copies of a record; return what was counted."""
    record, chance, count = Record(folder), random.Random(SEED), Count()
    if not verify(record.copy()).whole or not verify(record.copy_of_running()).whole:
        count.wrong("the record is not whole before anything was done to it")
    ways = (_pages, _bytes, _tails, _images, _strangers, _logs)
    for way, size in zip(ways, sizes, strict=True):
        found = refused = 0
        for home, what, named in way(record, chance, size):
            count.rounds += 1
            code, said = _verified(home)
            right = code == 1 and not said.get("whole", True) and named(said)
            found += right
            refused += _start_refuses(home)
            if not right:
                count.wrong(f"{what}: exit {code}, {said}")
        say(f"{way.__doc__} {found} of {size} found and named, {refused} refused at the start")
    say(f"seed {SEED}: {count.rounds} damages, {len(count.faults)} not found or not named exactly")
    return count


def _verified(home: Path) -> tuple[int, Said]:
    """Exit code of the command, and what it said."""
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        code = run_command(build(), ["journal", "verify", "--home", str(home), "--json"])
    try:
        return code, json.loads(out.getvalue())
    except ValueError:
        return code, {"why": err.getvalue()}


def _start_refuses(home: Path) -> bool:
    settings = load_settings(demo_settings())
    try:
        StationStore.open(home, settings.site, settings.station, CLOCK).close()
    except StationError:
        return True
    return False


def _entry(seq: int) -> Named:
    """The entry of that number is named as the first that does not hold."""
    return lambda said: said["first_break"] == seq and str(seq) in str(said["why"])


def _missing(seq: int) -> Named:
    """The entry of that number is named as the first that is missing."""
    return lambda said: (
        said["first_break"] == seq and f"the journal ends at {seq - 1}" in str(said["why"])
    )


def _pages(record: Record, chance: random.Random, size: int) -> Damaged:
    """Pages of 4 KiB overwritten:"""
    content = database(record.home).read_bytes()
    kept, pages = _entries(database(record.home)), len(content) // PAGE
    lying = {seq: content.find(text) // PAGE for seq, text in kept.items() if text in content}
    for page in chance.sample(range(pages), size):
        home = record.copy()
        with database(home).open("r+b") as file:
            file.seek(page * PAGE)
            file.write(chance.randbytes(PAGE))
        first = min((seq for seq, place in lying.items() if place == page), default=None)

        def named(said: Said, page: int = page + 1, first: int | None = first) -> bool:
            seq = said["first_break"]
            if first is None:  # a table, an index, or parts of an entry too long for a page
                return said["page"] == page or (isinstance(seq, int) and seq not in lying)
            right = seq == first or (isinstance(seq, int) and seq < first and seq not in lying)
            return right and said["page"] in (page, None)

        yield home, f"page {page + 1} of {pages}", named


def _bytes(record: Record, chance: random.Random, size: int) -> Damaged:
    """Single bytes of entries changed:"""
    content = database(record.home).read_bytes()
    kept = _entries(database(record.home)).items()
    whole = [(seq, content.find(text), len(text)) for seq, text in kept if text in content]
    for seq, start, length in chance.sample(whole, size):
        place = start + chance.randrange(length)
        home = record.copy()
        with database(home).open("r+b") as file:
            file.seek(place)
            file.write(bytes([content[place] ^ 1 << chance.randrange(7)]))
        yield home, f"byte {place - start} of entry {seq}", _entry(seq)


def _tails(record: Record, chance: random.Random, size: int) -> Damaged:
    """Tails cut off, with the bags that follow from them:"""
    for _ in range(size):
        entries, home = chance.randint(1, 200), record.copy()
        with closing(sqlite3.connect(database(home), isolation_level=None)) as connection:
            for guard in _GUARDS:
                connection.execute(f"DROP TRIGGER {guard}")
            (last,) = connection.execute("SELECT max(id) FROM journal").fetchone()
            for table, column in (("pack", "entry_id"), ("fact", "entry_id"), ("journal", "id")):
                connection.execute(f"DELETE FROM {table} WHERE {column} > ?", (last - entries,))
        yield home, f"the last {entries} entries cut", _missing(_last(home) + 1)


def _images(record: Record, chance: random.Random, size: int) -> Damaged:
    """Older images put back:"""
    for _ in range(size):
        image, home = chance.choice(record.images), record.copy()
        shutil.copy(image, database(home))
        yield home, f"{image.name} put back", _missing(_last(home) + 1)


def _strangers(record: Record, chance: random.Random, size: int) -> Damaged:
    """Another record of the same station put in its place:"""
    for _ in range(size):
        home = record.copy()
        shutil.copy(record.stranger, database(home))
        yield home, "another record", lambda said: "is of epoch" in str(said["why"])


def _logs(record: Record, chance: random.Random, size: int) -> Damaged:
    """Logs of a record that was not closed taken away:"""
    for _ in range(size):
        home = record.copy_of_running()
        log = home / "station.sqlite-wal"
        if chance.random() < 0.5:
            log.unlink()
            what = "the log taken away"
        else:
            log.write_bytes(log.read_bytes()[: -chance.randint(1, 40) * PAGE])
            what = "the log cut short"
        yield home, what, _missing(_last(home) + 1)


def _entries(file: Path) -> dict[int, bytes]:
    with closing(sqlite3.connect(file)) as connection:
        return dict(connection.execute("SELECT seq, canonical FROM journal ORDER BY id"))


def _last(home: Path) -> int:
    """Number of the last entry that is there, on a copy, so that nothing is changed by looking."""
    with tempfile.TemporaryDirectory(prefix="look-") as folder:
        for path in home.glob("station.sqlite*"):
            shutil.copy(path, folder)
        return max(_entries(database(Path(folder))))


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="damage-") as folder:
        count = damage(FULL if full else SHORT, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
