"""What station processes do in the campaign of surroundings: a disk that fills up under a line."""

import os
import shutil
import time
from dataclasses import replace
from pathlib import Path

from station.app.practice import lead_of, run_choice, second_of
from station.app.practice_labels import PracticeLabels
from station.config.packhouse import Packhouse
from station.core.facts import Fact
from station.core.holds import Scope, ScopeKind, hold_fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.room import Level, RoomRules
from station.line.opening import calendar_day
from station.line.state import LineState, Phase
from station.store.facts import facts
from station.store.room import space_of
from tests.campaigns.chain.nursery import say
from tests.campaigns.chain.proof import Count, check, check_whole
from tests.end_to_end.line import PATIENCE_S, Bench

PRODUCT = "ROCKET-SPINACH-200"
TOLD_S = 2.0
"""A disk that is nearly full is told so soon."""
_CHUNK = 64 * 1024


class Ballast:
    """What other programs put on a disk.

    Args:
        folder: on it.
    """

    def __init__(self, folder: Path) -> None:
        self._folder, self._path = folder, folder / "ballast"

    def leave(self, free: int) -> None:
        """Write until so many bytes are free; 0 until nothing more is taken."""
        with self._path.open("ab", buffering=0) as file:
            while (room := _free(self._folder) - free) > 0:
                try:
                    file.write(bytes(min(_CHUNK, room)))
                except OSError:
                    return

    def drop(self) -> None:
        """Take it off the disk again."""
        self._path.unlink()


class Line:
    """A line in a folder of a small disk, and what is wrong with it.

    Args:
        home: the record.
        serials: takes in what the screen showed.
    """

    def __init__(self, home: Path, serials: list[str]) -> None:
        self._serials = serials
        self.line = Bench(home, self._seen, changed=_with_reserve)
        self.station = self.line.station

    def __enter__(self) -> "Line":
        return self

    def __exit__(self, *_: object) -> None:
        self.line.close()

    def _seen(self, state: LineState) -> None:
        if state.last is not None and state.last.serial not in self._serials[-1:]:
            self._serials.append(state.last.serial)

    def pack(self, more: int) -> None:
        """Pack so many good bags, and clear the pan."""
        newest = self.line.watch.newest
        good = more + (newest.tally.good if newest is not None else 0)
        with self.line.packer(self.line.house.products[PRODUCT]):
            self.line.until(lambda state: state.tally.good >= good)
        self.line.bench.lift()
        self.line.until(lambda state: state.phase is Phase.READY)

    def refuses(self) -> str:
        """What a lead is told who asks for a run; empty where it is opened."""
        product = self.line.house.products[PRODUCT]
        day = calendar_day(self.station.clock.now())
        self.station.line.start_run(run_choice(self.line.house, product, day, None))
        answer = self.line.watch.next_answer(PATIENCE_S)
        return "" if answer.started else answer.words

    def until_stopped(self) -> str:
        """Let the packer work until the line has stopped, and say why; the pan is clear then."""
        product = self.line.house.products[PRODUCT]
        with self.line.packer(product):
            stopped = self.line.until(lambda state: state.phase is Phase.STOPPED)
        self.line.bench.lift()
        return stopped.because

    def go_on(self) -> None:
        """Let the lead go on after a stop."""
        self.station.line.resume("L01")
        self.line.until(lambda state: state.phase is not Phase.STOPPED)

    def may_not_go_on(self) -> str:
        """What a lead is told who wants to go on after a stop that lasts; empty where it does."""
        self.station.line.resume("L01")
        answer = self.line.watch.next_answer(PATIENCE_S)
        return "" if answer.started else answer.words

    def answer_doubts(self) -> None:
        """Say what became of the labels that were on their way."""
        house, station = self.line.house, self.station
        lead, second = lead_of(house), second_of(house)
        papers = PracticeLabels(
            station.label_checks, station.line, self.line.watch, self.line.labels, lead, second
        )
        papers.answer_doubts()

    def bag_waits(self) -> bool:
        """Put a bag on the pan of a closed line; whether it stays untaken."""
        before = self.line.until(lambda state: bool(state.closed))
        self.line.bench.put_bag(212.0)
        there = self.line.until(lambda state: state.shown is not None and state.shown.steady)
        self.line.until(lambda state: state.shown is not None and state.shown != there.shown)
        after = self.line.until(lambda state: bool(state.closed))
        self.line.bench.lift()
        self.line.until(lambda state: state.phase is Phase.READY)
        return after.tally == before.tally

    def hold(self) -> str:
        """Hold the bags of the record; why that could not be recorded, or nothing."""
        ranges = ((str(self.station.store.epoch), 1, len(self._serials)),)
        scope = Scope(ScopeKind.SERIALS, "the bags so far")
        held: Fact = hold_fact(scope, "leaf on the jaw", ranges, new_uid(self.station.clock.now()))
        self.station.line.enter((held,), "Q01")
        answer = self.line.watch.next_entry(PATIENCE_S)
        return "" if answer.recorded else answer.words

    def end(self) -> str:
        """End the run; why it could not be, or nothing."""
        self.station.line.end_run("L01")
        answer = self.line.watch.next_answer(PATIENCE_S)
        return "" if "ended" in answer.words else answer.words

    def until_level(self, *levels: Level) -> None:
        """Wait until the disk counts so, and the record has it."""
        self.line.until(lambda _: self.station.room.level in levels)
        self.line.until(lambda _: _recorded(self.station.home) in levels)


