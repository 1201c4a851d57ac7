"""A shift in the real window: bags, labels and changeovers, and no touch of the packer's.

`python -m tests.campaigns shift --full` packs 2000 bags in three runs, the short form 24. A
simulated packer looks at what the line shows and works the bench scale; a simulated lead passes
every gate and changes the product twice; the station's own window shows it all. Counted as faults:
a touch or a key that reached the window, a run that the window did not show to its end, a bag
without a record or a label, a serial twice, a bag under lots that were not its run's, a chain that
breaks, memory that grows by more than a bag may take. Checks begin and end each run; between them
the bench goes forty times faster than a clock that would ask for one each hour.
"""

import os
import resource
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import timedelta
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication
from typing_extensions import override

from drivers.packer import SimulatedPacker
from station.app.headless import SPEED, pack_run
from station.app.places import demo_settings, packhouse
from station.app.practice import habits_for
from station.app.practice_window import PracticeLine, practice_line
from station.app.qt_side import application
from station.app.station_window import station_window
from station.app.summary import DemoSummary
from station.config.packhouse import Packhouse
from station.core.pack import LabelState, Quality
from station.core.run import Run
from station.line.opening import day_of
from station.line.state import LineState, Verb
from station.screens.window import StationWindow
from station.store.queries import summary, trace_lot

SHORT, FULL, RUNS, SEED = 24, 2000, 3, 9
PATIENCE_S = 600.0
"""A machine that does other work may leave a nice process without a turn for minutes."""
MOST_GROWTH_KB = 16
"""Memory a bag may leave behind, in the mean, once the first run is over."""
_TOUCHES = (
    QEvent.Type.MouseButtonPress,
    QEvent.Type.TouchBegin,
    QEvent.Type.KeyPress,
    QEvent.Type.TabletPress,
)


class Touches(QObject):
    """Counts what reaches the windows of an application from hands."""

    def __init__(self) -> None:
        super().__init__()
        self.count = 0

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.count += event.type() in _TOUCHES
        return False


@dataclass
class Shift:
    """What a shift came to."""

    bags: int = 0
    touches: int = 0
    shown: list[tuple[str, int, set[Verb]]] = field(default_factory=list)
    """Of each run: the name, the count and the verbs that the window showed."""
    runs: list[Run] = field(default_factory=list)
    memory_kb: list[tuple[int, int]] = field(default_factory=list)
    """Bags so far, and memory in use."""
    summary: DemoSummary | None = None
    fault: BaseException | None = None


def memory_kb() -> int:
    """Memory that the process has in use; the most so far where the system tells no more."""
    statm = Path("/proc/self/statm")
    if statm.exists():
        return int(statm.read_text().split()[1]) * resource.getpagesize() // 1024
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return most // 1024 if sys.platform == "darwin" else most


def shift_house() -> Packhouse:
    """The demo packhouse; a check of the scale falls due with runs, not with hours."""
    house = packhouse(demo_settings())
    checks = house.settings.checks
    rarely = replace(checks.schedule, every=timedelta(hours=12))
    settings = replace(house.settings, checks=replace(checks, schedule=rarely))
    return replace(house, settings=settings, qa={})


def pack_shift(bags: int, home: Path, tell: Callable[[int], None]) -> Shift:
    """Pack a shift in the window; Qt's loop runs on this thread, the people on another."""
    house, made, touches = shift_house(), Shift(), Touches()
    with application() as qt, practice_line(house, home, SEED, SPEED) as practice:
        before, began = summary(home), time.monotonic()
        now = practice.station.clock.now()
        window = station_window(practice.bridge, practice.station, house)
        window.make_pages()  # as they are soon after a start
        window.resize(1280, 800)
        window.show()
        qt.installEventFilter(touches)
        with watched(window, practice, made):
            work = threading.Thread(
                target=_work, args=(house, practice, bags, made, tell), name="shift"
            )
            work.start()
            _run_until(qt, lambda: not work.is_alive())
            work.join()
        qt.removeEventFilter(touches)
        window.close()
        window.deleteLater()
        equal, timings = practice.station.desk.read_back_equal, practice.watch.timings
    made.touches = touches.count
    seconds, day = time.monotonic() - began, day_of(now, house.settings.cut_off)
    labels = home / "labels"
    made.summary = DemoSummary(home, labels, day, before, equal, now.utc, seconds, timings)
    return made


@contextmanager
def watched(window: StationWindow, practice: PracticeLine, made: Shift):
    """Note what the window itself shows of each run."""

    def shown(state: LineState) -> None:
        if state.run is None:
            return
        if not made.runs or made.runs[-1].id != state.run.id:
            made.runs.append(state.run)
            made.shown.append(("", 0, set()))
        _, _, verbs = made.shown[-1]
        assert window.packer.state is not None
        verbs.add(window.packer.state.verb)
        name, good = window.packer.header.view.product, window.packer.counts.view.good
        made.shown[-1] = (name, good, verbs)

    practice.bridge.followed.connect(shown)  # after the window, which connected before
    try:
        yield
    finally:
        practice.bridge.followed.disconnect(shown)


