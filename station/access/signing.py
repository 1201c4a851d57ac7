"""Signatures at the station: who is signed on, and the proof that a person signed just now.

A screen asks :meth:`Signing.covers` whether a PIN is needed and :meth:`Signing.sign` with one; the
line asks :meth:`Signing.prove` before it takes an act, so no screen can forget to ask. One
signature proves one act, within three minutes. Whoever signed last is signed on until nobody
touched the screen for a while; that is enough for lesser acts of the same person.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Mapping
from datetime import timedelta

from station.access.credentials import Credentials
from station.access.tries import TryBook
from station.config.packhouse import Person
from station.config.people_rules import PeopleRules
from station.core.rights import Proof, Role, Signed, Signer
from station.errors import EnvironmentFault

BADGES = "badges"
"""Stands for a person where wrong badges are counted: nobody knows whose they are."""
_NS = 1_000_000_000
_PROOF_NS = 180 * _NS
"""Longer than a sheet waits for the second person."""


def _unheard(_who: str, _words: str) -> None:
    """Nobody keeps refused signatures."""


class Signing:
    """Checks PINs and badges and keeps the proofs; may be used from any thread.

    Args:
        people: everybody of the packhouse, by id.
        rules: how people sign.
        credentials: their PINs and badges.
        tries: counts wrong ones.
        monotonic_ns: the steady count.
    """

    def __init__(
        self,
        people: Mapping[str, Person],
        rules: PeopleRules,
        credentials: Credentials,
        tries: TryBook,
        monotonic_ns: Callable[[], int],
    ) -> None:
        self._people, self._rules = people, rules
        self._credentials, self._tries, self._count = credentials, tries, monotonic_ns
        self._lock = threading.Lock()
        self._proofs: dict[str, int] = {}
        self._on, self._touched_ns = "", 0
        self.refused: Callable[[str, str], None] = _unheard
        """Told of each wrong PIN or badge: whose, and in words; for the record."""

    @property
    def required(self) -> bool:
        """Whether PINs and badges are asked for."""
        return self._rules.pins

    @property
    def roles(self) -> Mapping[str, Role]:
        """Roles of everybody who may sign at all, by id."""
        off = self._credentials
        return {who: one.role for who, one in self._people.items() if not off.of(who).disabled}

    def can_sign(self, who: str) -> bool:
        """Whether a person can give the proof that is asked for."""
        return not self._rules.pins or self._credentials.can_sign(who)

    # --- signing --------------------------------------------------------------------------------

    def sign(self, who: str, pin: str, *, stays: bool = True) -> Signed:
        """Sign with a PIN; takes about a tenth of a second, so not on a thread that paints.

        Args:
            who: id of the person.
            pin: as keyed in.
            stays: the person is signed on from now; False for a second person who only signs.
        """
        if who not in self.roles:
            return Signed("", f"{who} may not sign here")
        if not self._credentials.of(who).pin:
            words = f"{who} has no PIN: the manager sets one, station people pin {who}"
            return Signed("", words)
        return self._tried(
            who, lambda: who if self._credentials.pin_fits(who, pin) else "", "PIN", stays
        )

    def sign_with_badge(self, badge: str, *, stays: bool = True) -> Signed:
        """Sign with the code of a badge, whose owner is found by it; as slow as a PIN."""
        return self._tried(BADGES, lambda: self._credentials.owner_of(badge), "badge", stays)

    def _tried(self, counted: str, check: Callable[[], str], what: str, stays: bool) -> Signed:
        try:
            left = self._tries.count(counted)
            if left > timedelta(0):
                return Signed("", f"too many wrong {what}s: wait {_said(left)}")
            who = check()
            if not who or who not in self.roles:
                self.refused(counted, f"wrong {what}, number {self._tries.wrong(counted)}")
                left = self._tries.wait(counted)
                later = f": wait {_said(left)}" if left > timedelta(0) else ""
                return Signed("", f"this {what} is not right{later}")
            self._tries.right(counted)
        except (EnvironmentFault, ValueError) as fault:
            return Signed("", str(fault))
        with self._lock:
            self._proofs[who] = self._count() + _PROOF_NS
            if stays:
                self._on, self._touched_ns = who, self._count()
        return Signed(who)

    # --- proofs ---------------------------------------------------------------------------------

    def covers(self, signer: Signer) -> bool:
        """Whether a signature stands already, so that no PIN need be asked for."""
        if not self._rules.pins or signer.proof is Proof.NAME:
            return True
        return signer.proof is Proof.SIGNED_ON and bool(signer.who) and self.signed_on == signer.who

    def prove(self, signer: Signer) -> str:
        """Use up the proof of a signature; returns why there is none, or empty words."""
        if self.covers(signer):
            return ""
        with self._lock:
            until = self._proofs.pop(signer.who, None)
        if until is not None and until >= self._count():
            return ""
        return f"{signer.who} did not sign: to {signer.act}, a PIN or badge is needed"

    # --- who is signed on -----------------------------------------------------------------------

    @property
    def signed_on(self) -> str:
        """Id of the person who is signed on; empty where nobody is, or nobody touched for long."""
        with self._lock:
            if self._on and self._count() - self._touched_ns > self._idle_ns:
                self._on = ""
            return self._on

    @property
    def open(self) -> bool:
        """Whether the pages behind the packer's screen may be seen."""
        return not self._rules.pins or bool(self.signed_on)

    def touch(self) -> None:
        """Somebody works at the screen: whoever is signed on stays so."""
        if self.signed_on:
            with self._lock:
                self._touched_ns = self._count()

    def sign_off(self) -> None:
        """Nobody is signed on any more; proofs not used are gone."""
        with self._lock:
            self._on = ""
            self._proofs.clear()

    @property
    def _idle_ns(self) -> int:
        return round(self._rules.lock_after.total_seconds() * _NS)


def _said(left: timedelta) -> str:
    seconds = max(1, round(left.total_seconds()))
    return f"{seconds} s" if seconds < 120 else f"{-(-seconds // 60)} minutes"
