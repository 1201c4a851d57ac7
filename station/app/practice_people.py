"""Signatures of the demo: PINs that anybody may know, keyed in by the simulated people."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from station.access.credentials import Credentials
from station.access.signing import Signing
from station.app.assembly import Station
from station.config.packhouse import Packhouse
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.label_life import Reprint, Resolve
from station.core.people import PersonStep, person_fact
from station.core.rights import STATION, Act, Signer, signer, signers
from station.errors import EnvironmentFault
from station.line.state import Intents, RunChoice

_FIRST, _STEP = 731_900, 7


def demo_pins(house: Packhouse) -> Mapping[str, str]:
    """PIN of each person in the demo, by id: they follow from the order of people.toml.

    The settings of the demo packhouse print them beside each person.
    """
    return {who: str(_FIRST + _STEP * place) for place, who in enumerate(house.people, start=1)}


def give_pins(station: Station, only: Collection[str] | None = None) -> None:
    """Set the demo's PINs for people who have none yet, on record; before the station starts.

    Args:
        station: where PINs are asked for; elsewhere nothing is done.
        only: whom to give one; None gives everybody one.
    """
    if not station.signing.required:
        return
    kept: Credentials = station.access.credentials
    at = station.clock.now()
    facts = []
    for who, pin in demo_pins(station.house).items():
        if (only is None or who in only) and not kept.can_sign(who):
            kept.set_pin(who, pin)
            fact = person_fact(
                new_uid(at), who, PersonStep.PIN_SET, "none", "a PIN", "PIN of the demo"
            )
            facts.append(fact)
    if facts:
        station.store.record(facts, at, STATION)


class PracticeIntents:
    """Implements station.line.state.Intents: signs with the demo's PINs, then asks the line.

    Args:
        line: takes what is signed.
        signing: checks the PINs.
        house: whose people sign.
        stays: whoever signs is signed on, as at a screen nobody else uses.
    """

    def __init__(
        self, line: Intents, signing: Signing, house: Packhouse, *, stays: bool = False
    ) -> None:
        self._line, self._signing, self._stays = line, signing, stays
        self._pins = demo_pins(house)

    def set_aside(self, reason: str) -> None:
        """Pass on."""
        self._line.set_aside(reason)

    def bar(self, source: str, words: str) -> None:
        """Pass on."""
        self._line.bar(source, words)

    def resume(self, who: str) -> None:
        """Sign and go on."""
        self._sign((signer(Act.GO_ON, who),))
        self._line.resume(who)

    def start_run(self, choice: RunChoice) -> None:
        """Sign and start."""
        self._sign((signer(Act.START_RUN, choice.lead),))
        self._line.start_run(choice)

    def end_run(self, who: str) -> None:
        """Sign and end."""
        self._sign((signer(Act.END_RUN, who),))
        self._line.end_run(who)

    def enter(self, facts: tuple[Fact, ...], who: str) -> None:
        """Sign and enter."""
        self._sign(signers(facts, who))
        self._line.enter(facts, who)

    def reprint(self, wish: Reprint) -> None:
        """Sign and print again."""
        self._sign((signer(Act.PRINT_AGAIN, wish.who),))
        self._line.reprint(wish)

    def resolve(self, answer: Resolve) -> None:
        """Sign and answer."""
        self._sign((signer(Act.ANSWER_DOUBT, answer.who),))
        self._line.resolve(answer)

    def _sign(self, needed: tuple[Signer, ...]) -> None:
        """Key in the PIN of each person whose signature does not stand already.

        Raises:
            EnvironmentFault: the PIN is another than the demo's.
        """
        for place, one in enumerate(needed):
            if self._signing.covers(one):
                continue
            stays = self._stays and place == 0
            signed = self._signing.sign(one.who, self._pins.get(one.who, ""), stays=stays)
            if not signed.who:
                words = f"{signed.words}; demo PINs hold in a home of the demo alone"
                raise EnvironmentFault(f"{one.who} could not sign to {one.act}", words)
