"""Which facts still count when a station starts: those that nothing has ended or replaced since.

A roll is in until it is taken out, a stop lasts until the line goes on, a study of a tare holds
until the next one of its film. Each fact says by itself what it begins and what it ends, so a start
reads what stands and no more, however long the record is.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from station.core import pauses
from station.core.approvals import APPROVED, PRODUCT, PROPOSED
from station.core.checks.rolls import RollStep
from station.core.checks.scan_back import CLEARED, DIFFERS
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import Move
from station.core.receiving import held_lot


@dataclass(frozen=True, slots=True)
class Standing:
    """What a fact changes among those that stand; keys are empty where it changes nothing.

    Args:
        kind: among the facts of which kind.
        begins: key under which the fact itself stands from now on.
        ends: key of the fact that no longer counts.
        first: where one stands under ``begins`` already it stays; else the new one replaces it.
    """

    kind: EntryKind
    begins: str = ""
    ends: str = ""
    first: bool = False


def standing_of(fact: Fact) -> Standing | None:
    """What a fact begins and ends; None where nothing of its kind stands."""
    rule = _RULES.get(fact.kind)
    return None if rule is None else rule(fact)


def study_key(bag_item: str, film_lot: str) -> str:
    """Key of the newest study of a bag item and film lot."""
    return f"{bag_item}\t{film_lot}"


def line_key(line: str, lot: str = "") -> str:
    """Key of a lot on a line; without a lot, what all of the line's begin with."""
    return f"{line}\t{lot}"


def newest_load_key(line: str, component: str, lot: str = "") -> str:
    """Key of the newest loading of a component at a line; without a lot, its beginning."""
    return f"\tnewest\t{line}\t{component}\t{lot}"


def beside_key(line: str, lot: str) -> str:
    """Key of the loading that made a lot on a line finish, since that lot was loaded last."""
    return f"\tbeside\t{line}\t{lot}"


def approval_key(product: str, digest: str, effective: str = "") -> str:
    """Key of the newest approval of a product version as it is set.

    Args:
        product: article code.
        digest: of everything the version says.
        effective: first production day as ISO text; empty from at once. What all keys of a digest
            begin with is the one of the empty day.
    """
    return f"{PRODUCT}\t{product}\t{digest}\t{effective}"


def _told(fact: Fact, name: str) -> str:
    return str(fact.details.get(name, ""))


def _roll(fact: Fact) -> Standing:
    if fact.result == RollStep.PUT_IN:
        return Standing(fact.kind, begins=fact.uid)
    out = fact.result == RollStep.TAKEN_OUT
    return Standing(fact.kind, ends=_told(fact, "roll") if out else "")


def _scan(fact: Fact) -> Standing:
    if fact.result == DIFFERS:
        return Standing(fact.kind, begins=fact.uid)
    return Standing(fact.kind, ends=_told(fact, "scan") if fact.result == CLEARED else "")


def _suspect(fact: Fact) -> Standing:
    decided = _told(fact, "decides")
    return Standing(fact.kind, begins="" if decided else fact.uid, ends=decided)


def _pause(fact: Fact) -> Standing:
    if fact.result == pauses.STOPPED:
        return Standing(fact.kind, begins=fact.uid)
    return Standing(fact.kind, ends=_told(fact, "pause"))


def _proposal(fact: Fact) -> Standing:
    if fact.result == PROPOSED:
        return Standing(fact.kind, begins=fact.uid)
    target = f"target\t{fact.subject}" if fact.result == APPROVED else ""
    return Standing(fact.kind, begins=target, ends=_told(fact, "answers"))


def _setting(fact: Fact) -> Standing | None:
    if fact.details.get("what") != PRODUCT:
        return None
    effective = fact.details["effective"] or ""
    return Standing(
        fact.kind, begins=approval_key(fact.subject, _told(fact, "digest"), f"{effective}")
    )


def _hold(fact: Fact) -> Standing | None:
    if not held_lot(fact):
        return None  # what keeps bags stands in a table of its own
    if fact.kind is EntryKind.HOLD:
        return Standing(EntryKind.HOLD, begins=fact.uid)
    return Standing(EntryKind.HOLD, ends=_told(fact, "hold"))


def _lot_move(fact: Fact) -> Standing | None:
    key = line_key(_told(fact, "line"), fact.subject)
    if fact.result in (Move.LOADED, Move.REWORK):
        return Standing(fact.kind, begins=key, first=True)
    gone = fact.result in (Move.EMPTY, Move.RETURNED)
    return Standing(fact.kind, ends=key) if gone else None


def _study(fact: Fact) -> Standing:
    return Standing(fact.kind, begins=study_key(fact.subject, _told(fact, "film_lot")))


_RULES: dict[EntryKind, Callable[[Fact], Standing | None]] = {
    EntryKind.ROLL: _roll,
    EntryKind.SCAN_BACK: _scan,
    EntryKind.SUSPECT: _suspect,
    EntryKind.PAUSE: _pause,
    EntryKind.PROPOSAL: _proposal,
    EntryKind.SETTING: _setting,
    EntryKind.HOLD: _hold,
    EntryKind.RELEASE: _hold,
    EntryKind.LOT_MOVE: _lot_move,
    EntryKind.TARE_STUDY: _study,
}
