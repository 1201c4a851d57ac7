"""Where a verb finds its settings and keeps its record."""

from __future__ import annotations

import tempfile
from pathlib import Path

from station.clock import SystemClock
from station.config.load import load, load_settings
from station.config.packhouse import Packhouse
from station.errors import BadInput, EnvironmentFault
from station.line.opening import calendar_day


def demo_settings() -> Path:
    """The folder of the demo packhouse's settings, beside the station's own code.

    Raises:
        BadInput: it is not there.
    """
    folder = Path(__file__).resolve().parents[2] / "demo_config"
    if not folder.is_dir():
        raise BadInput(
            "the demo packhouse is not here",
            f"{folder} is missing: run from the project's folder, or name settings with --config",
        )
    return folder


def packhouse(config: Path) -> Packhouse:
    """Read settings, counting days from today on the calendar of their plant."""
    settings = load_settings(config)
    today = calendar_day(SystemClock(settings.zone).now())
    return load(config, today)


def home_folder(home: Path | None) -> Path:
    """The folder given, made where it is missing, or a fresh one.

    Raises:
        EnvironmentFault: it cannot be made.
        BadInput: a file stands in its place.
    """
    if home is None:
        return Path(tempfile.mkdtemp(prefix="packhouse-"))
    if home.exists() and not home.is_dir():
        raise BadInput(f"home {home}", "is a file: name a folder")
    try:
        home.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise EnvironmentFault(f"home {home} cannot be made", fault.strerror or "") from fault
    return home
