"""What is measured: the hot path of a bag, step by step."""

from __future__ import annotations

import itertools
import tempfile
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, replace
from decimal import Decimal
from pathlib import Path

from drivers.frames.scp0499 import Scp0499Parser
from labels.content import PackLabel
from labels.pdf import drawer_of
from labels.readback import read_back
from labels.release import release
from station.app.assembly import software
from station.app.practice import run_choice
from station.app.speed.bare_label import draw_bare, register_fonts
from station.app.speed.batches import batch_rows
from station.app.speed.row import Row, measure
from station.clock import SystemClock
from station.config.catalogue import catalogue_of
from station.config.packhouse import Packhouse
from station.core.ids import new_uid
from station.core.mass import Mass
from station.core.metrology.verdict import classify
from station.core.pack import PackDraft, Quality, Weighing
from station.core.run import Run
from station.line.opening import calendar_day, open_run
from station.reports.label_facts import design_of, pack_label
from station.store.floor import BareTable
from station.store.writer import StationStore

_FRAME = b"\n 1G         258g  \r"
_FRAMES = 1000
_STREAM = b"".join(
    b"\n 1G%c      %4dg  \r" % (b" M"[n % 5 == 0], n * 7 % 259) for n in range(_FRAMES)
)
"""A bag being filled: 259 weights, each a few times, some in motion."""
_ALL_NEW = b"".join(b"\n 1G%c      %4dg  \r" % (b" M"[n % 5 == 0], n) for n in range(_FRAMES))
"""No weight twice: nothing is known by its bytes."""


@dataclass(frozen=True, slots=True)
class Subject:
    """What the rows are measured on: the first product of a packhouse."""

    house: Packhouse
    clock: SystemClock
    run: Run


def subject(house: Packhouse) -> Subject:
    """Open a run of the first product, on paper only."""
    settings = house.settings
    clock = SystemClock(settings.zone)
    at = clock.now()
    product = next(iter(house.products.values()))
    choice = run_choice(house, product, calendar_day(at), None)
    catalogue = catalogue_of(house, software())
    return Subject(house, clock, open_run(choice, catalogue, at, 1, new_uid(at)))


def rows(given: Subject, calls: int) -> Iterator[Row]:
    """Measure row by row; ``calls`` calls of the quick ones, a tenth of the slow ones."""
    yield _frames(f"parse {_FRAMES} frames strictly", _STREAM, calls // 10)
    yield _frames(f"parse {_FRAMES} frames strictly, each one new", _ALL_NEW, calls // 10)
    yield _verdict(given, calls)
    yield from batch_rows(given.run, max(3, calls // 100))
    yield _commit(given, calls)
    yield from _labels(given, calls // 10)


def _frames(name: str, stream: bytes, calls: int) -> Row:
    return measure(
        name,
        lambda: Scp0499Parser().feed(stream),
        "split them at their ends",
        lambda: stream.split(b"\r"),
        calls,
        _FRAMES,
    )


def _verdict(given: Subject, calls: int) -> Row:
    window, net, floor = given.run.window, given.run.product.target, given.run.product.floor
    return measure(
        "judge a bag exactly",
        lambda: classify(net, window),
        "compare two decimals",
        lambda: net.amount < floor.amount,
        calls,
    )


def _commit(given: Subject, calls: int) -> Row:
    """A bag with its lot set, tables and journal entry, against one bare row, on one disk."""
    run, settings = given.run, given.house.settings
    net, tare = run.product.target, run.product.bag.tare
    still = Mass(Decimal(0), net.unit)
    with tempfile.TemporaryDirectory(prefix="packhouse-speed-") as folder:
        home = Path(folder) / "home"
        home.mkdir()
        store = StationStore.open(home, settings.site, settings.station, given.clock)
        with store, closing(BareTable(Path(folder) / "bare.sqlite")) as bare:
            store.add_lots(run.lots, given.clock.now(), "station")
            store.start_run(run, given.clock.now())

            def judged() -> PackDraft:
                return PackDraft(
                    run=run.id,
                    weighing=Weighing(net + tare, tare, net, still, 900, 1, _FRAME.hex()),
                    verdict=classify(net, run.window),
                    quality=Quality.GOOD,
                    reason="",
                    blend_lot=run.blend_lot,
                    lot_set=run.lot_set.key,
                    use_by=run.dating.use_by,
                    production_day=run.dating.production_day,
                    operator=run.operator,
                    judged_at=given.clock.now(),
                )

            bags = iter([judged() for _ in range(2 * calls)])  # judging has a row of its own

            def record() -> None:
                store.add_pack(next(bags))

            return measure(
                "record a bag durably", record, "insert one bare row durably", bare.insert, calls
            )


def _labels(given: Subject, calls: int) -> Iterator[Row]:
    """Labels of one run, each with a serial of its own, as bags come."""
    drawer = drawer_of(design_of(given.run.product))
    first = pack_label("A1-00-000000", given.run, given.house.settings.packer)
    numbers = itertools.count(1)

    def next_label() -> PackLabel:
        return replace(first, serial=f"A1-00-{next(numbers):06d}")

    register_fonts()
    yield measure(
        "draw a label",
        lambda: drawer.draw(next_label()),
        "draw the same marks with reportlab",
        lambda: draw_bare(drawer.plans(first)),
        calls,
    )
    page, symbols = drawer.draw(first), drawer.symbols(first)
    yield measure(
        "release a label: draw it, read it back",
        lambda: release(drawer, next_label()),
        "read its bar codes back",
        lambda: read_back(page, symbols, drawer.dots_per_mm),
        calls,
    )
