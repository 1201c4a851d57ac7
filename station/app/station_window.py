"""The window of a station: every page with the desk it asks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt

from station.app.assembly import Station
from station.app.lead_call import LeadCall
from station.app.manager_desk import ManagerDesk
from station.app.trace_desk import TraceDesk
from station.config.packhouse import Packhouse
from station.core.rights import Role
from station.line.state import Intents
from station.screens.alarm_mark import AlarmMark
from station.screens.alarms import AlarmsPage
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.checks import ChecksPage
from station.screens.doors import Door
from station.screens.handful_guide import HandfulGuide
from station.screens.labels import LabelsPage
from station.screens.lots import LotsPage
from station.screens.manager import ManagerPage
from station.screens.numbers import NumbersPage
from station.screens.offer import LeadOffer, Person
from station.screens.quality import QualityPage, QualitySources
from station.screens.service import ServicePage
from station.screens.shipping import ShippingPage
from station.screens.signing import SignedIntents
from station.screens.theme import PALETTES, Palette, register_fonts
from station.screens.trace import TracePage
from station.screens.window import StationWindow


def station_window(
    bridge: Bridge, station: Station, house: Packhouse, pins: Mapping[str, str] | None = None
) -> StationWindow:
    """The window; ``pins`` are those of a demo, shown beside the names.

    Its pages ask the line by way of the signatures, so that none of them need know of PINs.
    """
    people = tuple(
        Person(one.id, one.name, str(one.role), one.language) for one in house.people.values()
    )
    offer = LeadOffer(tuple(house.products.values()), station.lots.known, people)
    signers = tuple(one for one in people if one.role in (Role.LEAD, Role.QA))
    register_fonts()
    hints = {who: f"demo PIN {pin}" for who, pin in (pins or {}).items()}
    line = SignedIntents(station.line, station.signing, bridge, people, hints)
    palette = PALETTES[house.settings.screen.theme]
    charts = station.home / "charts"
    # As the rows of MORE read: to begin a run, while it goes on, and beside it.
    doors = (
        Door(
            "CHANGE",
            Qt.Key.Key_F8,
            ChangePage(
                bridge, line, station.change, signers, palette=palette, clock=station.clock_desk
            ),
        ),
        Door("LOTS", Qt.Key.Key_F6, LotsPage(bridge, line, station.lots, people, palette=palette)),
        Door(
            "LABELS",
            Qt.Key.Key_F5,
            LabelsPage(bridge, line, station.label_checks, signers, palette=palette),
        ),
        Door(
            "CHECKS",
            Qt.Key.Key_F4,
            ChecksPage(bridge, line, station.checks, people, palette=palette),
        ),
        Door(
            "ALARMS",
            Qt.Modifier.SHIFT | Qt.Key.Key_F2,
            AlarmsPage(
                bridge, line, station.alarms.desk, signers, ZoneInfo(house.settings.zone), palette
            ),
        ),
        Door(
            "NUMBERS",
            Qt.Key.Key_F3,
            NumbersPage(bridge, line, station.numbers, charts, palette=palette),
        ),
        Door(
            "QUALITY",
            Qt.Key.Key_F10,
            QualityPage(bridge, line, QualitySources(*station.quality), people, palette),
        ),
        Door("TRACE", Qt.Key.Key_F7, TracePage(TraceDesk(station.home), palette)),
        Door(
            "SHIPPING",
            Qt.Key.Key_F12,
            ShippingPage(bridge, line, station.shipping, people, palette=palette),
        ),
        Door("SERVICE", Qt.Key.Key_F9, _service(bridge, station, line, people, palette)),
        Door(
            "MANAGER",
            Qt.Key.Key_F11,
            _manager(bridge, station, line, people, charts, palette),
        ),
    )
    window = StationWindow(
        *(bridge, line, offer, palette, station.in_doubt, doors, line),
        language=house.settings.screen.language,
    )
    HandfulGuide(bridge, window.packer, palette)
    AlarmMark(window, station.alarms.desk)
    calls = LeadCall(line, station.clock, house.settings.line)
    window.packer.lead_called.connect(lambda: calls.call(window.packer.state))
    bridge.entered.connect(  # a delivery, a hold or a release changes what may be chosen
        lambda _: window.lead.set_offer(replace(offer, lots=station.lots.known))
    )
    return window


def _service(
    bridge: Bridge, station: Station, line: Intents, people: tuple[Person, ...], palette: Palette
) -> ServicePage:
    desks = station.service
    return ServicePage(bridge, line, desks.desk, desks.learn, desks.swap, people, palette)


def _manager(
    bridge: Bridge,
    station: Station,
    line: Intents,
    people: tuple[Person, ...],
    charts: Path,
    palette: Palette,
) -> ManagerPage:
    desk = ManagerDesk(station.house, station.home, station.clock, station.products)
    managers = tuple(one for one in people if one.role == Role.MANAGER)
    return ManagerPage(bridge, line, desk, managers, charts, palette)
