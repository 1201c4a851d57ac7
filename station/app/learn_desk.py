"""Lends the line to whoever teaches the station the lines of an unknown scale."""

from __future__ import annotations

import itertools
import os
import re
from pathlib import Path

from drivers.errors import DescriptionError
from drivers.frames.description import Description
from drivers.frames.description_file import read_description, write_description
from drivers.link import ScaleLink
from drivers.recording import read_recording
from drivers.wire import Passed, WireLog
from station.config.packhouse import ScaleSettings
from station.config.scale_edit import use_description
from station.core.mass import Unit
from station.errors import BadInput, EnvironmentFault

_US = 1_000
_MOST_PLAYED = 300_000
"""Bytes; five minutes of a scale that sends as fast as 9600 baud carry."""


class LearnDesk:
    """Implements station.screens.service_source.LearnSource; any thread.

    Args:
        scale: of the settings.
        settings: folder of the settings; None where they may not be changed.
        recordings: folder of the recordings.
        log: of the line.
        link: to the scale.
    """

    def __init__(
        self,
        scale: ScaleSettings,
        settings: Path | None,
        recordings: Path,
        log: WireLog,
        link: ScaleLink,
    ) -> None:
        self._scale, self._settings, self._folder = scale, settings, recordings
        self._log, self._link = log, link

    @property
    def units(self) -> tuple[str, ...]:
        """Units a scale may show."""
        return tuple(str(unit) for unit in (Unit.GRAM, Unit.KILOGRAM, Unit.OUNCE, Unit.POUND))

    def listen(self, on: bool) -> None:
        """Ask the scale nothing from now on, or ask it again as before."""
        self._link.listen_only(on)

    def ask(self, request: bytes) -> None:
        """Send a request to a scale that sends nothing by itself."""
        self._link.send(request)

    def heard(self) -> tuple[Passed, ...]:
        """What passed over the line of late."""
        return self._log.newest()

    def recordings(self) -> tuple[Path, ...]:
        """Recordings of this station, the newest first."""
        return tuple(sorted(self._folder.glob("*.rec"), reverse=True))

    def play(self, recording: Path) -> tuple[Passed, ...]:
        """What is on a recording, or on its newest part where it is long.

        Raises:
            RecordingError: it cannot be read, or is none.
        """
        chunks = read_recording(recording)
        sizes = itertools.accumulate(len(one.data) for one in reversed(chunks))
        kept = sum(1 for _ in itertools.takewhile(lambda size: size <= _MOST_PLAYED, sizes))
        newest = chunks[len(chunks) - kept :]
        return tuple(Passed(one.at_us * _US, one.data) for one in newest)

    def save(self, description: Description) -> str:
        """Keep a description beside station.toml and name it there.

        Raises:
            BadInput: the settings may not be changed, or cannot be by the station.
            EnvironmentFault: a file cannot be written.
        """
        if self._settings is None:
            raise BadInput("the demo's settings stay as they are", "teach a scale of your own")
        units = {description.unit, *description.units.values()} - {""}
        if str(self._scale.unit) not in units:
            raise BadInput(
                f"these lines are in {', '.join(sorted(units))}",
                f"the settings are in {self._scale.unit}: set unit, interval and capacity under"
                " [scale] of station.toml first",
            )
        name = _file_name(description.name)
        text = write_description(description)
        try:
            read_description(text)
        except DescriptionError as fault:
            raise BadInput(fault.title, fault.detail) from fault
        station = self._settings / "station.toml"
        try:
            before = station.read_text(encoding="utf-8")
            after = use_description(before, name)
            if (self._settings / name).exists():
                taught = (self._settings / name).read_text(encoding="utf-8")
                _write(self._settings / f"{name}.before", taught)
            _write(self._settings / name, text)
            _write(self._settings / "station.toml.before", before)
            _write(station, after)
        except OSError as fault:
            raise EnvironmentFault(
                f"{self._settings} cannot be written", (fault.strerror or "").lower()
            ) from fault
        return (
            f"kept as {name} and named in station.toml; the settings before are in"
            " station.toml.before. Stop and start the station to use it"
        )


def _file_name(name: str) -> str:
    """The file of a format; no other file of the settings begins like it, whatever the name is."""
    plain = re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")[:40] or "scale"
    return f"{plain}.toml" if plain.split("-")[0] == "scale" else f"scale-{plain}.toml"


def _write(path: Path, text: str) -> None:
    """Write a file whole or not at all."""
    fresh = path.with_name(path.name + ".new")
    with fresh.open("w", encoding="utf-8", newline="\n") as file:
        file.write(text)
        file.flush()
        os.fsync(file.fileno())
    fresh.replace(path)
