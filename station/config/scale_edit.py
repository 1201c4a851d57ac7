"""Changes ``[scale]`` of station.toml in place: what people wrote around it stays."""

from __future__ import annotations

import json
import re
import tomllib

from station.errors import BadInput

_HEADER = re.compile(r"\s*\[\s*scale\s*\]\s*(?:#.*)?")
_TABLE = re.compile(r"\s*\[")
_KEY = re.compile(r'(\s*(protocol|description)\s*=\s*)("(?:[^"\\]|\\.)*"|\'[^\']*\')(.*)')


def use_description(text: str, file: str) -> str:
    """Return station.toml with a described scale in place of any other.

    Args:
        text: of station.toml.
        file: name of the description beside it.

    Raises:
        BadInput: the text is not laid out as the station can change it; says what to write.
    """
    by_hand = BadInput(
        "station.toml cannot be changed by the station",
        f'write under [scale]: protocol = "described" and description = "{file}"',
    )
    wanted = {"protocol": "described", "description": file}
    lines, inside, at, seen = [], False, 0, set()
    for line in text.split("\n"):
        if _TABLE.match(line):
            inside = _HEADER.fullmatch(line) is not None
        found = _KEY.fullmatch(line.rstrip("\r")) if inside else None
        if found is not None:
            seen.add(found[2])
            line = f"{found[1]}{json.dumps(wanted[found[2]])}{found[4]}"
        lines.append(line)
        if found is not None and found[2] == "protocol":
            at = len(lines)
    if "protocol" not in seen:
        raise by_hand
    if "description" not in seen:
        lines.insert(at, f"description = {json.dumps(file)}")
    after = "\n".join(lines)
    try:
        due = tomllib.loads(text)
        due["scale"] |= wanted
        if tomllib.loads(after) != due:
            raise by_hand
    except (tomllib.TOMLDecodeError, KeyError, TypeError) as fault:
        raise by_hand from fault
    return after
