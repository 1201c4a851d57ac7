"""The disk as a duty, on a real folder of which so many bytes count as its medium."""

import pytest

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.room import MOST_LOG, Level, RoomRules, Space
from station.line.room_duty import RoomDuty, amount
from station.store.room import Reserve, space_of
from tests.station.line.scenario import make_moment

NOW = make_moment()
KB = 1024
TOTAL = 20_000 * KB
RULES = RoomRules(80, stop=1_000 * KB, reserve=500 * KB)


class Medium:
    """A folder whose medium is as large as is said, with ballast in it."""

    def __init__(self, home):
        self.home, self.ballast, self.made = home, home / "ballast", 0
        self.duty = self.new()

    def new(self):
        return RoomDuty(self.look, Reserve(self.home), RULES, self.uid)

    def look(self):
        used = sum(path.stat().st_size for path in self.home.iterdir())
        return Space(used, max(TOTAL - used, 0))

    def uid(self, at):
        self.made += 1
        return f"f{self.made}"

    def leave(self, free):
        """Fill it up so that so many bytes are free."""
        held = Reserve(self.home).size
        with self.ballast.open("wb") as file:
            file.truncate(TOTAL - free - held)

    def watch(self):
        """What is recorded now; it is on record afterwards."""
        made = self.duty.watch(NOW)
        for fact in made:
            assert fact.kind is EntryKind.DISK
            self.duty.noted(FactRecord(fact, NOW, "station", 1))
        return tuple(fact.result for fact in made)


@pytest.fixture
def medium(tmp_path):
    return Medium(tmp_path)


def closing(medium):
    return medium.duty.closing(NOW.utc)


def test_a_disk_that_fills_up_is_told_then_stops_bags_then_gives_the_reserve_and_goes_on(medium):
    assert Reserve(medium.home).size == RULES.reserve
    assert medium.watch() == ()
    medium.leave(TOTAL // 5)
    assert medium.watch() == (Level.LOW,)
    assert (
        "the disk is 80 % full, 4.1 MB free: take old files off" in medium.duty.due(NOW.utc).words
    )
    assert closing(medium) == ""
    medium.leave(RULES.stop - KB)
    assert medium.watch() == (Level.SHUT,)
    assert "nearly full: free 257.0 kB on it, then packing goes on by itself" in closing(medium)
    assert medium.duty.due(NOW.utc) is None
    assert medium.watch() == ()
    medium.leave(RULES.brink - KB)
    assert medium.watch() == (Level.RESERVE,)
    assert Reserve(medium.home).size == 0
    assert medium.look().free == RULES.brink - KB + RULES.reserve
    medium.leave(RULES.again + RULES.reserve - 1)
    assert medium.watch() == ()
    assert "free 1 bytes on it" in closing(medium)
    medium.ballast.unlink()
    assert medium.watch() == (Level.AMPLE,)
    assert (closing(medium), Reserve(medium.home).size) == ("", RULES.reserve)
    assert medium.duty.words == "3 % full, 20.0 MB free"


def test_a_full_disk_gives_its_reserve_before_the_record_is_opened(medium):
    medium.leave(RULES.brink - KB)
    again = medium.new()
    assert again.level is Level.RESERVE
    assert medium.look().free > RULES.reserve
    assert again.shut


def test_what_a_full_disk_did_not_take_is_tried_again_later(medium):
    medium.leave(RULES.stop - KB)
    assert len(medium.duty.watch(NOW)) == 1
    assert medium.duty.watch(NOW) == ()
    late = make_moment(3_000)
    assert [fact.result for fact in medium.duty.watch(late)] == [Level.SHUT]


def test_a_log_that_cannot_be_folded_is_told(tmp_path):
    with (tmp_path / "station.sqlite-wal").open("wb") as log:
        log.truncate(MOST_LOG + 1)
    duty = RoomDuty(lambda: space_of(tmp_path), Reserve(tmp_path), RoomRules(99, 1, 0), str)
    assert "log takes 67.1 MB: another program has been" in duty.due(NOW.utc).words
    assert duty.shut == ""


def test_a_medium_that_cannot_be_asked_is_told_and_stops_nothing(tmp_path):
    home = tmp_path / "gone"
    duty = RoomDuty(lambda: space_of(home), Reserve(home), RULES, str)
    assert duty.words == "the disk cannot be asked: no such file or directory"
    assert (duty.shut, duty.watch(NOW)) == ("", ())


def test_sizes_read_as_a_person_writes_them():
    assert [amount(n) for n in (999, 1_000, 2_500_000, 3 * 10**9)] == [
        "999 bytes", "1.0 kB", "2.5 MB", "3.0 GB",
    ]  # fmt: skip


def test_the_reserve_holds_room_on_the_real_disk_and_gives_all_of_it_back(tmp_path):
    reserve = Reserve(tmp_path)
    assert reserve.lay(4 * 2**20)
    held = (tmp_path / "station.reserve").stat()
    assert held.st_blocks * 512 >= 4 * 2**20  # st_blocks counts 512 bytes (POSIX, sys/stat.h)
    reserve.let_go()
    assert reserve.size == 0
    reserve.let_go()
