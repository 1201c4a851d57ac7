"""The demo's line: the simulated scale, someone at it, and a station that takes both for real."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from drivers.bench import BenchScale
from drivers.packer import Habits, PackerCue
from drivers.port import PortSettings
from drivers.printer.base import Printer
from drivers.zero_gate import PRESS_PAN, ZERO_IT
from station.app.assembly import Audience, Station
from station.app.scale_line import bench_house
from station.clock import StationClock
from station.config.packhouse import Packhouse, Role
from station.core.mass import Unit
from station.core.product import PackMode, Product
from station.errors import BadInput
from station.line.lot_offer import free_lots
from station.line.state import LineState, RunChoice, Verb

_FRAMES_PER_S = 20.0
_AT_THE_SCALE = {PRESS_PAN: "PRESS PAN", ZERO_IT: "RESTART SCALE"}
"""Troubles that the packer ends without the lead."""


def bench_scale(house: Packhouse, speed: float, seed: int) -> BenchScale:
    """A simulated scale with capacity, interval and unit of the settings.

    Args:
        house: the settings.
        speed: how much faster than real time everything goes.
        seed: same seed, same noise.
    """
    scale = house.settings.scale
    return BenchScale(
        capacity=scale.capacity.in_unit(scale.unit).digits,
        interval=scale.interval.in_unit(scale.unit).digits,
        unit=str(scale.unit),
        frames_per_s=min(1000.0, _FRAMES_PER_S * speed),
        seed=seed,
        speed=speed,
    )


def practice_station(
    house: Packhouse,
    home: Path,
    labels: Path,
    bench: BenchScale,
    audience: Audience,
    printer: Printer | None = None,
    clock: StationClock | None = None,
    config: Path | None = None,
) -> Station:
    """A station on the bench scale; its waits go as fast as the bench does.

    Args:
        house: the settings.
        home: folder of the record.
        labels: folder of the label files.
        bench: the scale.
        audience: who watches.
        printer: where labels go instead of the folder.
        clock: tells the time instead of the machine.
        config: folder of the settings; None leaves their changes unwatched.
    """
    port = PortSettings(bench.url)
    return Station(
        bench_house(house),
        home,
        port,
        labels,
        audience,
        haste=bench.speed,
        printer=printer,
        time=clock,
        settings=config,
        key=home / "practice.key",  # a real station keeps it away from its home
    )


def run_choice(house: Packhouse, product: Product, day: date, order: int | None) -> RunChoice:
    """What the demo's lead chooses for a run of a product.

    Raises:
        BadInput: no lots may be used, or nobody may lead or pack.
    """
    return RunChoice(
        product=product.code,
        version=product.version,
        lots=free_lots(product, house.lots, day),
        lead=lead_of(house),
        operator=_someone(house, Role.PACKER),
        order_size=order,
    )


def lead_of(house: Packhouse) -> str:
    """Id of the demo's lead.

    Raises:
        BadInput: nobody may lead.
    """
    return _someone(house, Role.LEAD)


def second_of(house: Packhouse) -> str:
    """Id of the demo's second person, who approves labels beside the lead.

    Raises:
        BadInput: nobody has the role.
    """
    return _someone(house, Role.QA)


def habits_for(product: Product) -> Habits:
    """How the simulated packer fills a product; common-practice spreads, not plant data.

    A bag of a check-mode product comes filled and sealed, so its net lies about the target; a bag
    of a fill-mode product is filled short and topped up.
    """
    grams = float(product.nominal.grams)
    target = float(product.target.in_unit(Unit.GRAM).amount)
    bag = float(product.bag.tare.in_unit(Unit.GRAM).amount)
    if product.mode is PackMode.CHECK:
        span = float(product.upper.grams - product.floor.grams)
        return Habits(
            bag_g=(bag, 0.02 * bag),
            target_g=float(product.floor.grams) + span / 2,
            rough_short_g=(0.0, span / 3),
        )
    return Habits(
        bag_g=(bag, 0.02 * bag),
        target_g=target,
        rough_short_g=(25.0, min(18.0, grams / 12)),
    )


def cue_of(state: LineState) -> PackerCue:
    """What a packer sees of a line."""
    grams = None if state.amount is None else state.amount.in_unit(Unit.GRAM).amount
    verb = "STOPPED" if state.verb in (Verb.CALL_LEAD, Verb.NO_READING) else str(state.verb)
    verb = _AT_THE_SCALE.get(state.because, verb)
    return PackerCue(verb, grams, state.cycle)


def _someone(house: Packhouse, role: Role) -> str:
    for person in house.people.values():
        if person.role is role:
            return person.id
    raise BadInput("people.toml", f"nobody has the role {role}")
