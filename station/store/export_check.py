"""Reads an export of a purge back and proves all of it, without the record it came from."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from station.core.journal import entry_hash
from station.core.merkle import inclusion_path, is_included, leaf_hash, root, subtrees_of
from station.core.purging import kinds_digest
from station.core.tree_head import SignedHead
from station.errors import BadInput, EnvironmentFault
from station.store.journal import read_entry
from station.store.purge_export import MANIFEST, WHAT, RunProof, Told, proofs_of
from station.store.signing import is_signed
from station.store.tree import BLOCK

_Blocks = dict[tuple[str, int], bytes]
"""Hashes of each block by epoch and number, one behind the other: 8 kB for 256 entries."""
_HASH = 32


@dataclass(frozen=True, slots=True)
class ExportFound:
    """An export that holds.

    Args:
        digest: SHA-256 of its manifest, 64 hex digits; a record names the export by it.
        runs: what it says of each run, by id.
        entries: how many it has.
        bytes: size of its files.
        names: site and station.
    """

    digest: str
    runs: dict[str, RunProof]
    entries: int
    bytes: int
    names: tuple[str, str]


def check_export(folder: Path, told: Told) -> ExportFound:
    """Check every file, entry, proof and signature of an export.

    Args:
        folder: as ``export`` wrote it.
        told: hears how far it has come.

    Raises:
        BadInput: there is no export in the folder.
        EnvironmentFault: it does not hold; names the file and the entry.
    """
    path = folder / MANIFEST
    if not path.is_file():
        raise BadInput(f"{folder}", f"holds no export of a purge: it has no {MANIFEST}")
    try:
        content = path.read_bytes()
        manifest = json.loads(content)
        if manifest["what"] != WHAT:
            raise BadInput(f"{path}", f"is of another kind: {manifest['what']!r}")
        blocks = _check_blocks(folder, manifest)
        for number, run in enumerate(manifest["runs"]):
            told("reading back", number, len(manifest["runs"]))
            _check_run(folder, run, blocks, (manifest["site"], manifest["station"]))
        size = manifest["blocks"]["bytes"] + sum(one["bytes"] for one in manifest["runs"])
        return ExportFound(
            digest=hashlib.sha256(content).hexdigest(),
            runs=proofs_of(manifest),
            entries=sum(one["entries"] for one in manifest["runs"]),
            bytes=size + len(content),
            names=(manifest["site"], manifest["station"]),
        )
    except OSError as fault:
        raise EnvironmentFault(f"cannot read {folder}", str(fault)) from fault
    except (ValueError, KeyError, TypeError, AttributeError) as fault:
        raise _broken(folder, f"it has another form than an export: {fault}") from fault


def _check_blocks(folder: Path, manifest: dict[str, Any]) -> _Blocks:
    heads = {epoch: SignedHead.parse(text) for epoch, text in manifest["heads"].items()}
    for epoch, signed in heads.items():
        if not is_signed(signed) or str(signed.head.epoch) != epoch:
            raise _broken(folder, f"the signature of the head of epoch {epoch} does not hold")
    found: _Blocks = {}
    for line in _lines(folder, manifest["blocks"]):
        epoch, number, head = line["epoch"], line["block"], heads[line["epoch"]].head
        hashes = [bytes.fromhex(one) for one in line["hashes"]]
        leaves = [leaf_hash(one) for one in hashes]
        inside = inclusion_path(0, BLOCK, subtrees_of(leaves))
        path = (*inside, *(bytes.fromhex(one) for one in line["path"]))
        if len(leaves) != BLOCK or not is_included(
            leaves[0], number * BLOCK, head.size, path, head.root
        ):
            raise _broken(folder, f"block {number} of epoch {epoch} is not under the signed head")
        found[epoch, number] = b"".join(hashes)
    return found


def _check_run(folder: Path, run: dict[str, Any], blocks: _Blocks, names: tuple[str, str]) -> None:
    leaves: list[bytes] = []
    kinds: list[str] = []
    for line in _lines(folder, run):
        where = f"{run['file']}: entry {line['number']}"
        kept = line["entry"].encode()
        entry = read_entry(kept)
        said = (str(entry.epoch), entry.seq, str(entry.kind), entry.site, entry.station)
        if said != (line["epoch"], line["number"], line["kind"], *names):
            raise _broken(folder, f"{where} stands under another number, kind or name than its own")
        digest = bytes.fromhex(line["hash"])
        if entry_hash(bytes.fromhex(line["hash_before"]), kept) != digest:
            raise _broken(folder, f"{where} does not have its hash")
        number, place = divmod(entry.seq - 1, BLOCK)
        begin = place * _HASH
        if blocks[line["epoch"], number][begin : begin + _HASH] != digest:
            raise _broken(folder, f"{where} is not under the signed head")
        leaves.append(leaf_hash(digest))
        kinds.append(line["kind"])
    if (len(leaves), root(leaves).hex(), kinds_digest(kinds)) != (
        *(run["entries"], run["root"], run["kinds"]),
    ):
        raise _broken(folder, f"{run['file']} does not have the entries of run {run['run']}")


def _lines(folder: Path, named: dict[str, Any]) -> Iterator[dict[str, Any]]:
    """Lines of a file, whose size and SHA-256 are checked once it is read."""
    digest, size = hashlib.sha256(), 0
    with (folder / named["file"]).open("rb") as file:
        for line in file:
            digest.update(line)
            size += len(line)
            yield json.loads(line)
    if (digest.hexdigest(), size) != (named["sha256"], named["bytes"]):
        raise _broken(folder, f"{named['file']} was changed or cut: its SHA-256 differs")


def _broken(folder: Path, why: str) -> EnvironmentFault:
    return EnvironmentFault(f"the export in {folder} does not hold", why)
