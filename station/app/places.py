"""Where a verb finds its settings and keeps its record."""

from __future__ import annotations

import logging
import tempfile
from datetime import datetime
from pathlib import Path

from station.clock import SystemClock
from station.config.load import load, load_settings
from station.config.packhouse import Packhouse, StationSettings
from station.errors import BadInput, EnvironmentFault
from station.line.opening import calendar_day

_LOG = logging.getLogger(__name__)


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


def packhouse(config: Path, home: Path | None = None) -> Packhouse:
    """Read settings, counting days from today on the calendar of their plant.

    Products and people of the centre take the place of the station's own, where it takes any. Where
    they do not go together with the rest, the station's own hold: it must be able to start.

    Args:
        config: folder of the settings.
        home: folder of the record, if another than they name.
    """
    settings = load_settings(config)
    now = SystemClock(settings.zone).now()
    today = calendar_day(now)
    over = _from_the_centre(settings, home or settings.home, now.utc)
    try:
        return load(config, today, over)
    except BadInput as refused:
        if not over:
            raise
        _LOG.warning("what the centre sent is left out: %s", refused)
        return load(config, today)


def _from_the_centre(settings: StationSettings, home: Path, now: datetime) -> dict[str, Path]:
    """Files of the centre that take the place of the station's own, by name."""
    if settings.sync is None:
        return {}
    from station.app.centre_settings import laid_over

    return laid_over(settings, home, now)


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
