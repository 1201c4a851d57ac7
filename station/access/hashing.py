"""PINs and badges as hashes: Argon2id over a keyed hash, the key (pepper) in a file of its own.

RFC 9106 section 4, the second recommended option: Argon2id, t = 3 passes, p = 4 lanes, 64 MiB, a
salt of 128 bits, a tag of 256 bits. The pepper keys an HMAC-SHA-256 before that (NIST SP 800-63B
section 5.1.1.2: a keyed hash whose key is stored apart), so a copied credentials file alone gives
nothing to try PINs against.
"""

from __future__ import annotations

import hashlib
import hmac

from argon2 import PasswordHasher, Type
from argon2.exceptions import (
    HashingError,
    InvalidHashError,
    VerificationError,
    VerifyMismatchError,
)
from argon2.low_level import error_to_str, hash_secret_raw

from station.errors import EnvironmentFault

PEPPER_BYTES = 32
_PASSES, _KIB, _LANES, _TAG, _SALT = 3, 64 * 1024, 4, 32, 16
_HASHER = PasswordHasher(
    time_cost=_PASSES,
    memory_cost=_KIB,
    parallelism=_LANES,
    hash_len=_TAG,
    salt_len=_SALT,
    type=Type.ID,
)
_OF_THE_MACHINE = frozenset(map(error_to_str, (-22, -33)))
"""Argon2's words for too little memory, and for threads that cannot be had."""


def pin_hash(person: str, pin: str, pepper: bytes) -> str:
    """Return the hash of a person's PIN, salted anew; takes about a tenth of a second.

    Raises:
        EnvironmentFault: there is too little memory for it.
    """
    try:
        return _HASHER.hash(_keyed("pin", f"{person}\x00{pin}", pepper))
    except HashingError as fault:
        raise _unable(fault) from fault


def pin_fits(kept: str, person: str, pin: str, pepper: bytes) -> bool:
    """Whether a PIN is the one of a kept hash; takes about a tenth of a second.

    Raises:
        ValueError: the kept hash is damaged.
        EnvironmentFault: there is too little memory for it.
    """
    try:
        return _HASHER.verify(kept, _keyed("pin", f"{person}\x00{pin}", pepper))
    except VerifyMismatchError:
        return False
    except (VerificationError, InvalidHashError) as fault:
        if str(fault) in _OF_THE_MACHINE:
            raise _unable(fault) from fault
        raise ValueError(f"the kept PIN of {person} is damaged: set it again") from fault


def badge_hash(badge: str, pepper: bytes) -> str:
    """Return the hash of a badge's code, by which it is also found; as slow as that of a PIN.

    Its salt comes from the pepper and is one for all, so one hash tells whose badge it is.

    Raises:
        EnvironmentFault: there is too little memory for it.
    """
    salt = _keyed("badge salt", "", pepper)[:_SALT]
    code = _keyed("badge", badge, pepper)
    try:
        return hash_secret_raw(code, salt, _PASSES, _KIB, _LANES, _TAG, Type.ID).hex()
    except HashingError as fault:
        raise _unable(fault) from fault


def _unable(fault: Exception) -> EnvironmentFault:
    return EnvironmentFault("PINs and badges cannot be checked now, try again", str(fault))


def _keyed(use: str, text: str, pepper: bytes) -> bytes:
    return hmac.new(pepper, f"{use}\x00{text}".encode(), hashlib.sha256).digest()
