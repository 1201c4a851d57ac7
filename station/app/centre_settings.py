"""Products and people as the centre has them: tried before they are kept, then laid over ours."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path

from station.config import people_file, products_file
from station.config.faults import Faults
from station.config.packhouse import Packhouse, StationSettings
from station.errors import BadInput
from station.sync.shelf import Shelf
from station.sync.snapshot import Kind, Snapshot, text_of

FILES: Mapping[Kind, str] = {
    Kind.PRODUCTS: products_file.FILE,
    Kind.PEOPLE: people_file.FILE,
}


def shelf_of(settings: StationSettings, home: Path) -> Shelf | None:
    """The shelf of a station that takes snapshots; None where it takes none."""
    if settings.sync is None or not settings.sync.snapshot_key:
        return None
    return Shelf(home, settings.site, bytes.fromhex(settings.sync.snapshot_key))


def laid_over(settings: StationSettings, home: Path, now: datetime) -> dict[str, Path]:
    """Files that take the place of the station's own, by name."""
    shelf = shelf_of(settings, home)
    if shelf is None:
        return {}
    there = {file: shelf.lay_out(kind, now) for kind, file in FILES.items()}
    return {file: path for file, path in there.items() if path is not None}


def running(shelf: Shelf, now: datetime) -> dict[Kind, int]:
    """Version of each that is in force now; 0 for the station's own files."""
    force = {kind: shelf.text(kind, now) for kind in FILES}
    return {kind: 0 if one is None else one.version for kind, one in force.items()}


def checked_with(house: Packhouse) -> Callable[[Snapshot], None]:
    """Give a function that refuses settings with which the station could not start.

    The function raises BadInput with every fault.
    """

    def check(snapshot: Snapshot) -> None:
        with tempfile.TemporaryDirectory(prefix="snapshot-") as folder:
            faults = Faults(Path(folder))
            name = FILES[snapshot.kind]
            (Path(folder) / name).write_text(text_of(snapshot), encoding="utf-8")
            if snapshot.kind is Kind.PRODUCTS:
                products_file.read_products(house.settings, house.people, faults)
            else:
                people_file.read_people(faults)
        if faults.found:
            words = "; ".join(f"{one.key}: {one.words}" for one in faults.found[:3])
            raise BadInput(f"{name} has {len(faults.found)} faults", words)

    return check
