"""When the production day changes, as the settings have it."""

from __future__ import annotations

from datetime import time
from pathlib import Path

from station.core.dating import MIDNIGHT


def cut_off_of(config: Path | None) -> time:
    """Return the plant's time at which the production day changes; midnight without settings."""
    if config is None:
        return MIDNIGHT
    from station.config.load import load_settings  # slow to load

    return load_settings(config).cut_off
