"""What entered moves and holds of lots mean for the open run: the next bag's lots, code and dates.

A move is completed before it is recorded: it names its run, and where it changes what could be in
the next bag, the new set with a blend lot code and dates of its own. A label with the new lots was
drawn and read back by then; where that cannot be, the move is refused and the old set stays.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from typing import Protocol

from station.core.blend_change import BlendChange, changed_run, redate, with_change
from station.core.clearance import Gate
from station.core.dating import Dating
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import (
    BY_RULE,
    OF_THE_RUN,
    WITH_THE_LINE,
    LineLots,
    LotMove,
    Move,
    Overlap,
    check_rework,
    line_of,
    move_fact,
    move_of,
)
from station.core.lot_set import LotUse, assemble, blend_lot_code
from station.core.lots import InputLot, LotError, LotStatus
from station.core.pack import Moment
from station.core.receiving import held_lot, hold_lot_fact
from station.core.run import Run
from station.line.cycle_lots import holds_at_once
from station.line.cycle_state import Cycle, on_pan
from station.line.opening import calendar_day


@dataclass(frozen=True, slots=True)
class LotRules:
    """The packhouse's rules for lots on a line.

    Args:
        overlap: when a finishing lot counts as gone although nobody said so.
        rework: how old product out of bags may be when it goes back on the line.
    """

    overlap: Overlap = field(default_factory=Overlap)
    rework: timedelta = timedelta(hours=2)


@dataclass(frozen=True, slots=True)
class Prepared:
    """Facts ready to be recorded, and the run as it stands after them; None where it stays.

    Args:
        facts: completed.
        run: for the next bag.
        for_pan: for the bag on the pan, where it may hold lots that went and lots that came.
    """

    facts: tuple[Fact, ...]
    run: Run | None = None
    for_pan: Run | None = None


class Lots(Protocol):
    """What the line asks about lots; on its thread only."""

    def prepare(self, facts: Sequence[Fact], cycle: Cycle, at: Moment) -> Prepared:
        """Complete entered facts.

        Raises:
            ValueError: (LotError, DatingError, LabelRefused) they cannot be; says why.
        """
        ...

    def dated(self, run: Run) -> Run:
        """A run about to open, with the dates of what is on the line already.

        Raises:
            ValueError: (DatingError) something there had its last day.
        """
        ...

    def opening(self, run: Run, at: Moment) -> tuple[Fact, ...]:
        """Moves that the start of a run means."""
        ...

    def overdue(self, now: Moment) -> tuple[Fact, ...]:
        """Moves that the packhouse's rule makes now."""
        ...


class NoLots:
    """Implements Lots where nobody follows them."""

    def prepare(self, facts: Sequence[Fact], cycle: Cycle, at: Moment) -> Prepared:
        """The facts as they are."""
        return Prepared(tuple(facts))

    def dated(self, run: Run) -> Run:
        """The run as it is."""
        return run

    def opening(self, run: Run, at: Moment) -> tuple[Fact, ...]:
        """None."""
        return ()

    def overdue(self, now: Moment) -> tuple[Fact, ...]:
        """None."""
        return ()


class HasLineLots(Protocol):
    """Knows what is on the line."""

    @property
    def line(self) -> LineLots:
        """The lots on the line now."""
        ...


