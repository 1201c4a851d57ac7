"""Heads of the journal's Merkle tree: what is signed, printed as words, and read from a code.

A head says: the first ``size`` entries of this epoch have this root. Whoever keeps one, on paper or
elsewhere, can show later whether those entries are still the same ones (RFC 9162 section 2.1). Its
*words* are 72 bits of a hash over the head: four words of three syllables, each syllable one of 16
consonants and one of 4 vowels, so that they can be read out and typed in. Words are for comparing;
the signature is made over the whole head and the time.
"""

from __future__ import annotations

import hashlib
import re
from dataclasses import dataclass
from datetime import UTC, datetime

_CONSONANTS = "bdfghklmnprstvyz"
_VOWELS = "aeio"
_SYLLABLES = 3
_WORDS = 4
_BITS = 6 * _SYLLABLES * _WORDS

_MARK = "JOURNALHEAD1"
_SAID = re.compile(f"(?:[{_CONSONANTS}][{_VOWELS}]){{{_SYLLABLES * _WORDS}}}")


class HeadError(ValueError):
    """What was given is no head; the message says what one looks like."""


@dataclass(frozen=True, slots=True)
class TreeHead:
    """The root over the first entries of an epoch.

    Args:
        site, station, epoch: whose journal.
        size: how many entries, from the first one on.
        root: 32 bytes.
    """

    site: str
    station: str
    epoch: int
    size: int
    root: bytes

    @property
    def words(self) -> str:
        """The head in four words, such as ``bafodi kesamo …``."""
        digest = hashlib.sha256(self._line().encode()).digest()
        number = int.from_bytes(digest, "big") >> (256 - _BITS)
        syllables = []
        for place in range(_BITS - 6, -1, -6):
            part = (number >> place) & 63
            syllables.append(_CONSONANTS[part >> 2] + _VOWELS[part & 3])
        every = range(0, len(syllables), _SYLLABLES)
        return " ".join("".join(syllables[at : at + _SYLLABLES]) for at in every)

    def statement(self, at: datetime) -> bytes:
        """The bytes that are signed: the head and when it was made, in UTC to the second."""
        return f"{self._line()} {_stamp(at)}".encode()

    def _line(self) -> str:
        names = (_MARK, self.site, self.station, self.epoch, self.size, self.root.hex().upper())
        return " ".join(map(str, names))


@dataclass(frozen=True, slots=True)
class SignedHead:
    """A head with a time and a signature.

    Args:
        head: what is said.
        at: when it was signed, in UTC.
        key: the public key, 32 bytes (Ed25519, RFC 8032).
        signature: 64 bytes over ``head.statement(at)``.
    """

    head: TreeHead
    at: datetime
    key: bytes
    signature: bytes

    def text(self) -> str:
        """One line for a code or a file; digits, capital letters, ``-``, ``:`` and spaces."""
        said = self.head.statement(self.at).decode()
        return f"{said} {self.key.hex().upper()} {self.signature.hex().upper()}"

    @classmethod
    def parse(cls, text: str) -> SignedHead:
        """Read such a line back.

        Raises:
            HeadError: it is none.
        """
        parts = text.split()
        if len(parts) != 9 or parts[0] != _MARK:
            raise HeadError(f"is no signed head: a line of nine parts that starts with {_MARK}")
        try:
            root, key, signature = (bytes.fromhex(parts[place]) for place in (5, 7, 8))
            head = TreeHead(parts[1], parts[2], int(parts[3]), int(parts[4]), root)
            at = datetime.strptime(parts[6], "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=UTC)
        except ValueError as fault:
            raise HeadError(f"is no signed head: {fault}") from fault
        if (len(root), len(key), len(signature)) != (32, 32, 64):
            raise HeadError("is no signed head: its root, key or signature is cut short")
        return cls(head, at, key, signature)


@dataclass(frozen=True, slots=True)
class SaidHead:
    """A head as read from paper: up to which entry, and its words."""

    size: int
    words: str

    @classmethod
    def parse(cls, text: str) -> SaidHead:
        """Read ``1234 bafodi kesamo …``: the number of the entry and four words.

        Raises:
            HeadError: it is none.
        """
        number, _, rest = text.strip().partition(" ")
        said = re.sub(r"[^a-z]", "", rest.lower())
        if not number.isdecimal() or not _SAID.fullmatch(said):
            raise HeadError(
                "is no head: give the number of the entry and the four words as they are printed, "
                'such as "1234 bafodi kesamo tirage nopeza"'
            )
        length = 2 * _SYLLABLES
        words = (said[at : at + length] for at in range(0, len(said), length))
        return cls(int(number), " ".join(words))


def key_id(public: bytes) -> str:
    """A key's short name: the first 16 hex digits of its SHA-256."""
    return hashlib.sha256(public).hexdigest()[:16]


def _stamp(at: datetime) -> str:
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
