"""Where people sign: one sheet with names, keys and a field for badges, for every page there is.

Pages go on asking the line for what they want. :class:`SignedIntents` stands between them and the
line: what needs a signature waits until the sheet has it, and is dropped in words when nobody
signs. A page need not know that there are PINs.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Protocol

from station.core.facts import Fact
from station.core.label_life import Reprint, Resolve
from station.core.rights import (
    Act,
    Proof,
    Role,
    Signed,
    Signer,
    refusal,
    signer,
    signers,
)
from station.line.state import EntryAnswer, Intents, RunAnswer, RunChoice
from station.screens.bridge import Bridge
from station.screens.offer import Person

NOBODY = "nobody signed"
AT_SCREEN = "work at this screen"

Then = Callable[[tuple[str, ...]], None]
"""Told who signed, in the order of the signatures asked for."""


class SigningSource(Protocol):
    """Whoever knows PINs, badges and proofs."""

    @property
    def open(self) -> bool:
        """Whether the pages behind the packer's screen may be seen."""
        ...

    @property
    def signed_on(self) -> str:
        """Id of the person who is signed on; empty where nobody is."""
        ...

    @property
    def roles(self) -> Mapping[str, Role]:
        """Roles of everybody who may sign, by id."""
        ...

    def can_sign(self, who: str) -> bool:
        """Whether a person has a PIN or a badge."""
        ...

    def covers(self, signer: Signer) -> bool:
        """Whether a signature stands already."""
        ...

    def sign(self, who: str, pin: str, *, stays: bool = True) -> Signed:
        """Sign with a PIN; slow."""
        ...

    def sign_with_badge(self, badge: str, *, stays: bool = True) -> Signed:
        """Sign with a badge; slow."""
        ...

    def touch(self) -> None:
        """Somebody works at the screen."""
        ...

    def sign_off(self) -> None:
        """Nobody is signed on any more."""
        ...


class Asker(Protocol):
    """What asks people for signatures, such as the sheet."""

    def ask(self, needed: Sequence[Signer], then: Then, dropped: Callable[[], None]) -> None:
        """Get signatures, one after another; all or none."""
        ...


class SignedIntents:
    """Implements station.line.state.Intents: passes on what is signed, asks for what is not.

    Args:
        line: takes what is signed.
        source: knows what stands signed already.
        bridge: tells a page that nobody signed.
        people: everybody, with their names.
        hints: a line beside a name on the sheet, by id, such as the PIN of a demo.
    """

    def __init__(
        self,
        line: Intents,
        source: SigningSource,
        bridge: Bridge,
        people: Sequence[Person],
        hints: Mapping[str, str] | None = None,
    ) -> None:
        self._line, self._bridge = line, bridge
        self.source, self.people, self.hints = source, tuple(people), dict(hints or {})
        self.asker: Asker | None = None
        """Asks people; set by the window. Without one nothing is held back here."""

    def set_aside(self, reason: str) -> None:
        """Pass on; the packer sets bags aside."""
        self._line.set_aside(reason)

    def bar(self, source: str, words: str) -> None:
        """Pass on; no act of a person."""
        self._line.bar(source, words)

    def resume(self, who: str) -> None:
        """Go on after a stop, signed."""
        self._sign((signer(Act.GO_ON, who),), lambda by: self._line.resume(by[0]), self._no_run)

    def start_run(self, choice: RunChoice) -> None:
        """Start a run, signed by who leads it."""
        self._sign(
            (signer(Act.START_RUN, choice.lead),),
            lambda by: self._line.start_run(replace(choice, lead=by[0])),
            self._no_run,
        )

    def end_run(self, who: str) -> None:
        """End the run, signed."""
        self._sign((signer(Act.END_RUN, who),), lambda by: self._line.end_run(by[0]), self._no_run)

    def enter(self, facts: tuple[Fact, ...], who: str) -> None:
        """Record facts, signed as their kinds need it."""
        uids = tuple(fact.uid for fact in facts)
        self._sign(
            signers(facts, who) if facts else (),
            lambda by: self._line.enter(facts, by[0] if by else who),
            lambda: self._no_entry(uids),
        )

    def reprint(self, wish: Reprint) -> None:
        """Print a label again, signed."""
        self._sign(
            (signer(Act.PRINT_AGAIN, wish.who),),
            lambda by: self._line.reprint(replace(wish, who=by[0])),
            lambda: self._no_entry((wish.serial,)),
        )

    def resolve(self, answer: Resolve) -> None:
        """Say what became of a label, signed."""
        self._sign(
            (signer(Act.ANSWER_DOUBT, answer.who),),
            lambda by: self._line.resolve(replace(answer, who=by[0])),
            lambda: self._no_entry((answer.serial,)),
        )

    def _sign(self, needed: tuple[Signer, ...], then: Then, dropped: Callable[[], None]) -> None:
        named = tuple(one.who for one in needed)
        stands = all(map(self.source.covers, needed))
        hopeless = any(one.fixed for one in needed) and refusal(needed, self.source.roles)
        if self.asker is None or stands or hopeless:
            then(named)  # the line has the last word
        else:
            self.asker.ask(needed, then, dropped)

    def _no_run(self) -> None:
        self._bridge.answer(RunAnswer(False, NOBODY))

    def _no_entry(self, uids: tuple[str, ...]) -> None:
        self._bridge.enter(EntryAnswer(uids, False, NOBODY))


def at_screen() -> Signer:
    """The signature of whoever wants to see the pages behind the packer's screen."""
    return Signer(Act.OTHER, "", tuple(Role), Proof.SIGNED_ON)
