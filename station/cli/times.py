"""A moment on the command line: with its offset, or in the plant's own time."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from pathlib import Path

from station.errors import BadInput

TIME_FORM = "YYYY-MM-DDTHH:MM, in the plant's time or with an offset such as +01:00"

_TIME = re.compile(
    r"\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(:\d{2}(\.\d{1,6})?)?(Z|[+-]\d{2}:\d{2})?", re.ASCII
)


def read_time(option: str, text: str, home: Path) -> datetime:
    """Return the aware moment an option gives.

    Args:
        option: its name, for errors.
        text: the moment; without an offset it is in the time zone of the record.
        home: folder of the record.

    Raises:
        BadInput: it is none, or the plant's clocks show it twice or never on that day.
    """
    if not _TIME.fullmatch(text):
        raise BadInput(option, f"{text!r} is no time: write it as {TIME_FORM}")
    try:
        given = datetime.fromisoformat(text)
    except ValueError as fault:
        raise BadInput(option, f"{text!r}: {fault}; write it as {TIME_FORM}") from fault
    if given.utcoffset() is not None:
        return given
    from station.store.weighed import plant_zone  # slow to load

    zone = plant_zone(home)
    local = given.replace(tzinfo=zone)
    once = local.astimezone(UTC).astimezone(zone).replace(tzinfo=None) == given
    if not once or local.utcoffset() != local.replace(fold=1).utcoffset():
        raise BadInput(
            option,
            f"{text} comes {'twice' if once else 'never'} in {zone.key}, where the clocks are "
            "changed then: give its offset, such as +00:00",
        )
    return local
