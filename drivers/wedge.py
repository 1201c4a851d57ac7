"""Tells a scanner that types like a keyboard from a person, and from a code that types commands.

A wedge scanner types faster than a person can. Keys count as a scan only where they come as fast
as that, are printable, and end with Enter; control, alternate and function keys never belong to
one: a code that holds control characters makes a wedge press them. Pure.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

MS = 1_000_000


@dataclass(frozen=True, slots=True)
class Key:
    """One key as pressed.

    Args:
        text: the character it types; empty for a key that types none; a line feed for Enter.
        at_ns: steady count.
        modified: control, alternate or the system's own key was held.
    """

    text: str
    at_ns: int
    modified: bool = False


@dataclass(frozen=True, slots=True)
class WedgeRules:
    """What keys of a scanner look like.

    Args:
        between_ns: longest time between two keys.
        shortest, longest: characters of a scan.
        prefix: what the scanner types first, as set on it; may be empty.
    """

    between_ns: int = 30 * MS
    shortest: int = 4
    longest: int = 200
    prefix: str = ""


class Typed(StrEnum):
    """Who typed."""

    SCAN = "scan"
    PERSON = "person"
    REFUSED = "refused"


@dataclass(frozen=True, slots=True)
class Judgement:
    """Who typed some keys.

    Args:
        typed: a scanner, a person, or a scanner whose code must not be taken.
        data: of the scan, without prefix and Enter; else empty.
        why: it is no scan, in words; else empty.
    """

    typed: Typed
    data: str = ""
    why: str = ""


def judge_keys(keys: Sequence[Key], rules: WedgeRules) -> Judgement:
    """Say who typed ``keys``, of which Enter is the last.

    Args:
        keys: everything since the last Enter, in order.
        rules: what keys of a scanner look like.
    """
    if not keys or keys[-1].text not in ("\n", "\r"):
        return Judgement(Typed.PERSON, why="it does not end with Enter")
    gaps = (right.at_ns - left.at_ns for left, right in pairwise(keys))
    if len(keys) <= rules.shortest or any(not 0 <= gap <= rules.between_ns for gap in gaps):
        return Judgement(Typed.PERSON, why="it came too slowly, or was too short, for a scanner")
    if any(key.modified or len(key.text) != 1 for key in keys[:-1]):
        return Judgement(Typed.REFUSED, why="the code presses keys that are no text")
    text = "".join(key.text for key in keys[:-1])
    if not text.isascii() or not text.isprintable():
        return Judgement(Typed.REFUSED, why="the code holds a character that no code of ours has")
    if not text.startswith(rules.prefix):
        return Judgement(Typed.REFUSED, why="it lacks what the station's scanner types first")
    data = text[len(rules.prefix) :]
    if not rules.shortest <= len(data) <= rules.longest:
        return Judgement(
            Typed.REFUSED,
            why=f"{len(data)} characters, allowed are {rules.shortest} to {rules.longest}",
        )
    return Judgement(Typed.SCAN, data)
