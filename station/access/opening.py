"""Opens the PINs of a station with what checks them, and has wrong ones put on record."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from station.access.credentials import Credentials
from station.access.signing import Signing
from station.access.tries import TryBook
from station.config.packhouse import Packhouse
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.people import PersonStep, person_fact
from station.line.ports import Clock


@dataclass(frozen=True, slots=True)
class Access:
    """PINs and badges of a station, and the signatures given with them."""

    credentials: Credentials
    signing: Signing


def access_of(house: Packhouse, home: Path, clock: Clock, enter: Callable[[Fact], None]) -> Access:
    """Read the PINs of a station.

    Args:
        house: its settings.
        home: its folder.
        clock: tells the time.
        enter: puts a fact on record; called from the threads that check PINs.

    Raises:
        EnvironmentFault: a file of PINs is damaged or cannot be read.
    """
    credentials = Credentials(home)
    tries = TryBook(home, lambda: clock.now().utc, clock.monotonic_ns)
    signing = Signing(house.people, house.settings.people, credentials, tries, clock.monotonic_ns)
    signing.refused = lambda who, words: enter(
        person_fact(new_uid(clock.now()), who, PersonStep.REFUSED, after=words)
    )
    return Access(credentials, signing)
