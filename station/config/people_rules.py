"""How people sign at the station, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta


@dataclass(frozen=True, slots=True)
class PeopleRules:
    """How people sign.

    Args:
        pins: whether acts of more than a name's weight need a PIN or badge.
        lock_after: whoever signed on is signed off after so long without a touch.
    """

    pins: bool = True
    lock_after: timedelta = timedelta(minutes=10)
