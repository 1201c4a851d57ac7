"""The desks of a station's service page, built in one place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from drivers.link import ScaleLink
from drivers.wire import WireLog
from station.app.learn_desk import LearnDesk
from station.app.scale_line import new_parser
from station.app.service_desk import ServiceDesk
from station.app.swap_desk import SwapDesk
from station.config.packhouse import Packhouse
from station.line.ports import Clock
from station.line.swap_duty import SwapDuty
from station.screens.service_source import Named


@dataclass(frozen=True, slots=True)
class ServiceGates:
    """The desks of the service page."""

    desk: ServiceDesk
    learn: LearnDesk
    swap: SwapDesk


def service_gates(
    house: Packhouse,
    home: Path,
    clock: Clock,
    log: WireLog,
    link: ScaleLink,
    duty: SwapDuty,
    settings: Path | None,
    system: Callable[[], tuple[Named, ...]],
    dwell_ns: int,
) -> ServiceGates:
    """Build the desks.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        log: of the scale's line.
        link: to the scale.
        duty: knows the scale in use.
        settings: folder of the settings; None where they may not be changed.
        system: what is known of the station beside its scale.
        dwell_ns: how long a reading must stand before it is taken by itself.
    """
    scale = house.settings.scale
    desk = ServiceDesk(scale, home, clock, log, link, new_parser(scale), duty.found, system)
    return ServiceGates(
        desk,
        LearnDesk(scale, settings, desk.folder, log, link),
        SwapDesk(house, clock, duty, link, dwell_ns),
    )
