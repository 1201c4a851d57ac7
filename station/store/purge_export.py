"""What a purge takes out, written to a folder first: every entry, and what proves each of them.

Each run has a file of lines, one for each entry with its own bytes. ``blocks.jsonl`` has the hashes
of whole blocks of the journal and the way from each block to the root that was signed (RFC 9162
section 2.1.3), so that each entry can be proved without the record. The manifest names every file
with its SHA-256, and its own SHA-256 stands in the record.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection

from station.core.journal import GENESIS
from station.core.merkle import inclusion_path, leaf_hash, root
from station.core.purging import kinds_digest
from station.errors import BadInput, EnvironmentFault
from station.store.day_heads import signed_head_of
from station.store.durable import sync_folder, write_whole
from station.store.prepared import driver_of
from station.store.purge_entries import Unit
from station.store.tree import BLOCK, EpochTree

MANIFEST, BLOCKS = "manifest.json", "blocks.jsonl"
WHAT = "export of a purge"
BLOCK_STEPS = BLOCK.bit_length() - 1
"""Hashes of a proof that lie inside a block."""

Told = Callable[[str, int, int], None]
"""What is done, how much of it, of how much."""

_ENTRIES = (
    "SELECT j.epoch, j.seq, j.kind, j.hash, j.canonical, b.hash FROM journal j"
    " LEFT JOIN journal b ON b.id = j.id - 1 AND b.epoch = j.epoch"
    " WHERE j.id BETWEEN ? AND ? ORDER BY j.id"
)


@dataclass(frozen=True, slots=True)
class RunProof:
    """What the entries of a run were when they went: see ``PurgedRun``."""

    root: str
    kinds: str


def check_folder(folder: Path, home: Path) -> None:
    """See that an export may be written to a folder.

    Raises:
        BadInput: it is not there, is not empty, or lies in the home.
    """
    if not folder.is_dir():
        raise BadInput(f"--to {folder}", "is no folder: make it first, best on another disk")
    if folder.resolve().is_relative_to(home.resolve()):
        raise BadInput(f"--to {folder}", "lies in the home: give a folder on another disk")
    if any(folder.iterdir()):
        raise BadInput(f"--to {folder}", "is not empty: give a folder of its own for each purge")


def export(
    connection: Connection, units: Sequence[Unit], folder: Path, names: tuple[str, str], told: Told
) -> None:
    """Write the export of some runs and bring it to the medium.

    Args:
        connection: inside a transaction.
        units: the runs.
        folder: empty.
        names: site and station.
        told: hears how far it has come.

    Raises:
        EnvironmentFault: the folder cannot be written, or an entry has no signed head.
    """
    try:
        runs: list[dict[str, Any]] = []
        for number, unit in enumerate(units):
            told("exporting", number, len(units))
            name = f"run-{unit.first_day}-{unit.uid}.jsonl"
            file, proof = _write_run(connection, unit, folder / name)
            runs.append(
                {
                    "run": unit.uid,
                    "product": unit.product,
                    "blend_lots": list(unit.blend_lots),
                    "inputs": list(unit.inputs),
                    "first_day": unit.first_day.isoformat(),
                    "last_day": unit.last_day.isoformat(),
                    "bags": unit.bags,
                    "entries": unit.entries.count,
                    "root": proof.root,
                    "kinds": proof.kinds,
                    "file": name,
                    **file,
                }
            )
        heads, blocks = _write_blocks(connection, units, folder / BLOCKS)
        manifest = {
            "what": WHAT,
            "site": names[0],
            "station": names[1],
            "heads": heads,
            "blocks": {"file": BLOCKS, **blocks},
            "runs": runs,
        }
        text = json.dumps(manifest, ensure_ascii=False, indent=1) + "\n"
        write_whole(folder / MANIFEST, text.encode())
        sync_folder(folder)
    except OSError as fault:
        raise EnvironmentFault(f"cannot export to {folder}", str(fault)) from fault


def _write_run(connection: Connection, unit: Unit, path: Path) -> tuple[dict[str, Any], RunProof]:
    leaves: list[bytes] = []
    kinds: list[str] = []

    def lines() -> Iterator[bytes]:
        for span in unit.entries.rows:
            for epoch, seq, kind, digest, kept, before in driver_of(connection).execute(
                _ENTRIES, span
            ):
                leaves.append(leaf_hash(digest))
                kinds.append(kind)
                line = {
                    "epoch": str(epoch),
                    "number": seq,
                    "kind": kind,
                    "hash_before": (before or GENESIS).hex(),
                    "hash": digest.hex(),
                    "entry": kept.decode(),
                }
                yield json.dumps(line, ensure_ascii=False).encode() + b"\n"

    file = _write_lines(path, lines())
    return file, RunProof(root(leaves).hex(), kinds_digest(kinds))


def _write_blocks(
    connection: Connection, units: Sequence[Unit], path: Path
) -> tuple[dict[str, str], dict[str, Any]]:
    """Write the blocks that purged entries lie in; returns the heads by epoch, and the file."""
    wanted: dict[int, set[int]] = {}
    firsts: dict[int, int] = {}
    for unit in units:
        for (epoch, first, last), (row, _) in zip(
            unit.entries.spans, unit.entries.rows, strict=True
        ):
            numbers = wanted.setdefault(epoch, set())
            numbers.update(range((first - 1) // BLOCK, (last - 1) // BLOCK + 1))
            firsts[epoch] = row - first + 1
    heads: dict[str, str] = {}

    def lines() -> Iterator[bytes]:
        for epoch, numbers in wanted.items():
            signed = signed_head_of(connection, epoch)
            if signed is None:
                raise EnvironmentFault(f"epoch {epoch} has no signed head", "run the station first")
            heads[str(epoch)] = signed.text()
            tree, size = EpochTree(connection, epoch, firsts[epoch]), signed.head.size
            for number in sorted(numbers):
                path_up = inclusion_path(number * BLOCK, size, tree.subtree)[BLOCK_STEPS:]
                line = {
                    "epoch": str(epoch),
                    "block": number,
                    "hashes": [one.hex() for one in _hashes(connection, firsts[epoch], number)],
                    "path": [one.hex() for one in path_up],
                }
                yield json.dumps(line).encode() + b"\n"

    file = _write_lines(path, lines())
    return heads, file


def _hashes(connection: Connection, first: int, number: int) -> Iterable[bytes]:
    begin = first + number * BLOCK
    found = connection.exec_driver_sql(
        "SELECT hash FROM journal WHERE id >= ? AND id < ? ORDER BY id", (begin, begin + BLOCK)
    )
    return found.scalars()


def _write_lines(path: Path, lines: Iterable[bytes]) -> dict[str, Any]:
    """Write a file line by line and bring it to the medium; returns its size and SHA-256."""
    digest, size = hashlib.sha256(), 0
    with path.open("xb") as file:
        for line in lines:
            file.write(line)
            digest.update(line)
            size += len(line)
        file.flush()
        os.fsync(file.fileno())
        if hasattr(os, "posix_fadvise"):  # so that it is read back from the medium
            os.posix_fadvise(file.fileno(), 0, 0, os.POSIX_FADV_DONTNEED)
    return {"bytes": size, "sha256": digest.hexdigest()}


def proofs_of(manifest: Mapping[str, Any]) -> dict[str, RunProof]:
    """What a manifest says of each run."""
    return {str(one["run"]): RunProof(one["root"], one["kinds"]) for one in manifest["runs"]}
