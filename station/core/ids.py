"""Public ids: UUID version 7 (RFC 9562 section 5.7) from a given time and given random bytes."""

from __future__ import annotations

import os
from datetime import UTC, datetime, timedelta
from uuid import UUID

from station.core.pack import Moment

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MILLISECOND = timedelta(milliseconds=1)
_VARIANTS = {digit: "89ab"[int(digit, 16) & 3] for digit in "0123456789abcdef"}
"""The digit with the variant's bits 10 in front, by a random one."""


def uuid7(at: datetime, random: bytes) -> UUID:
    """Return the UUID of a moment: 48 bits of milliseconds, then 74 random bits.

    It sorts roughly by time, but a clock can be set back: never order evidence by it.

    Args:
        at: aware time from 1970 on.
        random: 10 random bytes; the six highest bits give way to version and variant.

    Raises:
        ValueError: ``at`` is naive or before 1970, or ``random`` is not 10 bytes.
    """
    if at.utcoffset() is None or at < _EPOCH:
        raise ValueError(f"{at!r} must be an aware time from 1970 on")
    if len(random) != 10:
        raise ValueError(f"an id needs 10 random bytes, not {len(random)}")
    milliseconds = (at - _EPOCH) // _MILLISECOND
    value = bytearray(milliseconds.to_bytes(6, "big") + random)
    value[6] = 0x70 | value[6] & 0x0F
    value[8] = 0x80 | value[8] & 0x3F
    return UUID(bytes=bytes(value))


def new_uid(at: Moment) -> str:
    """Return a new id for something that happened at ``at``, with the system's random bytes."""
    # A bag waits for this: what uuid7 gives as text, without bytes and a UUID between.
    if at.utc < _EPOCH:
        raise ValueError(f"{at.utc!r} must be a time from 1970 on")
    time, random = f"{(at.utc - _EPOCH) // _MILLISECOND:012x}", os.urandom(10).hex()
    variant = _VARIANTS[random[4]]
    return f"{time[:8]}-{time[8:]}-7{random[1:4]}-{variant}{random[5:8]}-{random[8:]}"
