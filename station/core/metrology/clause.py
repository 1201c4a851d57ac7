"""Where a figure of law comes from, how sure its transcription is, and the refusal when it is not.

Every row of every rule table carries a `Clause`. A part nobody could confirm is not guessed: asking
for it raises `RuleRefused` with what is allowed instead.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Status(StrEnum):
    """How a transcribed figure was confirmed."""

    TEXT = "public text"
    ARITHMETIC = "arithmetic"
    MEMORY = "from memory"
    OWN = "own rule of the station"


@dataclass(frozen=True, slots=True)
class Clause:
    """One place in a published rule.

    Args:
        where: the published document and its clause.
        status: how the transcription was confirmed.
    """

    where: str
    status: Status = Status.TEXT

    def __str__(self) -> str:
        return f"{self.where} [{self.status}]"


class RuleRefused(ValueError):
    """A rule set does not cover, or its transcription does not know, what was asked."""
