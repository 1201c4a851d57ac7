"""The input lots on a line: loaded, finishing, and gone again. Pure; one state and its moves.

A lot that was loaded could be in every bag until somebody declares it empty, returns its rest, or
the packhouse's rule says that the belt has run clear. Two lots of one component on the line are an
overlap: both stand in the set of each bag. Wide and true beats narrow and wrong.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.lot_set import LotSet, LotUse
from station.core.lots import LotError
from station.core.mass import Mass

OF_THE_RUN = "chosen at the start of the run"
BY_RULE = "by the rule of the overlap"
WITH_THE_LINE = "signed for with the clear line"


class Move(StrEnum):
    """What happens to a lot at a line."""

    LOADED = "loaded"
    FINISHING = "finishing"
    EMPTY = "empty"
    RETURNED = "returned"
    """Its rest went back to the cooler."""
    WASTED = "wasted"
    """Some of it was thrown away; the rest stays."""
    REWORK = "rework"
    """Product out of bags went back on the line, with all lots it could hold."""


class Stage(StrEnum):
    """How far a lot on the line is."""

    LOADED = "loaded"
    FINISHING = "finishing"


@dataclass(frozen=True, slots=True)
class LotMove:
    """One move.

    Args:
        move: what.
        lot: code of the lot; for a rework the blend lot code its bags carried.
        component: code of the component; empty for a rework.
        quantity: how much, exact; None where nobody weighed it.
        note: why, or how it came about.
        members: for a rework every lot that could be in it.
        use_by: for a rework its earliest last day.
        packed_at: for a rework when the first of its bags was packed, in UTC.
        serials: for a rework the bags it came from.
    """

    move: Move
    lot: str
    component: str = ""
    quantity: Mass | None = None
    note: str = ""
    members: tuple[LotUse, ...] = ()
    use_by: date | None = None
    packed_at: datetime | None = None
    serials: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.quantity is not None and self.quantity.amount < 0:
            raise LotError(f"lot {self.lot}: {self.quantity} is below nothing")
        if self.move is Move.WASTED and (self.quantity is None or not self.quantity.amount):
            raise LotError(f"lot {self.lot}: waste needs its mass: weigh it")
        rework = self.move is Move.REWORK
        if rework and (not self.members or self.use_by is None or self.packed_at is None):
            raise LotError("rework needs the lots, the last day and the time of its bags")


@dataclass(frozen=True, slots=True)
class OnLine:
    """One lot on the line.

    Args:
        lot, component: which.
        stage: loaded, or finishing while the next one is loaded.
        since: when it was loaded first, in UTC.
        bags: bags packed since it began to finish.
        finishing_since: when it did, or None.
    """

    lot: str
    component: str
    stage: Stage
    since: datetime
    bags: int = 0
    finishing_since: datetime | None = None


@dataclass(frozen=True, slots=True)
class Rework:
    """Product out of bags that went back on the line.

    Args:
        lot: blend lot code its bags carried.
        members: every lot that could be in it.
        use_by: its earliest last day.
        packed_at: when the first of its bags was packed.
        since: when it went on the line.
        bags: bags packed since.
    """

    lot: str
    members: tuple[LotUse, ...]
    use_by: date
    packed_at: datetime
    since: datetime
    bags: int = 0


@dataclass(frozen=True, slots=True)
class Overlap:
    """When a finishing lot counts as gone although nobody said so; by default never.

    Args:
        bags: so many bags after the next lot was loaded.
        time: so long after it; with both given, both must be over.
    """

    bags: int | None = None
    time: timedelta | None = None

    def over(self, bags: int, since: datetime, now: datetime) -> bool:
        """Whether the line has run clear."""
        if self.bags is None and self.time is None:
            return False
        enough = self.bags is None or bags >= self.bags
        return enough and (self.time is None or now - since >= self.time)


@dataclass(frozen=True, slots=True)
class LineLots:
    """All lots on one line, in the order they were loaded."""

    lots: tuple[OnLine, ...] = ()
    reworks: tuple[Rework, ...] = ()

    @property
    def uses(self) -> tuple[LotUse, ...]:
        """Every lot that could be in the next bag, with those of rework."""
        plain = tuple(LotUse(one.component, one.lot) for one in self.lots)
        again = tuple(use for rework in self.reworks for use in rework.members)
        return LotSet.of((*plain, *again)).uses if plain or again else ()

    @property
    def codes(self) -> tuple[str, ...]:
        """Codes of :attr:`uses`."""
        return tuple(use.lot for use in self.uses)

    def of(self, component: str) -> tuple[OnLine, ...]:
        """The lots of one component, oldest first."""
        return tuple(one for one in self.lots if one.component == component)

    def packed(self) -> LineLots:
        """A bag was packed: count it where a lot finishes."""
        if not self.reworks and all(one.stage is Stage.LOADED for one in self.lots):
            return self
        lots = tuple(
            replace(one, bags=one.bags + 1) if one.stage is Stage.FINISHING else one
            for one in self.lots
        )
        return LineLots(lots, tuple(replace(one, bags=one.bags + 1) for one in self.reworks))

    def with_bags(self, since: Callable[[datetime], int]) -> LineLots:
        """The line with its bags counted anew.

        Args:
            since: how many bags were packed since a move, by its time.
        """
        lots = tuple(
            one if one.finishing_since is None else replace(one, bags=since(one.finishing_since))
            for one in self.lots
        )
        return LineLots(lots, tuple(replace(one, bags=since(one.since)) for one in self.reworks))

    def run_clear(self, rule: Overlap, now: datetime) -> tuple[str, ...]:
        """Codes of finishing lots and of rework that the rule takes for gone."""
        lots = tuple(
            one.lot
            for one in self.lots
            if one.finishing_since is not None and rule.over(one.bags, one.finishing_since, now)
        )
        return lots + tuple(one.lot for one in self.reworks if rule.over(one.bags, one.since, now))

    def after(self, move: LotMove, at: datetime) -> LineLots:
        """Return the line after a move.

        Loading a lot beside another of its component makes the other finish.

        Raises:
            LotError: the lot is not on the line; names those that are.
        """
        if move.move is Move.LOADED:
            return self._loaded(move, at)
        if move.move is Move.REWORK:
            return self._reworked(move, at)
        there = {one.lot for one in self.lots} | {one.lot for one in self.reworks}
        if move.lot not in there:
            on = ", ".join(sorted(there)) or "none"
            raise LotError(f"lot {move.lot} is not on the line: on it are {on}")
        if move.move is Move.WASTED:
            return self
        if move.move is Move.FINISHING:
            return replace(self, lots=tuple(_finish(one, move.lot, at) for one in self.lots))
        return LineLots(
            tuple(one for one in self.lots if one.lot != move.lot),
            tuple(one for one in self.reworks if one.lot != move.lot),
        )

    def _loaded(self, move: LotMove, at: datetime) -> LineLots:
        if not move.component:
            raise LotError(f"lot {move.lot}: loading it needs its component")
        others = tuple(
            _finish(one, one.lot, at) if one.component == move.component else one
            for one in self.lots
            if one.lot != move.lot
        )
        first = next((one.since for one in self.lots if one.lot == move.lot), at)
        new = OnLine(move.lot, move.component, Stage.LOADED, first)
        return replace(self, lots=(*others, new))

    def _reworked(self, move: LotMove, at: datetime) -> LineLots:
        assert move.use_by is not None
        assert move.packed_at is not None
        there = next((one for one in self.reworks if one.lot == move.lot), None)
        new = Rework(move.lot, move.members, move.use_by, move.packed_at, at)
        if there is not None:
            new = replace(
                new,
                members=LotSet.of((*there.members, *new.members)).uses,
                use_by=min(there.use_by, new.use_by),
                packed_at=min(there.packed_at, new.packed_at),
            )
        others = tuple(one for one in self.reworks if one.lot != move.lot)
        return replace(self, reworks=(*others, new))


def _finish(one: OnLine, lot: str, at: datetime) -> OnLine:
    if one.lot != lot or one.stage is Stage.FINISHING:
        return one
    return replace(one, stage=Stage.FINISHING, bags=0, finishing_since=at)


def check_rework(move: LotMove, most: timedelta, now: datetime) -> None:
    """Refuse rework that is too old.

    Raises:
        LotError: more than ``most`` passed since the first of its bags was packed.
    """
    assert move.packed_at is not None
    age = now - move.packed_at
    if age > most:
        raise LotError(
            f"rework of {move.lot} was packed {_hours(age)} ago: it may go back on the line for "
            f"{_hours(most)}"
        )


def _hours(time: timedelta) -> str:
    return f"{time.total_seconds() / 3600:.1f} h"


# --- moves as facts ---------------------------------------------------------------------------


def move_fact(move: LotMove, uid: str, line: str, run: str = "") -> Fact:
    """The entry that keeps a move.

    Where the move changes what could be in the next bag of an open run, the line adds the new set
    under ``details.set`` before it is recorded (station.line.lot_change).
    """
    members: list[Value] = [[use.component, use.lot] for use in move.members]
    return Fact(
        kind=EntryKind.LOT_MOVE,
        uid=uid,
        subject=move.lot,
        result=str(move.move),
        run=run,
        details={
            "line": line,
            "component": move.component,
            "quantity": None if move.quantity is None else str(move.quantity),
            "note": move.note,
            "members": members,
            "use_by": None if move.use_by is None else move.use_by.isoformat(),
            "packed_at": None if move.packed_at is None else move.packed_at.isoformat(),
            "serials": list(move.serials),
        },
    )


def move_of(fact: Fact) -> LotMove:
    """The move an entry keeps."""
    details = fact.details
    quantity, use_by, packed = details["quantity"], details["use_by"], details["packed_at"]
    members, serials = details["members"], details["serials"]
    assert isinstance(members, list)
    assert isinstance(serials, list)
    return LotMove(
        move=Move(fact.result),
        lot=fact.subject,
        component=str(details["component"]),
        quantity=None if quantity is None else Mass.parse(str(quantity)),
        note=str(details["note"]),
        members=tuple(LotUse(*map(str, one)) for one in members if isinstance(one, list)),
        use_by=None if use_by is None else date.fromisoformat(str(use_by)),
        packed_at=None if packed is None else datetime.fromisoformat(str(packed)),
        serials=tuple(map(str, serials)),
    )


def line_of(fact: Fact) -> str:
    """Short code of the line a move was made at."""
    return str(fact.details["line"])


def lots_after(records: Iterable[FactRecord], line: str) -> LineLots:
    """The lots on a line after all its moves on record, oldest first."""
    state = LineLots()
    for record in records:
        if record.fact.kind is EntryKind.LOT_MOVE and line_of(record.fact) == line:
            state = state.after(move_of(record.fact), record.at.utc)
    return state
