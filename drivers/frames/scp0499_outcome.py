"""What became of a command of SMA SCP-0499: done, refused or unanswered, as a value. Pure.

A weight that was on its way when the command went out is no answer to it, so only a reply that can
have no other cause counts: the scale says so in the reply's own fields (clause 5.1 of the standard,
1st ed. 1999, from its public reproductions).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from drivers.frames.base import Answer, AnswerKind, Condition, Item, Kind, WeightFrame


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of a command.

    Args:
        command: as sent.
        done: the scale did it.
        words: what it answered, or why it did not; for a person.
        reply: what came; None where nothing did.
    """

    command: bytes
    done: bool
    words: str
    reply: Item | None = None


@dataclass(frozen=True, slots=True)
class _Expected:
    """One command: its name, what shows that it was done, and what that it was refused."""

    name: str
    done: Callable[[WeightFrame], bool]
    refused: frozenset[Condition] = frozenset()


_ZERO_REFUSED = frozenset({Condition.ZERO_ERROR, Condition.INITIAL_ZERO_ERROR})
_TARE_REFUSED = frozenset({Condition.TARE_ERROR})
_WEIGHTS: Mapping[str, _Expected] = {
    "W": _Expected("weight", lambda frame: not frame.high_resolution),
    "P": _Expected("displayed weight", lambda frame: not frame.high_resolution),
    "H": _Expected("high resolution", lambda frame: frame.high_resolution),
    "Q": _Expected("displayed high resolution", lambda frame: frame.high_resolution),
    "R": _Expected("repeat", lambda frame: not frame.high_resolution),
    "S": _Expected("repeat in high resolution", lambda frame: frame.high_resolution),
    "Z": _Expected(
        "zero", lambda frame: frame.condition is Condition.CENTRE_OF_ZERO, _ZERO_REFUSED
    ),
    "T": _Expected("tare", lambda frame: frame.kind is Kind.NET, _TARE_REFUSED),
    "M": _Expected("report of the tare", lambda frame: frame.kind is Kind.TARE, _TARE_REFUSED),
    "C": _Expected("clearing of the tare", lambda frame: frame.kind is Kind.GROSS, _TARE_REFUSED),
    "U": _Expected("change of unit", lambda frame: not frame.high_resolution),
}
_ANSWERS: Mapping[str, tuple[str, AnswerKind]] = {
    "D": ("diagnosis", AnswerKind.DIAGNOSTICS),
    "A": ("first line about the scale", AnswerKind.TEXT),
    "B": ("next line about the scale", AnswerKind.TEXT),
    "I": ("first line of what it can do", AnswerKind.TEXT),
    "N": ("next line of what it can do", AnswerKind.TEXT),
}
_WHY = {
    Condition.ZERO_ERROR: "the scale refused to set zero: empty the pan and let it come to rest",
    Condition.INITIAL_ZERO_ERROR: (
        "the scale found no zero when it was switched on: empty the pan and switch it on again"
    ),
    Condition.TARE_ERROR: "the scale refused the tare: it must be above zero and at rest",
}


def name_of(command: bytes) -> str:
    """What a command is called, for a person."""
    letter = command[1:2].decode("latin-1")
    if letter in _WEIGHTS:
        return _WEIGHTS[letter].name
    return _ANSWERS[letter][0] if letter in _ANSWERS else "command"


def outcome(command: bytes, item: Item) -> Outcome | None:
    """Return what an item says about a command sent before it; None where it says nothing.

    Args:
        command: as sent, LF and CR included.
        item: received after it.
    """
    letter = command[1:2].decode("latin-1")
    match item:
        case Answer(kind=AnswerKind.UNKNOWN_COMMAND):
            return Outcome(command, False, f"{name_of(command)}: the scale does not do that", item)
        case Answer(kind=AnswerKind.LINE_ERROR):
            words = f"{name_of(command)}: it reached the scale damaged, nothing was done"
            return Outcome(command, False, words, item)
        case Answer():
            due = _ANSWERS.get(letter)
            if due is not None and item.kind is due[1]:
                sound = item.kind is not AnswerKind.DIAGNOSTICS or item.text == "no fault"
                return Outcome(command, sound, f"{due[0]}: {item.text}", item)
        case WeightFrame() if letter in _WEIGHTS:
            return _of_weight(command, _WEIGHTS[letter], item)
        case _:
            return None
    return None


def unanswered(command: bytes, name: str) -> Outcome:
    """The outcome of a command that nothing answered in its time.

    Args:
        command: as sent.
        name: what it is called.
    """
    return Outcome(command, False, f"{name}: the scale gave no answer, look at its display")


def _of_weight(command: bytes, expected: _Expected, frame: WeightFrame) -> Outcome | None:
    if frame.condition in expected.refused:
        return Outcome(command, False, _WHY[frame.condition], frame)
    wanted = command[2:-1].decode("latin-1").strip(" ")
    if command[1:2] == b"U" and wanted and frame.unit != wanted:
        return None  # it ignores a unit it does not have, and answers in its own
    if not expected.done(frame):
        return None
    return Outcome(command, True, f"{expected.name}: {_shown(frame)}", frame)


def _shown(frame: WeightFrame) -> str:
    if frame.digits is None:
        return str(frame.condition)
    return f"{frame.digits} {frame.unit} {frame.kind}"