def full_disk(home: Path, bags: int) -> None:
    """Fill the disk of a line that packs, up to the last byte, make room and go on; twice over.

    Args:
        home: on a small file system of its own.
        bags: packed between.
    """
    count, serials, ballast = Count(), list[str](), Ballast(home.parent)
    with Line(home, serials) as line:
        _say_if(count, line.refuses(), "a run with room")
        line.pack(bags)
        began = time.monotonic()
        ballast.leave(RoomRules().on(space_of(home)).stop - _CHUNK)
        line.line.until(lambda state: any("packing goes on" in words for words in state.closed))
        told = time.monotonic() - began
        if told > TOLD_S:
            count.wrong(f"a disk that is nearly full was told after {told:.1f} s")
        if not line.bag_waits():
            count.wrong("a bag was taken on a disk that is nearly full")
        ballast.leave(0)
        line.until_level(Level.RESERVE)
        _say_if(count, line.hold(), "a hold on a full disk")
        _say_if(count, line.end(), "the end of a run on a full disk")
        _full(line, count, "a run opened on a full disk")
        ballast.drop()
        line.until_level(Level.AMPLE, Level.LOW)
        _say_if(count, line.refuses(), "a run once there was room again")
        line.pack(bags)
    ballast.leave(0)
    with Line(home, serials) as line:  # started on a full disk
        _full(line, count, "a run opened on a disk that was full at the start")
        _say_if(count, line.hold(), "a hold after a start on a full disk")
        ballast.drop()
        line.until_level(Level.AMPLE, Level.LOW)
        _say_if(count, line.refuses(), "a run after a start on a full disk")
        line.pack(bags)
    levels = [one.fact.result for one in facts(home, (EntryKind.DISK,))]
    say(f"told {', '.join(levels)}")
    tell(home, serials, count, told)
    shutil.rmtree(home)  # the next record needs the room


def tell(home: Path, serials: list[str], count: Count, told: float) -> None:
    """Look at the record, and say what was counted.

    Args:
        home: the record.
        serials: what the screen showed.
        count: what was wrong so far.
        told: seconds until the line said what is the matter.
    """
    found = check(home, serials, count, "at the end")
    check_whole(home, count, "at the end")
    labels = {path.stem for path in (home / "labels").glob("*.pdf")}
    if labels - found.keys():
        count.wrong(f"labels without a record: {sorted(labels - found.keys())}")
    for fault in count.faults:
        say(f"wrong {fault}")
    say(f"counted {len(serials)} {count.lost} {count.duplicates} {count.gaps} {told:.2f}")


def _full(line: Line, count: Count, wrong: str) -> None:
    if "packing goes on by itself" not in line.refuses():
        count.wrong(wrong)


def _free(folder: Path) -> int:
    found = os.statvfs(folder)
    return found.f_bavail * found.f_frsize


def _with_reserve(house: Packhouse) -> Packhouse:
    record = replace(house.settings.record, room=RoomRules())
    return replace(house, settings=replace(house.settings, record=record))


def _recorded(home: Path) -> str:
    found = facts(home, (EntryKind.DISK,), newest=1)
    return found[-1].fact.result if found else Level.AMPLE


def _say_if(count: Count, words: str, what: str) -> None:
    if words:
        count.wrong(f"{what}: {words}")
