"""A scale taken into use: which one it is, how it was checked, and who answers for it.

Which scale stands at a line is known by what it says of itself, or by the converter it is plugged
into; a scale that says nothing over a plain serial port cannot be told from another.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Any

from station.core.checks.scale import CheckMade, check_fact, check_of, held_true
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.metrology.scale_suitability import Level

SUBJECT = "scale in use"
TAKEN, REFUSED = "taken into use", "refused"
_MOST_SERIAL = 40


@dataclass(frozen=True, slots=True)
class ScaleIdentity:
    """What tells a scale from others; whatever is not known is empty.

    Args:
        maker, model, version, serial: as the scale says them.
        device: vendor, product and serial number of the USB device it is connected by.
    """

    maker: str = ""
    model: str = ""
    version: str = ""
    serial: str = ""
    device: str = ""

    @property
    def words(self) -> str:
        """The identity for a person."""
        parts = [self.maker, self.model, self.serial and f"serial {self.serial}"]
        said = " ".join(part for part in parts if part)
        by = f"connected by {self.device}" if self.device else ""
        return ", ".join(part for part in (said, by) if part) or "a scale that says nothing"

    def is_other(self, known: ScaleIdentity) -> bool:
        """Whether this is certainly another scale than the known one.

        A line of what a scale says may be lost on the way: what is not known tells nothing.
        """
        own = (self.maker, self.model, self.serial)
        its = (known.maker, known.model, known.serial)
        said = [(one, other) for one, other in zip(own, its, strict=True) if one and other]
        if said:
            return any(one != other for one, other in said)
        return bool(self.device and known.device) and self.device != known.device

    def says_more_than(self, known: ScaleIdentity) -> bool:
        """Whether this may be the known one and says more of itself."""
        own = (self.maker, self.model, self.serial)
        its = (known.maker, known.model, known.serial)
        adds = sum(map(bool, own)) > sum(map(bool, its))
        return adds and not self.is_other(known)


@dataclass(frozen=True, slots=True)
class ScaleSwap:
    """One scale, as it was taken into use.

    Args:
        identity: as it was found.
        serial: number on its plate, read by a person.
        verified: day of its last verification, read from its mark or certificate.
        made: its check with test weights.
        fitness: for each product, its code and how well the scale suits it.
    """

    identity: ScaleIdentity
    serial: str
    verified: date
    made: CheckMade
    fitness: Mapping[str, Level]

    @property
    def refusal(self) -> str:
        """Why the scale may not be used, in words; empty where it may."""
        if not held_true(self.made):
            return "it failed its check with test weights: have it adjusted, then check it again"
        unfit = [code for code, level in self.fitness.items() if level is Level.REFUSE]
        if unfit:
            return f"it does not suit {', '.join(unfit)}: use another scale"
        return ""


def marks(serial: str, verified: str, today: date) -> tuple[str, date]:
    """Return what a person read from the scale's plate.

    Raises:
        ValueError: names what was given and what is allowed.
    """
    serial = serial.strip()
    if not 1 <= len(serial) <= _MOST_SERIAL or not serial.isprintable():
        raise ValueError(f"serial number {serial!r}: give the 1 to 40 characters of the plate")
    try:
        day = date.fromisoformat(verified.strip())
    except ValueError:
        raise ValueError(f"verified {verified!r}: give the day as in {today}") from None
    if not date(2000, 1, 1) <= day <= today:
        raise ValueError(f"verified {day}: give a day from 2000-01-01 to today, {today}")
    return serial, day


def swap_fact(swap: ScaleSwap, uid: str) -> Fact:
    """The entry that keeps a scale taken into use, or refused."""
    identity, check = swap.identity, check_fact(swap.made, uid)
    fitness: dict[str, Value] = {code: str(level) for code, level in swap.fitness.items()}
    return Fact(
        kind=EntryKind.SETTING,
        uid=uid,
        subject=SUBJECT,
        result=REFUSED if swap.refusal else TAKEN,
        details={
            "maker": identity.maker,
            "model": identity.model,
            "version": identity.version,
            "serial": identity.serial,
            "device": identity.device,
            "plate_serial": swap.serial,
            "verified": swap.verified.isoformat(),
            "scale": swap.made.scale,
            "check": dict(check.details),
            "fitness": fitness,
        },
    )


def swap_of(record: FactRecord) -> ScaleSwap | None:
    """The scale of an entry; None where the entry is about something else."""
    fact = record.fact
    if fact.kind is not EntryKind.SETTING or fact.subject != SUBJECT:
        return None
    details: Any = fact.details
    check = Fact(EntryKind.SCALE_CHECK, fact.uid, details["scale"], "kept", "", details["check"])
    return ScaleSwap(
        identity=ScaleIdentity(
            details["maker"],
            details["model"],
            details["version"],
            details["serial"],
            details["device"],
        ),
        serial=details["plate_serial"],
        verified=date.fromisoformat(details["verified"]),
        made=check_of(replace(record, fact=check)),
        fitness={code: Level(level) for code, level in details["fitness"].items()},
    )


def taken(record: FactRecord) -> bool:
    """Whether an entry says that its scale is in use from then on."""
    return record.fact.subject == SUBJECT and record.fact.result == TAKEN


def age_words(verified: date, now: datetime) -> str:
    """How long ago a verification was, for a person."""
    days = (now.date() - verified).days
    return f"verified {verified}, {days} days ago"
