"""What a person gives of a record from outside it: heads from paper or a file, and the key."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.core.tree_head import HeadError, SaidHead, SignedHead
from station.errors import BadInput

if TYPE_CHECKING:
    from station.store.head_check import Elsewhere

Heads = Annotated[
    list[str] | None,
    typer.Option(
        "--head",
        metavar="HEAD",
        help="A head kept elsewhere: the number and four words as printed, the text of its code, "
        "or a file with it. May be given again.",
    ),
]
Key = Annotated[
    str | None,
    typer.Option(
        "--key", metavar="KEY", help="The station's key: 64 hex digits of it, or its file."
    ),
]


def read_outside(
    heads: Sequence[str] | None, key: str | None, home: Path | None, config: Path | None
) -> Elsewhere:
    """Return what is known from outside, with what lies beside the station's own key file.

    Args:
        heads: as given with ``--head``.
        key: as given with ``--key``.
        home: folder of the record.
        config: folder of the settings, which may name the key file.

    Raises:
        BadInput: a head or the key is none.
    """
    from station.store.day_heads import read_witness  # slow to load
    from station.store.head_check import Elsewhere

    said: list[SaidHead] = []
    signed: list[SignedHead] = []
    for given in heads or ():
        one = _head(given)
        if isinstance(one, SaidHead):
            said.append(one)
        else:
            signed.append(one)
    found = Elsewhere(tuple(said), tuple(signed), None if key is None else _public(key))
    beside = None if home is None else key_file(home, config)
    witness = None if beside is None else read_witness(beside)
    if witness is not None:
        found = replace(found, signed=(*found.signed, witness))
    if key is None and beside is not None and beside.is_file():
        found = replace(found, key=_public(str(beside)))
    return found


def key_file(home: Path, config: Path | None) -> Path:
    """The key's file of a record: as the settings name it, or beside the home."""
    from station.config.record_rules import key_beside

    if config is None:
        return key_beside(home)
    from station.config.load import load_settings  # slow to load

    return load_settings(config).record.key_of(home)


def _head(given: str) -> SaidHead | SignedHead:
    text = given
    if len(given) < 200 and Path(given).is_file():
        text = Path(given).read_text(encoding="utf-8", errors="replace").strip()
    try:
        if text[:1].isdecimal():
            return SaidHead.parse(text)
        return SignedHead.parse(text)
    except HeadError as fault:
        raise BadInput(f"--head {given[:60]!r}", str(fault)) from fault


def _public(given: str) -> bytes:
    from station.store.signing import read_key

    if len(given) == 64:
        try:
            return bytes.fromhex(given)
        except ValueError:
            pass
    path = Path(given)
    if not path.is_file():
        raise BadInput(f"--key {given}", "is neither 64 hex digits nor a file")
    return read_key(path).public
