"""What a scale of SMA SCP-0499 tells about itself, and how it is asked. Pure.

The About dialogue (commands A, then B to its END:) names maker, model, revision and serial number;
the Information dialogue (I, then N to its END:) the kind of scale, a capacity for each range, and
the commands of Level 2. Clause numbers differ between reproductions of the standard; the lines are

    SMA:level/revision   MFG:  MOD:  REV:  SN :   TYP:S   CAP:uuu:capacity:count-by:decimals   CMD:
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from decimal import Decimal

from drivers.frames import scp0499_commands as command
from drivers.frames.base import Answer, AnswerKind, Item

_LEVEL = re.compile(r"SMA:([0-9])/([ -~]{1,10})")
_CAPACITY = re.compile(r"CAP:([A-Za-z%]{1,3})[ _]*:([0-9]+(?:\.[0-9]+)?):([1-9][0-9]*):([0-9])")
_ANSWER_NS = 300_000_000
_MOST_LINES = 16


@dataclass(frozen=True, slots=True)
class Range:
    """One weighing range: its unit, its greatest load and its interval in that unit."""

    unit: str
    capacity: Decimal
    interval: Decimal


@dataclass(frozen=True, slots=True)
class ScaleFacts:
    """What a scale said about itself; whatever it did not say is empty.

    Args:
        level: of the protocol, 1 or 2; 0 where it did not say.
        revision: of the protocol.
        maker, model, version, serial: from the About dialogue, as sent.
        ranges: from the smallest.
        commands: letters of the Level 2 commands it knows.
    """

    level: int = 0
    revision: str = ""
    maker: str = ""
    model: str = ""
    version: str = ""
    serial: str = ""
    ranges: tuple[Range, ...] = ()
    commands: str = ""

    def can(self, letter: str) -> bool:
        """Whether the scale knows a command; every scale knows those of Level 1."""
        return letter in "WZDAB" or letter in self.commands


def with_line(facts: ScaleFacts, text: str) -> ScaleFacts:
    """Return the facts with one line of a dialogue; a line that means nothing changes nothing."""
    if level := _LEVEL.fullmatch(text):
        return replace(facts, level=int(level[1]), revision=level[2])
    if capacity := _CAPACITY.fullmatch(text):
        unit, most, count, decimals = capacity.groups()
        interval = Decimal(count).scaleb(-int(decimals))
        return replace(facts, ranges=(*facts.ranges, Range(unit, Decimal(most), interval)))
    said = text[4:].strip(" _")
    match text[:4]:
        case "MFG:":
            return replace(facts, maker=said)
        case "MOD:":
            return replace(facts, model=said)
        case "REV:":
            return replace(facts, version=said)
        case "SN :":
            return replace(facts, serial=said)
        case "CMD:":
            return replace(facts, commands=said)
        case _:
            return facts


def misfit(facts: ScaleFacts, unit: str, interval: Decimal, capacity: Decimal) -> str:
    """Say what in the settings differs from what the scale said; empty where nothing does.

    Args:
        facts: of the scale.
        unit: of the settings.
        interval: of the settings, in ``unit``.
        capacity: of the settings, in ``unit``.
    """
    if not facts.ranges:
        return ""
    said = [one for one in facts.ranges if one.unit == unit]
    if not said:
        return _differ(f"weighs in {facts.ranges[0].unit}", unit)
    if all(one.interval != interval for one in said):
        return _differ(f"has intervals of {said[0].interval:f} {unit}", f"{interval:f} {unit}")
    most = max(one.capacity for one in said)
    if capacity > most:
        return _differ(f"weighs up to {most:f} {unit}", f"{capacity:f} {unit}")
    return ""


def _differ(scale: str, settings: str) -> str:
    return f"the scale says it {scale}, the settings say {settings}: set one of them right"


class Discovery:
    """Asks a scale about itself, line by line; one that does not answer is left alone.

    Args:
        now_ns: steady count at the start.
    """

    def __init__(self, now_ns: int) -> None:
        self._dialogues = [
            (command.information_first(), command.information_next()),
            (command.about_first(), command.about_next()),
        ]
        self._next: bytes | None = self._dialogues[-1][0]
        self._until_ns = now_ns
        self._lines = 0
        self.facts = ScaleFacts()
        """What the scale said so far."""

    @property
    def over(self) -> bool:
        """Whether there is nothing more to ask."""
        return not self._dialogues

    def due(self, now_ns: int) -> bytes | None:
        """Return what to send now, or None."""
        if not self.over and self._next is None and now_ns >= self._until_ns:
            self._end_dialogue()
        if self.over or self._next is None:
            return None
        asked, self._next = self._next, None
        self._until_ns = now_ns + _ANSWER_NS
        return asked

    def heard(self, item: Item) -> None:
        """Take in what came; weights still on their way mean nothing here."""
        if self.over or self._next is not None or not isinstance(item, Answer):
            return
        self._lines += 1
        if item.kind is not AnswerKind.TEXT or item.text == "END:" or self._lines > _MOST_LINES:
            self._end_dialogue()
            return
        self.facts = with_line(self.facts, item.text)
        self._next = self._dialogues[-1][1]

    def _end_dialogue(self) -> None:
        self._dialogues.pop()
        self._lines = 0
        self._next = self._dialogues[-1][0] if self._dialogues else None
