"""What a line's thread asks before it takes what a person wants: the right, and the proof.

Screens ask for PINs so that people can give them; here is where it counts. Whatever reached the
line without a proof is refused in words.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Protocol

from station.core.label_life import Reprint, Resolve
from station.core.rights import STATION, Act, Role, Signer, refusal, signer, signers
from station.line.events import Resumed
from station.line.messages import End, Enter, Message, Start


class Proofs(Protocol):
    """Knows who may sign, and who did. Called on the line's thread."""

    @property
    def roles(self) -> Mapping[str, Role]:
        """Roles of everybody who may sign, by id."""
        ...

    def prove(self, signer: Signer) -> str:
        """Use up the proof of a signature; returns why there is none, or empty words."""
        ...


def signatures(message: Message) -> tuple[Signer, ...]:
    """The signatures that a message needs; none where nobody has to sign."""
    match message:
        case Start(choice):
            return (signer(Act.START_RUN, choice.lead),)
        case End(who) if who != STATION:
            return (signer(Act.END_RUN, who),)
        case Resumed(who) if who != STATION:
            return (signer(Act.GO_ON, who),)
        case Reprint():
            return (signer(Act.PRINT_AGAIN, message.who),)
        case Resolve():
            return (signer(Act.ANSWER_DOUBT, message.who),)
        case Enter(facts, who) if who != STATION and facts:
            return signers(facts, who)
        case _:
            return ()


def unsigned_words(message: Message, proofs: Proofs | None) -> str:
    """Why a message cannot be taken as it is signed; empty where it can."""
    needed = signatures(message)
    if proofs is None or not needed:
        return ""
    refused = refusal(needed, proofs.roles)
    if refused:
        return refused
    return next(filter(None, (proofs.prove(one) for one in needed if one.proof)), "")
