"""The doors behind the lead's panel, each with the page behind it and the desk that page asks.

A page is imported where it is made: on its door's first opening, or in the quiet after a start.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt

from station.app.assembly import Station
from station.config.packhouse import Packhouse
from station.core.rights import Role
from station.line.state import Intents
from station.screens.bridge import Bridge
from station.screens.doors import Door, DoorPage
from station.screens.offer import Person
from station.screens.theme import Palette


@dataclass(frozen=True, slots=True)
class Within:
    """What the pages of one window share.

    Args:
        bridge: tells what the line says.
        line: takes what people enter, signed.
        station: has the desks.
        house: the settings.
        people: everybody known.
        palette: colours.
    """

    bridge: Bridge
    line: Intents
    station: Station
    house: Packhouse
    people: tuple[Person, ...]
    palette: Palette

    def of(self, *roles: Role) -> tuple[Person, ...]:
        """People of these roles."""
        return tuple(one for one in self.people if one.role in roles)


def doors(within: Within) -> tuple[Door, ...]:
    """Every door, as the rows of MORE read: to begin a run, while it goes on, and beside it."""
    key, shift = Qt.Key, Qt.Modifier.SHIFT
    made = (
        ("CHANGE", key.Key_F8, _change),
        ("LOTS", key.Key_F6, _lots),
        ("LABELS", key.Key_F5, _labels),
        ("CHECKS", key.Key_F4, _checks),
        ("ALARMS", shift | key.Key_F2, _alarms),
        ("NUMBERS", key.Key_F3, _numbers),
        ("QUALITY", key.Key_F10, _quality),
        ("TRACE", key.Key_F7, _trace),
        ("SHIPPING", key.Key_F12, _shipping),
        ("SERVICE", key.Key_F9, _service),
        ("MANAGER", key.Key_F11, _manager),
    )
    return tuple(Door(name, at, partial(make, within)) for name, at, make in made)


def _change(at: Within) -> DoorPage:
    from station.screens.change import ChangePage

    leads = at.of(Role.LEAD, Role.QA)
    clock = at.station.clock_desk
    return ChangePage(at.bridge, at.line, at.station.change, leads, palette=at.palette, clock=clock)


def _lots(at: Within) -> DoorPage:
    from station.screens.lots import LotsPage

    return LotsPage(at.bridge, at.line, at.station.lots, at.people, palette=at.palette)


def _labels(at: Within) -> DoorPage:
    from station.screens.labels import LabelsPage

    signers = at.of(Role.LEAD, Role.QA)
    return LabelsPage(at.bridge, at.line, at.station.label_checks, signers, palette=at.palette)


def _checks(at: Within) -> DoorPage:
    from station.screens.checks import ChecksPage

    return ChecksPage(at.bridge, at.line, at.station.checks, at.people, palette=at.palette)


def _alarms(at: Within) -> DoorPage:
    from station.screens.alarms import AlarmsPage

    signers, zone = at.of(Role.LEAD, Role.QA), ZoneInfo(at.house.settings.zone)
    return AlarmsPage(at.bridge, at.line, at.station.alarms.desk, signers, zone, at.palette)


def _numbers(at: Within) -> DoorPage:
    from station.screens.numbers import NumbersPage

    charts = at.station.home / "charts"
    return NumbersPage(at.bridge, at.line, at.station.numbers, charts, palette=at.palette)


def _quality(at: Within) -> DoorPage:
    from station.screens.quality import QualityPage, QualitySources

    sources = QualitySources(*at.station.quality)
    return QualityPage(at.bridge, at.line, sources, at.people, at.palette)


def _trace(at: Within) -> DoorPage:
    from station.app.trace_desk import TraceDesk
    from station.screens.trace import TracePage

    return TracePage(TraceDesk(at.station.home), at.palette)


def _shipping(at: Within) -> DoorPage:
    from station.screens.shipping import ShippingPage

    return ShippingPage(at.bridge, at.line, at.station.shipping, at.people, palette=at.palette)


def _service(at: Within) -> DoorPage:
    from station.screens.service import ServicePage

    desks = at.station.service
    return ServicePage(
        at.bridge, at.line, desks.desk, desks.learn, desks.swap, at.people, at.palette
    )


def _manager(at: Within) -> DoorPage:
    from station.app.manager_desk import ManagerDesk
    from station.screens.manager import ManagerPage

    station = at.station
    desk = ManagerDesk(at.house, station.home, station.clock, station.products)
    charts = station.home / "charts"
    return ManagerPage(at.bridge, at.line, desk, at.of(Role.MANAGER), charts, at.palette)