class LotChanges:
    """Implements Lots.

    Args:
        line: short code of the line.
        on_line: knows what is on it.
        lots: what the packhouse knows, by code.
        rules: its rules.
        rehearse: draws and reads back a label; raises where it cannot be printed.
        next_number: number of the next blend lot of a line and production day.
        bags_with: ranges of bags that could hold a lot.
        new_id: makes a UUID version 7 as text for a moment.
    """

    def __init__(
        self,
        line: str,
        on_line: HasLineLots,
        lots: Mapping[str, InputLot],
        rules: LotRules,
        rehearse: Callable[[Run], None],
        next_number: Callable[[str, date], int],
        bags_with: Callable[[str], Sequence[tuple[str, int, int]]],
        new_id: Callable[[Moment], str],
    ) -> None:
        self._line, self._on_line, self._lots, self._rules = line, on_line, lots, rules
        self._rehearse, self._next_number = rehearse, next_number
        self._bags_with, self._new_id = bags_with, new_id
        self._tried: set[tuple[str, datetime]] = set()

    def prepare(self, facts: Sequence[Fact], cycle: Cycle, at: Moment) -> Prepared:
        """Complete holds with the bags they reach, and moves with the set they bring."""
        run = cycle.following or cycle.run
        whole = [self._reaching(fact) for fact in facts]
        if any(_clears_line(fact) for fact in facts):
            whole += self._taken_away(run, at)
        places = [place for place, fact in enumerate(whole) if self._is_move(fact)]
        if not places:
            return Prepared(tuple(whole))
        state = self._on_line.line
        for place in places:
            move = self._checked(move_of(whole[place]), at)
            state = state.after(move, at.utc)
            uid, its_run = whole[place].uid, "" if run is None else run.id
            whole[place] = move_fact(move, uid, self._line, its_run)
        if run is None or self._is_same(run, state):
            return Prepared(tuple(whole))
        self._check_pan(cycle, run)
        change = self._change(run, state, at)
        new, for_pan = changed_run(run, change, self._lots), None
        if on_pan(cycle) and not holds_at_once(run, new) and set(new.lots) - set(run.lots):
            both = replace(
                change,
                lot_set=run.lot_set.union(change.lot_set),
                dating=min(run.dating, change.dating, key=lambda dating: dating.use_by),
            )
            for_pan = changed_run(run, both, self._lots)
            self._rehearse(for_pan)
            whole[places[0]] = with_change(whole[places[0]], both)
            change = replace(change, blend_lot=self._blend_lot(run, 1))
            new = changed_run(run, change, self._lots)
        self._rehearse(new)
        whole[places[-1]] = with_change(whole[places[-1]], change)
        return Prepared(tuple(whole), new, for_pan)

    def dated(self, run: Run) -> Run:
        """A run about to open: rework that the run before left on the line is in its bags too."""
        return replace(run, dating=self._dating(run, run.lots, self._on_line.line))

    def opening(self, run: Run, at: Moment) -> tuple[Fact, ...]:
        """The lots chosen for a run that are not on the line yet are loaded with its start."""
        there = self._on_line.line.codes
        return tuple(
            move_fact(
                LotMove(Move.LOADED, use.lot, use.component, note=OF_THE_RUN),
                self._new_id(at),
                self._line,
                run.id,
            )
            for use in run.lot_set.uses
            if use.lot not in there
        )

    def overdue(self, now: Moment) -> tuple[Fact, ...]:
        """Finishing lots the rule takes for gone; each is offered once, it may be refused."""
        state = self._on_line.line
        began = {one.lot: one.finishing_since or one.since for one in state.lots}
        began |= {one.lot: one.since for one in state.reworks}
        gone = [
            code
            for code in state.run_clear(self._rules.overlap, now.utc)
            if (code, began[code]) not in self._tried
        ]
        self._tried |= {(code, began[code]) for code in gone}
        return tuple(
            move_fact(LotMove(Move.EMPTY, code, note=BY_RULE), self._new_id(now), self._line)
            for code in gone
        )

    def _taken_away(self, run: Run | None, at: Moment) -> list[Fact]:
        """Who signs for a clear line says that lots of the run before are closed or returned."""
        listed = set() if run is None else set(run.lot_set.uses)
        state = self._on_line.line
        gone = [one.lot for one in state.lots if LotUse(one.component, one.lot) not in listed]
        gone += [one.lot for one in state.reworks if not set(one.members) <= listed]
        return [
            move_fact(LotMove(Move.EMPTY, code, note=WITH_THE_LINE), self._new_id(at), self._line)
            for code in gone
        ]

    def _is_move(self, fact: Fact) -> bool:
        return fact.kind is EntryKind.LOT_MOVE and line_of(fact) == self._line

    def _reaching(self, fact: Fact) -> Fact:
        code = held_lot(fact)
        if not code or fact.kind is not EntryKind.HOLD:
            return fact
        if code not in self._lots:
            raise LotError(f"lot {code!r} is not known: check the code")
        return hold_lot_fact(fact.uid, code, str(fact.details["reason"]), self._bags_with(code))

    def _checked(self, move: LotMove, at: Moment) -> LotMove:
        """The move with its component; refused where its lot must not go on a line."""
        if move.move is Move.REWORK:
            check_rework(move, self._rules.rework, at.utc)
            return move
        lot = self._lots.get(move.lot)
        if lot is not None:
            move = replace(move, component=lot.component)
        if move.move is not Move.LOADED:
            return move
        if lot is None:
            raise LotError(f"lot {move.lot!r} is not known: receive it first")
        if lot.status is not LotStatus.FREE:
            raise LotError(f"lot {lot.code} is {lot.status}: it must not be used, call QA")
        if lot.use_by is not None and calendar_day(at) > lot.use_by:
            raise LotError(f"lot {lot.code} had its last day on {lot.use_by}: it must not be used")
        return move

    def _check_pan(self, cycle: Cycle, run: Run) -> None:
        """A bag on the pan may hold what leaves the set."""
        if cycle.following is not None:
            raise LotError(
                "lots changed while a bag was on the pan: lift it before the next change"
            )
        if not on_pan(cycle):
            return
        held = [lot for use in run.lot_set.uses if not self._may_be_used(lot := use.lot)]
        if held:
            raise LotError(
                f"the bag on the pan may hold lot {held[0]}, which is held: set it aside and lift "
                "it, then change the lot"
            )

    def _may_be_used(self, code: str) -> bool:
        lot = self._lots.get(code)
        return lot is not None and lot.status is not LotStatus.HELD

    def _dating(self, run: Run, lots: Sequence[InputLot], state: LineLots) -> Dating:
        return redate(run.product, lots, state.reworks, run.dating.production_day)

    def _is_same(self, run: Run, state: LineLots) -> bool:
        """Whether the next bag's lots and last day stay; rework of the same lots has its own."""
        return state.uses == run.lot_set.uses and self._dating(run, run.lots, state) == run.dating

    def _change(self, run: Run, state: LineLots, at: Moment) -> BlendChange:
        try:
            lot_set = assemble(run.product, state.codes, self._lots, calendar_day(at))
        except LotError as refused:
            raise LotError(f"{refused}; {_TOGETHER}") from refused
        lots = tuple(self._lots[use.lot] for use in lot_set.uses)
        return BlendChange(lot_set, self._blend_lot(run), self._dating(run, lots, state))

    def _blend_lot(self, run: Run, further: int = 0) -> str:
        day = run.dating.production_day
        return blend_lot_code(self._line, day, self._next_number(self._line, day) + further)


def _clears_line(fact: Fact) -> bool:
    return fact.kind is EntryKind.GATE and fact.subject == Gate.CLEARED


_TOGETHER = "take the old lot off and load the next in one step, or end the run"
