"""What a PIN must be, and how wrong ones are slowed down.

Six digits at least, and none of the few that everybody tries first. NIST SP 800-63B section 5.2.2
asks for a limit on failed attempts in a row and for waiting times that grow; the figures here keep
the guesses at one person's PIN below 20 an hour (:func:`wait`).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise

LEAST_DIGITS, MOST_DIGITS = 6, 12
LEAST_BADGE, MOST_BADGE = 8, 40
FREE_TRIES = 3
"""So many wrong ones cost no time: cold hands in gloves miss keys."""
LOCK_AFTER = 10
LOCK = timedelta(minutes=15)
_MOST_S = 30
_NONE = timedelta(0)


class PinError(ValueError):
    """A PIN or badge that cannot be taken; the message says what is allowed."""


@dataclass(frozen=True, slots=True)
class Tries:
    """Wrong PINs of one person since the last right one.

    Args:
        wrong: how many.
        last: when the last one was, in UTC; None before the first.
    """

    wrong: int = 0
    last: datetime | None = None

    def after_wrong(self, now: datetime) -> Tries:
        """With one more."""
        return Tries(self.wrong + 1, now)


def wait(tries: Tries, now: datetime) -> timedelta:
    """How long nothing is tried yet.

    Nothing after the first three; then 1, 2, 4, 8, 16 and 30 s; 15 minutes from the tenth on. A
    clock set back does not make it longer than that, and what it says of the future counts as now.
    """
    if tries.last is None or tries.wrong < FREE_TRIES:
        return _NONE
    if tries.wrong >= LOCK_AFTER:
        whole = LOCK
    else:
        whole = timedelta(seconds=min(_MOST_S, 2 ** (tries.wrong - FREE_TRIES)))
    gone = max(_NONE, now - tries.last)
    return max(_NONE, whole - gone)


def check_pin(pin: str) -> None:
    """Refuse what is no PIN or too easily guessed.

    Raises:
        PinError: in words.
    """
    if not (pin.isascii() and pin.isdigit()):
        raise PinError("a PIN is digits alone")
    if not LEAST_DIGITS <= len(pin) <= MOST_DIGITS:
        raise PinError(f"{len(pin)} digits: a PIN has {LEAST_DIGITS} to {MOST_DIGITS}")
    steps = {(int(after) - int(before)) % 10 for before, after in pairwise(pin)}
    if len(steps) == 1 and steps & {0, 1, 9}:
        raise PinError("equal or counting digits are guessed first: choose others")
    half = pin[: len(pin) // 2]
    if pin in (half * 2, half[:2] * (len(pin) // 2)):
        raise PinError("repeated digits are guessed first: choose others")


def check_badge(badge: str) -> None:
    """Refuse what cannot be the code of a badge.

    Raises:
        PinError: in words.
    """
    if not (badge.isascii() and badge.isprintable()) or " " in badge:
        raise PinError("the code of a badge is printable characters without blanks")
    if not LEAST_BADGE <= len(badge) <= MOST_BADGE:
        allowed = f"{LEAST_BADGE} to {MOST_BADGE}"
        raise PinError(f"{len(badge)} characters: the code of a badge has {allowed}")
