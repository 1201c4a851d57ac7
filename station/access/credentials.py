"""The file of PINs and badges beside the record: hashes alone, and never in the journal.

Three files in the folder ``access`` of the station's home: ``credentials.json`` holds the hashes
and who is disabled, ``pepper`` the key without which the hashes are of no use, ``tries.json`` the
wrong PINs. Only the station's own user can read them.
"""

from __future__ import annotations

import hmac
import secrets
import threading
from dataclasses import dataclass, replace
from pathlib import Path

from station.access.hashing import PEPPER_BYTES, badge_hash, pin_fits, pin_hash
from station.access.private_file import read_bytes, read_object, write_bytes, write_object
from station.core.pins import PinError, check_badge, check_pin
from station.errors import EnvironmentFault

FOLDER = "access"


@dataclass(frozen=True, slots=True)
class Credential:
    """What one person has.

    Args:
        pin, badge: hashes; empty where there is none.
        disabled: the person signs nothing any more.
    """

    pin: str = ""
    badge: str = ""
    disabled: bool = False


class Credentials:
    """PINs and badges of a station; may be used from any thread.

    Args:
        home: the station's folder.

    Raises:
        EnvironmentFault: a file of them is damaged or cannot be read.
    """

    def __init__(self, home: Path) -> None:
        self._file = home / FOLDER / "credentials.json"
        self._pepper_file = home / FOLDER / "pepper"
        self._lock = threading.Lock()
        self._people = {
            str(who): Credential(
                str(kept.get("pin", "")), str(kept.get("badge", "")), bool(kept.get("disabled"))
            )
            for who, kept in read_object(self._file).get("people", {}).items()
        }
        self._pepper = read_bytes(self._pepper_file) or b""
        if self._people and len(self._pepper) != PEPPER_BYTES:
            raise EnvironmentFault(
                f"{self._pepper_file} is missing or damaged",
                f"bring it back, or remove {self._file} and set PINs and badges again",
            )

    def of(self, who: str) -> Credential:
        """What a person has."""
        return self._people.get(who, Credential())

    def can_sign(self, who: str) -> bool:
        """Whether a person has a PIN or a badge and is not disabled."""
        kept = self.of(who)
        return bool(kept.pin or kept.badge) and not kept.disabled

    @property
    def any_set(self) -> bool:
        """Whether anybody has a PIN or badge."""
        return any(self.can_sign(who) for who in self._people)

    def set_pin(self, who: str, pin: str) -> None:
        """Set or replace a person's PIN.

        Raises:
            PinError: it is none, or too easily guessed.
            EnvironmentFault: it could not be kept; the old one stands.
        """
        check_pin(pin)
        made = pin_hash(who, pin, self._made_pepper())
        self._keep(who, replace(self.of(who), pin=made))

    def set_badge(self, who: str, badge: str) -> None:
        """Set or replace a person's badge.

        Raises:
            PinError: it is none, or somebody else's.
            EnvironmentFault: it could not be kept; the old one stands.
        """
        check_badge(badge)
        made = badge_hash(badge, self._made_pepper())
        for other, kept in self._people.items():
            if other != who and kept.badge and hmac.compare_digest(kept.badge, made):
                raise PinError(f"this badge is that of {other}: give each person their own")
        self._keep(who, replace(self.of(who), badge=made))

    def set_disabled(self, who: str, disabled: bool) -> None:
        """Let a person sign no more, or again; PIN and badge of who is disabled are forgotten."""
        self._keep(who, Credential(disabled=True) if disabled else Credential())

    def pin_fits(self, who: str, pin: str) -> bool:
        """Whether this is the person's PIN; takes about a tenth of a second either way.

        Raises:
            ValueError: what was kept of it is damaged.
        """
        kept = self.of(who)
        if not kept.pin or kept.disabled:
            return False
        return pin_fits(kept.pin, who, pin, self._pepper)

    def owner_of(self, badge: str) -> str:
        """Id of the person whose badge this is; empty where it is nobody's."""
        if not any(kept.badge for kept in self._people.values()):
            return ""
        made = badge_hash(badge, self._pepper)
        for who, kept in self._people.items():
            if kept.badge and not kept.disabled and hmac.compare_digest(kept.badge, made):
                return who
        return ""

    def _made_pepper(self) -> bytes:
        with self._lock:
            if len(self._pepper) != PEPPER_BYTES:
                made = secrets.token_bytes(PEPPER_BYTES)
                write_bytes(self._pepper_file, made)
                self._pepper = made
            return self._pepper

    def _keep(self, who: str, credential: Credential) -> None:
        with self._lock:
            people = {**self._people, who: credential}
            written = {
                one: {"pin": kept.pin, "badge": kept.badge, "disabled": kept.disabled}
                for one, kept in people.items()
            }
            write_object(self._file, {"people": written})
            self._people = people
