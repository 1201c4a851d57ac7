"""From a frame on the wire to its number painted, while bags are packed and the record is sent.

`python -m tests.campaigns painted --full` runs for two minutes, `--short` for six seconds, each
with a scale of 50 frames a second and with one that fills a line of 115 200 baud. The scale is a
process of its own that notes the time before it writes a frame. The station is whole: its window,
a label for each bag, and a backlog that drains to a real PostgreSQL. The window opens on DISPLAY;
without one on a screen nobody sees (`QT_QPA_PLATFORM=offscreen`).

A frame is painted once the end of a paint event of the big row shows it or a later one. Frames
that change nothing on the screen are not counted. Counted as faults: more than 16 ms in one of a
hundred, bags that are not packed, a backlog that does not move.
"""

import os
import tempfile
import time
from bisect import bisect_right
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from itertools import pairwise
from pathlib import Path
from typing import NamedTuple

if not os.environ.get("DISPLAY"):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtGui import QPaintEvent

from drivers.port import PortSettings
from station.app.assembly import Audience, Station
from station.app.memory import settled
from station.app.places import demo_settings
from station.app.practice import run_choice
from station.app.qt_side import application, both
from station.app.scale_line import bench_house
from station.app.speed.long_record import make_long_record
from station.app.station_window import station_window
from station.app.watch import Watch
from station.config.load import load
from station.config.packhouse import Packhouse
from station.config.sync_settings import SyncSettings
from station.core.mass import Unit
from station.line.opening import calendar_day
from station.line.state import LineState, Verb
from station.screens.bridge import Bridge
from station.screens.packer import PackerScreen
from station.screens.widgets.big_figure import BigFigure
from station.sync.schema import role
from tests.campaigns.chain.quick_scale import Sent, quick_scale
from tests.end_to_end.line import without_gates, without_papers, without_pins
from tests.station.sync.centre import Centre
from tests.station.sync.server import QUICK, Server

FRAMES_PER_S, FLOOD_FRAMES_PER_S = 50.0, 576.0
"""A quick scale; and 115 200 baud at ten bits a byte, full of frames of 20 bytes."""
SHORT_S, FULL_S = 6.0, 120.0
SHORT_BACKLOG, FULL_BACKLOG = 20_000, 200_000
WARM_S = 2.0
MOST_MS = 16.0
ME = ("QH", "A1")


@dataclass(frozen=True)
class Said:
    """A state: when its frame was read, when it was told, its digits, the words of the big row."""

    read_ns: int
    told_ns: int
    digits: str
    row: tuple[Verb, str]


class Wait(NamedTuple):
    """Milliseconds from the wire until a number was read, told to the screen, and painted."""

    read: float
    told: float
    painted: float


class Seen:
    """What the station showed, on the steady count in nanoseconds."""

    def __init__(self) -> None:
        self.states: list[Said] = []
        self.painted: list[tuple[int, int]] = []
        """End of a painting, and when the frame it shows was read."""

    def state(self, state: LineState) -> None:
        """Take in a state, before the screen gets it."""
        if state.shown is not None:
            amount = "" if state.amount is None else state.amount.digits
            row = (state.verb, amount)
            told_ns = time.monotonic_ns()
            self.states.append(Said(state.shown.seen_at_ns, told_ns, state.shown.digits, row))

    @contextmanager
    def painting(self) -> Iterator[None]:
        """Take in each painting of the big row; Qt must not have painted one before."""
        paint = BigFigure.paintEvent

        def noted(figure: BigFigure, event: QPaintEvent) -> None:
            paint(figure, event)
            screen = figure.parentWidget()
            assert isinstance(screen, PackerScreen)
            if screen.state is not None and screen.state.shown is not None:
                self.painted.append((time.monotonic_ns(), screen.state.shown.seen_at_ns))

        BigFigure.paintEvent = noted  # type: ignore[method-assign]
        try:
            yield
        finally:
            BigFigure.paintEvent = paint  # type: ignore[method-assign]

    def waits(self, sent: list[Sent], since_ns: int) -> list[Wait]:
        """How long each new number took.

        Args:
            sent: every frame of the scale.
            since_ns: what was read before does not count.
        """
        waits, place = [], 0
        for before, now in pairwise(self.states):
            if now.digits == before.digits or now.row == before.row or now.read_ns < since_ns:
                continue
            while place < len(self.painted) and self.painted[place][1] < now.read_ns:
                place += 1
            gone = gone_at(sent, now)
            if place < len(self.painted) and gone is not None:
                times = (now.read_ns, now.told_ns, self.painted[place][0])
                waits.append(Wait(*((then - gone) / 1e6 for then in times)))
        return waits


@dataclass(frozen=True)
class Figures:
    """What was measured.

    Args:
        waits: of each new number.
        labels: of each bag packed meanwhile, from steady to its label at the printer, in
            milliseconds.
        sent: entries that went to the centre meanwhile.
        cpu: part of a core that the station took.
    """

    waits: list[Wait]
    labels: list[float]
    sent: int
    cpu: float

    def words(self) -> str:
        """All in one line."""
        read, told, painted = (sorted(stage) for stage in zip(*self.waits, strict=True))
        p50, p99, most = (at(painted, share) for share in (0.5, 0.99, 1.0))
        return (
            f"{len(painted)} numbers painted after p50 {p50:.1f} ms, p99 {p99:.1f} ms, most"
            f" {most:.1f} ms (p99 until read {at(read, 0.99):.1f}, told {at(told, 0.99):.1f});"
            f" {len(self.labels)} bags, steady to label {max(self.labels, default=0):.1f} ms most;"
            f" {self.sent} entries sent, {self.cpu:.0%} of a core"
        )

    @property
    def p99(self) -> float:
        """Milliseconds in which 99 of 100 new numbers are painted."""
        return at(sorted(wait.painted for wait in self.waits), 0.99)


