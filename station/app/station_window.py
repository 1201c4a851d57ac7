"""The window of a station: every page with the desk it asks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from station.app.assembly import Station
from station.app.doors import Within, doors
from station.app.lead_call import LeadCall
from station.config.packhouse import Packhouse
from station.screens.alarm_mark import AlarmMark
from station.screens.bridge import Bridge
from station.screens.handful_guide import HandfulGuide
from station.screens.offer import LeadOffer, Person
from station.screens.signing import SignedIntents
from station.screens.theme import PALETTES, register_fonts
from station.screens.window import StationWindow


def station_window(
    bridge: Bridge, station: Station, house: Packhouse, pins: Mapping[str, str] | None = None
) -> StationWindow:
    """The window; ``pins`` are those of a demo, shown beside the names.

    Its pages ask the line by way of the signatures, so that none of them need know of PINs. They
    are made when their doors are opened first; see :mod:`station.screens.late_doors`.
    """
    people = tuple(
        Person(one.id, one.name, str(one.role), one.language) for one in house.people.values()
    )
    offer = LeadOffer(tuple(house.products.values()), station.lots.known, people)
    register_fonts()
    hints = {who: f"demo PIN {pin}" for who, pin in (pins or {}).items()}
    line = SignedIntents(station.line, station.signing, bridge, people, hints)
    palette = PALETTES[house.settings.screen.theme]
    within = Within(bridge, line, station, house, people, palette)
    window = StationWindow(
        *(bridge, line, offer, palette, station.in_doubt, doors(within), line),
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
