"""What people ask about labels: one printed again, or a doubt answered; durable before it is done.

A copy is counted in the record before it goes to the printer, so a copy that comes out of the
printer always carries a mark of its own, whatever breaks in between.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.label_life import (
    FATE_WORDS,
    STATE_AFTER,
    LabelledBag,
    LabelLifeError,
    Reprint,
    ReprintRule,
    Resolve,
    awaits_answer,
    copy_mark,
    next_copy,
    reprint_fact,
)
from station.core.pack import IN_THE_BATCH, LabelState, Moment, PackRecord
from station.core.rights import STATION
from station.core.run import Run
from station.line.cycle_state import Cycle
from station.line.duties import Duties
from station.line.events import Event, LeftCount, Reissued, Settled
from station.line.ports import Clock, LabelDesk, Store, StoreFault
from station.line.state import EntryAnswer

Answered = tuple[EntryAnswer, Event | None]
_AT_THE_SCALE = (LabelState.RECORDED, LabelState.SUBMITTED, LabelState.SPOOLED)
"""What a first label is until its bag was lifted; a start makes a doubt of it."""


class LabelSteps:
    """Carries out what people ask about labels. Used on the line's thread only.

    Args:
        store: the only way to the disk.
        desk: prints copies.
        clock: tells the time.
        new_id: makes a UUID version 7 as text for a moment.
        rule: who may print a label again.
        duties: are told of every copy.
    """

    def __init__(
        self,
        store: Store,
        desk: LabelDesk,
        clock: Clock,
        new_id: Callable[[Moment], str],
        rule: ReprintRule,
        duties: Duties,
    ) -> None:
        self._store, self._desk, self._clock = store, desk, clock
        self._new_id, self._rule, self._duties = new_id, rule, duties

    def take(self, asked: Reprint | Resolve) -> Answered:
        """Do it; returns the answer, and what the line must be told."""
        try:
            return self._reprint(asked) if isinstance(asked, Reprint) else self._resolve(asked)
        except (LabelLifeError, StoreFault) as refused:
            return EntryAnswer((asked.serial,), False, str(refused)), None

    def _reprint(self, wish: Reprint) -> Answered:
        bag = self._store.labelled(wish.serial)
        copy = next_copy(bag, wish, self._rule)
        at = self._clock.now()
        fact = reprint_fact(wish, copy, bag.run.id, self._new_id(at))
        for record in self._store.record((fact,), at, wish.who):
            self._duties.noted(record)
        self._desk.reissue(wish.serial, bag.run, copy)
        words = f"label {wish.serial} is printed again, marked {copy_mark(copy)}"
        return EntryAnswer((wish.serial,), True, words), Reissued(wish.serial)

    def _resolve(self, answer: Resolve) -> Answered:
        bag = settle(self._store, answer, self._clock.now())
        state = STATE_AFTER[answer.fate]
        if _is_taken_back(bag, state):
            self._duties.taken_back(bag.serial)
        said = f"the label of bag {bag.serial} is {state}: {FATE_WORDS[answer.fate]}"
        return EntryAnswer((bag.serial,), True, said), Settled(bag, state)

    def leaving(self, facts: Iterable[Fact], run: Run | None) -> tuple[LeftCount, ...]:
        """The held bags of the open run that facts, not recorded yet, will end.

        Raises:
            StoreFault: one of them is not in the record, or still on the pan: the line waits for
                its label.
        """
        ended = [
            self._store.labelled(fact.subject)
            for fact in facts
            if fact.kind is EntryKind.DISPOSITION and run is not None and fact.run == run.id
        ]
        counted = [bag for bag in ended if bag.quality in IN_THE_BATCH]
        for bag in counted:
            if bag.label in _AT_THE_SCALE and not bag.copies:
                raise StoreFault(
                    f"bag {bag.serial} has not left the scale, its label is {bag.label}: lift it "
                    "first"
                )
        return tuple(map(LeftCount, counted))

    def take_back(self, serial: str, reason: str, cycle: Cycle) -> None:
        """Record that the last bag, which has a label, was set aside after all.

        Raises:
            StoreFault: it could not be recorded.
        """
        who = STATION if cycle.run is None else cycle.run.operator
        self._store.take_back(serial, reason, self._clock.now(), who)
        self._duties.taken_back(serial)
        self.ticket(cycle.last, cycle.run, reason)

    def ticket(self, bag: PackRecord | None, run: Run | None, reason: str) -> None:
        """Print the ticket of a bag that was set aside."""
        if bag is not None and run is not None:
            self._desk.ticket(bag, run, reason)


def settle(store: Store, answer: Resolve, at: Moment) -> LabelledBag:
    """Record what became of a label; a bag of the batch whose label is void becomes a reject.

    Returns:
        The bag as it was before the answer.

    Raises:
        LabelLifeError: nobody asks about this label, or nobody looked.
        StoreFault: it could not be recorded.
    """
    bag = store.labelled(answer.serial)
    if not awaits_answer(bag):
        raise LabelLifeError(f"the label of bag {bag.serial} is {bag.label}: nothing to answer")
    if not answer.who:
        raise LabelLifeError("an answer needs the id of who looked")
    state, words = STATE_AFTER[answer.fate], FATE_WORDS[answer.fate]
    if _is_taken_back(bag, state):
        store.take_back(bag.serial, words, at, answer.who)
    else:
        store.mark_label(bag.serial, state, at, answer.who, words)
    return bag


def _is_taken_back(bag: LabelledBag, state: LabelState) -> bool:
    return state is LabelState.VOIDED and bag.quality in IN_THE_BATCH