def at(ordered: list[float], share: float) -> float:
    """The value below which a share of them lies."""
    return ordered[min(len(ordered) - 1, int(len(ordered) * share))]


def measure(seconds: float, frames_per_s: float, backlog: int) -> Figures:
    """Pack for so long and measure.

    Args:
        seconds: of packing that is measured.
        frames_per_s: how often the scale speaks.
        backlog: bags that the record holds already and the centre does not.
    """
    server = Server(QUICK)
    try:
        centre = Centre(server, ME)
        with tempfile.TemporaryDirectory(prefix="painted-") as folder:
            home = Path(folder) / "home"
            home.mkdir()
            make_long_record(demo_settings(), home, backlog)
            return _pack(home, centre, seconds, frames_per_s)
    finally:
        server.close()


def _house(centre: Centre) -> Packhouse:
    today = datetime.now(UTC).date()  # noqa: TID251  the demo's lots are days old
    house = without_gates(bench_house(load(demo_settings(), today)))
    sync = SyncSettings(centre.server.url(centre.name, role(*ME)), "disable")
    return without_pins(without_papers(replace(house, settings=replace(house.settings, sync=sync))))


def _pack(home: Path, centre: Centre, seconds: float, frames_per_s: float) -> Figures:
    house = _house(centre)
    product = next(iter(house.products.values()))
    gross = product.target.in_unit(Unit.GRAM) + product.bag.tare.in_unit(Unit.GRAM)
    seen, watch = Seen(), Watch()
    with (
        seen.painting(),
        application(),
        quick_scale(int(gross.amount), frames_per_s) as scale,
        ExitStack() as memory,
    ):
        bridge = Bridge()
        audience = Audience(
            both(both(seen.state, bridge.publish), watch.state),
            watch.answer,
            timing=watch.timing,
            label=bridge.show_label,
        )
        station = Station(
            house,
            home,
            PortSettings(scale.url),
            home / "labels",
            audience,
            key=home / "practice.key",
        )
        station.start()
        try:
            window = station_window(bridge, station, house)
            window.make_pages()  # as they are soon after a start
            window.show()
            station.line.start_run(
                run_choice(house, product, calendar_day(station.clock.now()), None)
            )
            answer = watch.next_answer(30)
            assert answer.started, answer.words
            _spend(WARM_S)
            memory.enter_context(settled())  # as the verb run does
            first = centre.ask("SELECT coalesce(sum(seq), 0) FROM centre.watermark")[0][0]
            cpu, since_ns, bags = time.process_time(), time.monotonic_ns(), len(watch.timings)
            _spend(seconds)
            cpu = (time.process_time() - cpu) / seconds
            labels = [(one.labelled - one.stable) / 1e6 for one in watch.timings[bags:]]
            last = centre.ask("SELECT coalesce(sum(seq), 0) FROM centre.watermark")[0][0]
            sent = scale.stop()
            window.close()
        finally:
            station.stop()
    return Figures(seen.waits(sent, since_ns), labels, last - first, cpu)


def _spend(seconds: float) -> None:
    """Let Qt run for so long."""
    loop = QEventLoop()  # the application itself would close its windows when it ends
    QTimer.singleShot(round(seconds * 1000), loop.quit)
    loop.exec()


def gone_at(sent: list[Sent], state: Said) -> int | None:
    """When the first frame that says what a state shows went onto the wire; None if none did.

    It is the first of those that say the same, one after the other, before the state was read.
    """
    place = bisect_right(sent, state.read_ns, key=lambda one: one.at_ns) - 1
    while place >= 0 and sent[place].digits != state.digits:
        place -= 1
    while place > 0 and sent[place - 1].digits == state.digits:
        place -= 1
    return sent[place].at_ns if place >= 0 else None


def faults_of(seconds: float, backlog: int, say: Callable[[str], None]) -> list[str]:
    """Measure with a scale of each speed; return what was wrong."""
    faults = []
    for frames_per_s in (FRAMES_PER_S, FLOOD_FRAMES_PER_S):
        figures = measure(seconds, frames_per_s, backlog)
        say(f"{frames_per_s:g} frames a second: {figures.words()}")
        if figures.p99 > MOST_MS:
            faults.append(
                f"{frames_per_s:g} frames a second: p99 {figures.p99:.1f} ms, at most {MOST_MS:g}"
            )
        if len(figures.labels) < seconds / 4:
            faults.append(f"{frames_per_s:g} frames a second: only {len(figures.labels)} bags")
        if not figures.sent:
            faults.append(f"{frames_per_s:g} frames a second: nothing was sent meanwhile")
    return faults


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    found = faults_of(*((FULL_S, FULL_BACKLOG) if full else (SHORT_S, SHORT_BACKLOG)), print)
    for fault in found:
        print(fault)
    print(f"{len(found)} faults")
    return len(found)
