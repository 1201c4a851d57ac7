"""Signed statements of the centre: what holds at a site from a moment on.

A snapshot is whole: it says everything of its kind, under a version that only rises. The signature
(Ed25519, RFC 8032) is over the very bytes that travel and are kept, so nobody between the centre's
key and the station can change them, not the database's owner either. An older one that is offered
again is known by its version.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

from station.core.journal import Value
from station.line.centre_duty import Listed, Stop

EVERY_SITE = "*"
_FORM = "packhouse snapshot 1"


class SnapshotRefused(ValueError):
    """A snapshot that must not be taken; the message says why."""


class Kind(StrEnum):
    """What a snapshot is about."""

    PRODUCTS = "products"
    """The text of products.toml: products, their recipes, components and bags."""
    PEOPLE = "people"
    """The text of people.toml."""
    RULES = "rules"
    """Rule sets by id and the version they must have."""
    STOPS = "stops"
    """Held lots, and what must not be packed."""


@dataclass(frozen=True, slots=True)
class Snapshot:
    """One of them, read.

    Args:
        site: short code of the site it is for, or ``*`` for every one.
        kind: what it is about.
        version: from 1; a greater one takes the place of a smaller one.
        effective: when it begins to hold, aware.
        made: when it was signed, aware.
        content: text for products and people, lists for rules and stops.
    """

    site: str
    kind: Kind
    version: int
    effective: datetime
    made: datetime
    content: Value

    @property
    def name(self) -> str:
        """Kind, version and site, for a person."""
        return f"{self.kind} {self.version} of {'every site' if self.site == '*' else self.site}"

    def body(self) -> bytes:
        """The bytes that are signed."""
        whole = {
            "form": _FORM,
            "site": self.site,
            "kind": str(self.kind),
            "version": self.version,
            "effective": self.effective.isoformat(),
            "made": self.made.isoformat(),
            "content": self.content,
        }
        return json.dumps(whole, sort_keys=True, ensure_ascii=False, separators=(",", ":")).encode()


def opened(body: bytes, signature: bytes, public: bytes) -> Snapshot:
    """Read a snapshot that is signed by the centre's key.

    Raises:
        SnapshotRefused: it is not, or has a form that is not known here.
    """
    try:
        Ed25519PublicKey.from_public_bytes(public).verify(signature, body)
    except (InvalidSignature, ValueError) as fault:
        raise SnapshotRefused("its signature is not the centre's") from fault
    try:
        told = json.loads(body)
        if told["form"] != _FORM:
            raise SnapshotRefused(f"it has the form {told['form']!r}: a newer program is needed")
        found = Snapshot(
            told["site"],
            Kind(told["kind"]),
            int(told["version"]),
            datetime.fromisoformat(told["effective"]),
            datetime.fromisoformat(told["made"]),
            told["content"],
        )
        if found.effective.utcoffset() is None or found.made.utcoffset() is None:
            raise ValueError("a time without its offset")
        check_content(found)
    except (KeyError, TypeError, ValueError) as fault:
        if isinstance(fault, SnapshotRefused):
            raise
        raise SnapshotRefused(f"it cannot be read: {fault}") from fault
    return found


@dataclass(frozen=True, slots=True)
class CentreStop:
    """One line of a stop list.

    Args:
        uid: UUID version 7; names the hold it becomes at each station.
        stop: what is stopped, and why.
    """

    uid: str
    stop: Stop

    def value(self) -> dict[str, Value]:
        """As it stands in a snapshot."""
        stop = self.stop
        return {"uid": self.uid, "what": str(stop.what), "code": stop.code, "reason": stop.reason}


def stops_of(snapshot: Snapshot) -> tuple[CentreStop, ...]:
    """The lines of a stop list.

    Raises:
        SnapshotRefused: one has another form.
    """
    rows = snapshot.content
    try:
        if not isinstance(rows, list):
            raise TypeError("no list")
        return tuple(
            CentreStop(
                str(row["uid"]),
                Stop(Listed(str(row["what"])), str(row["code"]), str(row["reason"])),
            )
            for row in rows
            if isinstance(row, dict)
        )
    except (KeyError, TypeError, ValueError) as fault:
        raise SnapshotRefused(f"a line of its list cannot be read: {fault}") from fault


def rules_of(snapshot: Snapshot) -> dict[str, str]:
    """Version that each rule set must have, by id.

    Raises:
        SnapshotRefused: it has another form.
    """
    rows = snapshot.content
    if not isinstance(rows, dict) or not all(isinstance(one, str) for one in rows.values()):
        raise SnapshotRefused("it does not name a version for each rule set")
    return {name: str(version) for name, version in rows.items()}


def text_of(snapshot: Snapshot) -> str:
    """The text of a settings file.

    Raises:
        SnapshotRefused: it holds none.
    """
    if not isinstance(snapshot.content, str):
        raise SnapshotRefused("it holds no text")
    return snapshot.content


def check_content(snapshot: Snapshot) -> None:
    """Refuse a content that its kind does not have.

    Raises:
        SnapshotRefused: in words.
    """
    if snapshot.version < 1:
        raise SnapshotRefused(f"version {snapshot.version} is below 1")
    if snapshot.kind is Kind.STOPS:
        stops_of(snapshot)
    elif snapshot.kind is Kind.RULES:
        rules_of(snapshot)
    else:
        text_of(snapshot)