def _work(
    house: Packhouse, practice: PracticeLine, bags: int, made: Shift, tell: Callable[[int], None]
) -> None:
    try:
        for number, product in enumerate(list(house.products.values())[:RUNS]):
            share = bags * (number + 1) // RUNS - bags * number // RUNS
            hands = SimulatedPacker(
                practice.bench, practice.watch.cue, habits_for(product), SEED + number
            )

            def progress(done: int) -> None:
                if done > made.bags:
                    made.bags = done
                    made.memory_kb.append((done, memory_kb()))
                    tell(done)

            crew = (practice.lead, practice.papers, hands)
            line, station, watch = practice.line, practice.station, practice.watch
            begun = made.bags
            pack_run(
                *(station, line, house, watch, crew, product, share),
                *(begun, progress, PATIENCE_S),
            )
    except BaseException as fault:  # noqa: BLE001  told by whoever waits
        made.fault = fault


def _run_until(qt: QApplication, over: Callable[[], bool]) -> None:
    timer = QTimer()
    timer.timeout.connect(lambda: qt.quit() if over() else None)
    timer.start(50)
    qt.exec()
    timer.stop()


def faults_of(made: Shift, bags: int) -> list[str]:
    """What was wrong with a shift, in words."""
    if made.fault is not None:
        return [f"it ended early, after {made.bags} bags: {made.fault}"]
    assert made.summary is not None
    document, holds = made.summary.judged()
    faults = [] if holds else [f"the record does not hold: {document}"]
    if made.touches:
        faults.append(f"{made.touches} touches or keys reached the window")
    if made.bags != bags or document["packs"] != bags or document["labels_applied"] != bags:
        faults.append(f"{bags} bags were to be packed, labelled and applied: {document}")
    if len(made.runs) != RUNS:
        faults.append(f"{len(made.runs)} runs were shown instead of {RUNS}")
    for run, (name, good, verbs) in zip(made.runs, made.shown, strict=True):
        if name != run.product.name or good != run.order_size or Verb.ORDER_DONE not in verbs:
            faults.append(f"the window ended the run of {run.product.name} at {name}, {good}")
    faults += _wrong_lots(made)
    growth = growth_kb(made)
    if growth > MOST_GROWTH_KB:
        faults.append(f"each bag leaves {growth:.1f} kB behind")
    return faults


def _wrong_lots(made: Shift) -> list[str]:
    """Ask the record for the bags of each lot: exactly those of the runs that took it."""
    assert made.summary is not None
    home, by_lot = made.summary.home, dict[str, set[str]]()
    for run in made.runs:
        for use in run.lot_set.uses:
            by_lot.setdefault(use.lot, set()).add(run.blend_lot)
    faults = []
    for lot, blends in by_lot.items():
        traced = trace_lot(home, lot)
        if {pack.blend_lot for pack in traced.packs} != blends:
            faults.append(f"bags with lot {lot} stand under other blend lots than {blends}")
        sizes = sum(run.order_size or 0 for run in made.runs if run.blend_lot in blends)
        # On a crowded machine a bag may change after its label: it is set aside, its label void.
        good = sum(
            pack.quality is Quality.GOOD and pack.label is LabelState.APPLIED
            for pack in traced.packs
        )
        if good != sizes:
            faults.append(f"lot {lot} is in {good} good bags with labels, not in {sizes}")
    return faults


def growth_kb(made: Shift) -> float:
    """Memory each bag of the later runs left behind, in the mean; 0 where there are too few."""
    first = len(made.memory_kb) // RUNS
    later = made.memory_kb[first:]
    if len(later) < 100:
        return 0.0
    (bag, begin), (last, end) = later[0], later[-1]
    return (end - begin) / (last - bag)


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    bags, began = FULL if full else SHORT, time.monotonic()

    def tell(done: int) -> None:
        if done % 100 == 0:
            print(f"{done} bags, {time.monotonic() - began:.0f} s, {memory_kb()} kB", flush=True)

    with tempfile.TemporaryDirectory() as home:
        made = pack_shift(bags, Path(home), tell)
        faults = faults_of(made, bags)
        if made.summary is not None and made.fault is None:
            print(made.summary.judged()[0])
    for fault in faults:
        print(fault)
    print(f"{made.bags} bags, {len(made.runs)} runs, {made.touches} touches")
    print(f"memory grew by {growth_kb(made):.2f} kB a bag; {len(faults)} faults")
    return len(faults)
