"""Signatures on the command line: the right of a role, and a PIN that no list of commands shows."""

from __future__ import annotations

import getpass
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from station.core.rights import Act, Proof, Signer, refusal, signer
from station.errors import BadInput

if TYPE_CHECKING:
    from station.access.opening import Access
    from station.config.packhouse import Packhouse
    from station.core.facts import Fact
    from station.line.ports import Clock
    from station.store.writer import StationStore


def secret(prompt: str) -> str:
    """Ask for a PIN or a badge: unseen at a terminal, else the next line of the input."""
    if sys.stdin.isatty():
        return getpass.getpass(f"{prompt}: ", stream=sys.stderr)
    return sys.stdin.readline().rstrip("\r\n")


def opened_access(house: Packhouse, home: Path, clock: Clock, store: StationStore) -> Access:
    """The PINs of a station whose store is open here; wrong ones go on record in it.

    Raises:
        EnvironmentFault: a file of them is damaged.
    """
    from station.access.opening import access_of  # slow to load
    from station.core.rights import STATION

    def keep(fact: Fact) -> None:
        store.record((fact,), clock.now(), STATION)

    return access_of(house, home, clock, keep)


def check_right(needed: Signer, access: Access, house: Packhouse) -> None:
    """Refuse who may not do it.

    Raises:
        BadInput: in words.
    """
    if needed.who not in house.people:
        known = ", ".join(house.people)
        raise BadInput(f"--who {needed.who}", f"is nobody of people.toml: {known}")
    refused = refusal((needed,), access.signing.roles)
    if refused:
        raise BadInput(f"--who {needed.who}", refused)


def sign(act: Act, who: str, access: Access, house: Packhouse) -> None:
    """Have a person sign an act, where the settings ask for PINs.

    Raises:
        BadInput: they may not, or the PIN is not right.
    """
    needed = signer(act, who)
    check_right(needed, access, house)
    if not access.signing.required or needed.proof is Proof.NAME:
        return
    give_pin(who, access)


def give_pin(who: str, access: Access) -> None:
    """Have a person give their PIN.

    Raises:
        BadInput: it is not right, or must wait.
    """
    signed = access.signing.sign(who, secret(f"PIN of {who}"))
    if not signed.who:
        raise BadInput(f"--who {who}", signed.words)
