"""Which role may do which act, and how an act is signed: one table, asked by line and screens.

What stops the line, holds bags or says that something is wrong is never hindered: a name is enough
for it. What opens acceptance again, releases, destroys or prints needs a PIN or badge where the
settings ask for one. An act of two people is never done by one person twice (OWASP ASVS 5.0,
2.3.5: approval by several users). Who may do what is the packhouse's own order; this table is
common practice.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import IntEnum, StrEnum

from station.core.facts import Fact
from station.core.journal import EntryKind

STATION = "station"
"""Signs what the station finds out by itself."""


class Role(StrEnum):
    """What a person is at the station."""

    PACKER = "packer"
    LEAD = "lead"
    QA = "qa"
    MANAGER = "manager"
    SERVICE = "service"


class Proof(IntEnum):
    """What shows that a person is the one named; the greater includes the lesser."""

    NAME = 0
    """The name is enough."""
    SIGNED_ON = 1
    """PIN or badge, once for as long as the person works at the screen."""
    SIGNATURE = 2
    """PIN or badge for this act alone."""


class Act(StrEnum):
    """What people do at the station, in words for a screen."""

    START_RUN = "start a run"
    END_RUN = "end a run"
    GO_ON = "go on after a stop"
    PRINT_AGAIN = "print a label again"
    ANSWER_DOUBT = "say what became of a label"
    RECEIVE = "receive a delivery"
    MOVE_LOT = "move a lot on the line"
    HOLD = "hold"
    RELEASE = "release what is held"
    CHECK_SCALE = "record a good check of the scale"
    REPORT = "record that a check failed"
    DECIDE_SUSPECT = "decide about suspect bags"
    STUDY_TARE = "record a study of empty bags"
    WEIGH_EMPTY = "record an empty bag that fits"
    QA_CHECK = "record a check of quality"
    DISPOSE = "decide what becomes of a bag"
    CHANGE_ROLL = "change or explain a label roll"
    APPROVE_LABEL = "approve a label"
    REFUSE_LABEL = "refuse a label"
    SCAN_LABEL = "scan a label"
    CLEAR_SCAN = "clear a scan that differed"
    SIGN_CHANGE = "sign a change of run"
    PAUSE = "stop the line"
    END_PAUSE = "go on after a pause"
    CALL = "call somebody"
    PROPOSE = "propose a target"
    ANSWER_TARGET = "approve or refuse a target"
    APPROVE_PRODUCT = "approve a product version"
    CHANGE_SETTINGS = "take over changed settings"
    MANAGE_PEOPLE = "set people, PINs and badges"
    CONFIRM_CLOCK = "confirm date and time"
    PACK_UP = "fill a case or close a pallet"
    SHIP = "ship"
    CORRECT = "correct what was recorded"
    REVIEW_DAY = "review and sign a day"
    KEEP_RECORD = "keep, restore or purge the record"
    PURGE = "purge old runs"
    ACKNOWLEDGE = "say that an alarm is seen"
    SHELVE = "shelve an alarm"
    LEAVE = "leave the full screen"
    OTHER = "enter this"


_ANYBODY = tuple(Role)
_LEADING = (Role.LEAD, Role.MANAGER)
_CHECKING = (Role.LEAD, Role.QA, Role.MANAGER)
_QUALITY = (Role.QA, Role.MANAGER)
_AT_LINE = (Role.PACKER, Role.LEAD, Role.QA, Role.MANAGER)
_AT_SCALE = (Role.LEAD, Role.QA, Role.MANAGER, Role.SERVICE)


@dataclass(frozen=True, slots=True)
class Right:
    """Who may do one act, and what must show that it is they.

    Args:
        roles: whose people may.
        proof: least proof, where the settings ask for PINs.
        second: who may be the other one of an act of two people; empty for an act of one.
    """

    roles: tuple[Role, ...]
    proof: Proof
    second: tuple[Role, ...] = ()


RIGHTS: Mapping[Act, Right] = {
    Act.START_RUN: Right(_LEADING, Proof.SIGNATURE),
    Act.END_RUN: Right(_LEADING, Proof.SIGNED_ON),
    Act.GO_ON: Right(_LEADING, Proof.SIGNED_ON),
    Act.PRINT_AGAIN: Right(_AT_LINE, Proof.SIGNATURE),
    Act.ANSWER_DOUBT: Right(_AT_LINE, Proof.SIGNED_ON),
    Act.RECEIVE: Right(_AT_LINE, Proof.NAME),
    Act.MOVE_LOT: Right(_AT_LINE, Proof.NAME),
    Act.HOLD: Right(_ANYBODY, Proof.NAME),
    Act.RELEASE: Right(_QUALITY, Proof.SIGNATURE),
    Act.CHECK_SCALE: Right(_AT_SCALE, Proof.SIGNED_ON),
    Act.REPORT: Right(_ANYBODY, Proof.NAME),
    Act.DECIDE_SUSPECT: Right(_CHECKING, Proof.SIGNATURE),
    Act.STUDY_TARE: Right(_CHECKING, Proof.SIGNATURE),
    Act.WEIGH_EMPTY: Right(_CHECKING, Proof.SIGNED_ON),
    Act.QA_CHECK: Right(_CHECKING, Proof.SIGNED_ON),
    Act.DISPOSE: Right(_CHECKING, Proof.SIGNED_ON),
    Act.CHANGE_ROLL: Right(_CHECKING, Proof.SIGNED_ON),
    Act.APPROVE_LABEL: Right(_LEADING, Proof.SIGNATURE, second=_CHECKING),
    Act.REFUSE_LABEL: Right(_ANYBODY, Proof.NAME),
    Act.SCAN_LABEL: Right(_AT_LINE, Proof.NAME),
    Act.CLEAR_SCAN: Right(_CHECKING, Proof.SIGNATURE),
    Act.SIGN_CHANGE: Right(_CHECKING, Proof.SIGNED_ON),
    Act.PAUSE: Right(_ANYBODY, Proof.NAME),
    Act.END_PAUSE: Right(_CHECKING, Proof.SIGNED_ON),
    Act.CALL: Right(_ANYBODY, Proof.NAME),
    Act.PROPOSE: Right(_AT_LINE, Proof.NAME),
    Act.ANSWER_TARGET: Right((Role.MANAGER,), Proof.SIGNATURE),
    Act.APPROVE_PRODUCT: Right((Role.MANAGER,), Proof.SIGNATURE),
    Act.CHANGE_SETTINGS: Right((Role.LEAD, Role.MANAGER, Role.SERVICE), Proof.SIGNATURE),
    Act.MANAGE_PEOPLE: Right((Role.MANAGER,), Proof.SIGNATURE),
    Act.CONFIRM_CLOCK: Right(_CHECKING, Proof.SIGNATURE),
    Act.PACK_UP: Right(_AT_LINE, Proof.NAME),
    Act.SHIP: Right(_AT_LINE, Proof.SIGNED_ON),
    Act.CORRECT: Right(_CHECKING, Proof.SIGNED_ON),
    Act.REVIEW_DAY: Right(_QUALITY, Proof.SIGNATURE),
    Act.KEEP_RECORD: Right((Role.MANAGER, Role.SERVICE), Proof.SIGNATURE),
    Act.PURGE: Right((Role.MANAGER,), Proof.SIGNATURE),
    Act.ACKNOWLEDGE: Right(_AT_LINE, Proof.NAME),
    Act.SHELVE: Right(_LEADING, Proof.SIGNED_ON),
    Act.LEAVE: Right((Role.LEAD, Role.MANAGER, Role.SERVICE), Proof.SIGNATURE),
    Act.OTHER: Right(_CHECKING, Proof.SIGNED_ON),
}

_ALWAYS = ""
"""Stands for every result of a kind that no other row names."""
_ACTS: Mapping[tuple[EntryKind, str], Act] = {
    (EntryKind.DELIVERY, _ALWAYS): Act.RECEIVE,
    (EntryKind.LOT_MOVE, _ALWAYS): Act.MOVE_LOT,
    (EntryKind.SCALE_CHECK, _ALWAYS): Act.CHECK_SCALE,
    (EntryKind.SCALE_CHECK, "failed"): Act.REPORT,
    (EntryKind.SUSPECT, _ALWAYS): Act.DECIDE_SUSPECT,
    (EntryKind.TARE_STUDY, _ALWAYS): Act.STUDY_TARE,
    (EntryKind.EMPTY_BAG, _ALWAYS): Act.WEIGH_EMPTY,
    (EntryKind.EMPTY_BAG, "does not fit"): Act.REPORT,
    (EntryKind.QA_CHECK, _ALWAYS): Act.QA_CHECK,
    (EntryKind.QA_CHECK, "failed"): Act.REPORT,
    (EntryKind.HOLD, _ALWAYS): Act.HOLD,
    (EntryKind.RELEASE, _ALWAYS): Act.RELEASE,
    (EntryKind.DISPOSITION, _ALWAYS): Act.DISPOSE,
    (EntryKind.ROLL, _ALWAYS): Act.CHANGE_ROLL,
    (EntryKind.FIRST_OFF, _ALWAYS): Act.APPROVE_LABEL,
    (EntryKind.FIRST_OFF, "refused"): Act.REFUSE_LABEL,
    (EntryKind.SCAN_BACK, _ALWAYS): Act.SCAN_LABEL,
    (EntryKind.SCAN_BACK, "cleared"): Act.CLEAR_SCAN,
    (EntryKind.REPRINT, _ALWAYS): Act.PRINT_AGAIN,
    (EntryKind.GATE, _ALWAYS): Act.SIGN_CHANGE,
    (EntryKind.PAUSE, _ALWAYS): Act.END_PAUSE,
    (EntryKind.PAUSE, "stopped"): Act.PAUSE,
    (EntryKind.CALL, _ALWAYS): Act.CALL,
    (EntryKind.PROPOSAL, _ALWAYS): Act.PROPOSE,
    (EntryKind.PROPOSAL, "approved"): Act.ANSWER_TARGET,
    (EntryKind.PROPOSAL, "refused"): Act.ANSWER_TARGET,
    (EntryKind.SETTING, _ALWAYS): Act.CHANGE_SETTINGS,
    (EntryKind.SETTING, "approved"): Act.APPROVE_PRODUCT,
    (EntryKind.PERSON, _ALWAYS): Act.MANAGE_PEOPLE,
    (EntryKind.PERSON, "left the full screen"): Act.LEAVE,
    (EntryKind.CLOCK, _ALWAYS): Act.CONFIRM_CLOCK,
    (EntryKind.STATION_KEY, _ALWAYS): Act.KEEP_RECORD,
    (EntryKind.HEAD, _ALWAYS): Act.KEEP_RECORD,
    (EntryKind.BACKUP, _ALWAYS): Act.KEEP_RECORD,
    (EntryKind.RESTORE, _ALWAYS): Act.KEEP_RECORD,
    (EntryKind.PURGE, _ALWAYS): Act.PURGE,
    (EntryKind.CASE, _ALWAYS): Act.PACK_UP,
    (EntryKind.PALLET, _ALWAYS): Act.PACK_UP,
    (EntryKind.UNIT_LABEL, _ALWAYS): Act.PACK_UP,
    (EntryKind.SHIPMENT, _ALWAYS): Act.SHIP,
    (EntryKind.CORRECTION, _ALWAYS): Act.CORRECT,
    (EntryKind.BIN_COUNT, _ALWAYS): Act.DISPOSE,
    (EntryKind.REVIEW, _ALWAYS): Act.REVIEW_DAY,
    (EntryKind.REFERENCE, _ALWAYS): Act.QA_CHECK,
    (EntryKind.DISK, _ALWAYS): Act.KEEP_RECORD,
    (EntryKind.ALARM, _ALWAYS): Act.ACKNOWLEDGE,
    (EntryKind.ALARM, "shelved"): Act.SHELVE,
}


@dataclass(frozen=True, slots=True)
class Signer:
    """One signature that something needs.

    Args:
        act: what is signed.
        who: id of the person named for it; may be empty.
        roles: whose people may sign.
        proof: least proof.
        fixed: the entry itself names the person, so nobody else can sign instead.
    """

    act: Act
    who: str
    roles: tuple[Role, ...]
    proof: Proof
    fixed: bool = False


@dataclass(frozen=True, slots=True)
class Signed:
    """What became of a PIN or a badge.

    Args:
        who: id of the person; empty where it was refused.
        words: why it was refused and what to do; empty where it was not.
    """

    who: str
    words: str = ""


def act_of(fact: Fact) -> Act:
    """What entering a fact means; a kind without a row is :attr:`Act.OTHER`."""
    always = _ACTS.get((fact.kind, _ALWAYS), Act.OTHER)
    return _ACTS.get((fact.kind, fact.result), always)


def signer(act: Act, who: str) -> Signer:
    """The one signature of an act."""
    right = RIGHTS[act]
    return Signer(act, who, right.roles, right.proof)


def signers(facts: Sequence[Fact], who: str) -> tuple[Signer, ...]:
    """The signatures that facts need together, the one of ``who`` first.

    One signature stands for all the facts: it needs the right to each, and the greatest proof.
    """
    needed = [RIGHTS[act_of(fact)] for fact in facts]
    gravest = max(facts, key=lambda fact: RIGHTS[act_of(fact)].proof)
    roles = tuple(role for role in Role if all(role in right.roles for right in needed))
    act = act_of(gravest)
    fixed = any(RIGHTS[act_of(fact)].second for fact in facts)
    first = Signer(act, who, roles, RIGHTS[act].proof, fixed=fixed)
    others = dict.fromkeys(other for fact in facts if (other := _other(fact)) is not None)
    return (first, *others)


def _other(fact: Fact) -> Signer | None:
    """The second signature of a fact: always of an act of two, else where a witness is named."""
    act = act_of(fact)
    right = RIGHTS[act]
    named = str(fact.details.get("second") or fact.details.get("witness") or "")
    roles = right.second or (_AT_LINE if named else ())
    return Signer(act, named, roles, right.proof, fixed=True) if roles else None


def refusal(needed: Iterable[Signer], roles: Mapping[str, Role]) -> str:
    """Why signatures cannot stand, in one sentence with what is allowed; empty where they can.

    Args:
        needed: the signatures of one entry.
        roles: of everybody who may sign at all, by id.
    """
    signed: list[str] = []
    for one in needed:
        if one.who in signed:
            return f"to {one.act}, two different people sign: {one.who} signed already"
        signed.append(one.who)
        role = roles.get(one.who)
        if role is None:
            return f"{one.who or 'nobody'} may not sign here: choose a person of people.toml"
        if role not in one.roles:
            may = ", ".join(one.roles) or "nobody alone"
            return f"{one.who} ({role}) may not {one.act}: allowed is {may}"
    return ""
