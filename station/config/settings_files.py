"""The settings files of a folder as values and hashes, to tell what changed between two starts."""

from __future__ import annotations

import hashlib
import tomllib
from collections.abc import Iterator
from pathlib import Path

from station.core.changed_settings import SettingsFile, flat
from station.errors import EnvironmentFault


def settings_files(folder: Path) -> tuple[SettingsFile, ...]:
    """Every TOML file of the folder, by name; call it once the settings were found sound.

    Raises:
        EnvironmentFault: a file cannot be read.
    """
    return tuple(_read(folder))


def _read(folder: Path) -> Iterator[SettingsFile]:
    try:
        for file in sorted(folder.glob("*.toml")):
            raw = file.read_bytes()
            try:
                table = tomllib.loads(raw.decode("utf-8-sig"))
            except ValueError:
                table = {}  # no settings file of the station, or it would have been refused
            yield SettingsFile(file.name, hashlib.sha256(raw).hexdigest(), flat(table))
    except OSError as fault:
        raise EnvironmentFault(f"{folder} cannot be read", fault.strerror or "") from fault
