"""The station's signing key: a file of its own, outside the record.

Ed25519 (RFC 8032), kept as PKCS #8 in PEM, readable by its owner alone. Whoever can rewrite the
whole record can also rewrite its chain and its roots, but cannot sign them again without this file.
So it lies outside the home, is in no backup of the record, and is copied to a safe place once.
"""

from __future__ import annotations

import os
import stat
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from station.core.tree_head import SignedHead, key_id
from station.errors import BadInput, EnvironmentFault
from station.store.durable import sync_folder

if TYPE_CHECKING:
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey


@dataclass(frozen=True, slots=True)
class StationKey:
    """A key that signs.

    Args:
        private: the secret.
        public: 32 bytes, known to everybody.
    """

    private: Ed25519PrivateKey
    public: bytes

    @property
    def id(self) -> str:
        """Its short name."""
        return key_id(self.public)

    def sign(self, statement: bytes) -> bytes:
        """Return the signature, 64 bytes."""
        return self.private.sign(statement)


def make_key(path: Path) -> StationKey:
    """Make a key and keep it; a file that is there is never written over.

    Raises:
        EnvironmentFault: it cannot be kept.
    """
    from cryptography.hazmat.primitives import serialization  # slow to load
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

    private = Ed25519PrivateKey.generate()
    text = private.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )
    unfinished = path.with_name(f"{path.name}.unfinished")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        unfinished.unlink(missing_ok=True)
        handle = os.open(unfinished, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        os.link(unfinished, path)  # fails where a file is there, as a rename would not
        unfinished.unlink()
        sync_folder(path.parent)
    except OSError as fault:
        raise EnvironmentFault(
            f"the station key cannot be kept at {path}", fault.strerror or str(fault)
        ) from fault
    return _of(private)


def read_key(path: Path) -> StationKey:
    """Read a key.

    Raises:
        BadInput: the file is no such key, or others than its owner may read it.
        EnvironmentFault: it cannot be read.
    """
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
    from cryptography.hazmat.primitives.serialization import load_pem_private_key

    try:
        rights = path.stat().st_mode
        text = path.read_bytes()
    except OSError as fault:
        raise EnvironmentFault(f"the station key {path} cannot be read", str(fault)) from fault
    if os.name == "posix" and rights & (stat.S_IRWXG | stat.S_IRWXO):
        raise BadInput(
            f"the station key {path} may be read by others",
            f"whoever has it can sign in the station's name: run chmod 600 {path}",
        )
    try:
        private = load_pem_private_key(text, password=None)
    except (ValueError, TypeError) as fault:
        raise BadInput(f"{path} is no station key", f"{fault}") from fault
    if not isinstance(private, Ed25519PrivateKey):
        raise BadInput(f"{path} is no station key", "it holds a key of another kind than Ed25519")
    return _of(private)


def is_signed(head: SignedHead) -> bool:
    """Whether a head was signed by the key it names."""
    from cryptography.exceptions import InvalidSignature
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

    try:
        public = Ed25519PublicKey.from_public_bytes(head.key)
        public.verify(head.signature, head.head.statement(head.at))
    except (InvalidSignature, ValueError):
        return False
    return True


def _of(private: Ed25519PrivateKey) -> StationKey:
    return StationKey(private, private.public_key().public_bytes_raw())
