"""``people.toml``: who works at the station."""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Mapping
from pathlib import Path

from station.config.check import check_keys, check_rows
from station.config.faults import Faults
from station.config.packhouse import Person
from station.config.settings import PersonRow
from station.config.toml_file import read_toml
from station.core.languages import Language
from station.core.rights import Role
from station.errors import EnvironmentFault

FILE = "people.toml"
_NEEDED = (Role.LEAD, Role.PACKER)


def read_people(faults: Faults) -> Mapping[str, Person]:
    """Return the people by id; notes what is wrong, and a role that nobody holds."""
    table = read_toml(FILE, faults)
    if table is None:
        return {}
    check_keys(table, ("person",), "[[{}]]", FILE, faults)
    rows = check_rows(PersonRow, table, "person", FILE, faults)
    people = {
        row.id: Person(
            row.id,
            row.name,
            Role(row.role),
            row.trained_until,
            None if row.language is None else Language(row.language),
        )
        for row in rows.values()
    }
    listed = table.get("person")
    if people and isinstance(listed, list) and len(listed) == len(rows):
        held = {person.role for person in people.values()}
        for role in _NEEDED:
            if role not in held:
                why = f"nobody has the role {role}"
                faults.add(
                    FILE, "person", why, "at least one lead and one packer: a run needs both"
                )
    return people


def add_person(
    folder: Path, person: str, name: str, role: str, check: Callable[[], object]
) -> None:
    """Add a row to the file; where the settings do not hold with it, the file stays as it was.

    Args:
        folder: of the settings.
        person: id.
        name: as colleagues say.
        role: one of the roles.
        check: reads the settings again; raises where they do not hold.

    Raises:
        BadInput: they do not hold; the words of ``check``.
        EnvironmentFault: the file cannot be written.
    """
    file = folder / FILE
    values = (("id", person), ("name", name), ("role", role))
    # A JSON string is a TOML basic string too (TOML 1.0), whatever stands in a name.
    lines = (f"{key} = {json.dumps(value, ensure_ascii=False)}" for key, value in values)
    row = "\n".join(("", "[[person]]", *lines, ""))
    try:
        before = file.read_bytes()
        _replace(file, before.rstrip(b"\n") + b"\n" + row.encode())
        try:
            check()
        except BaseException:
            _replace(file, before)
            raise
    except OSError as fault:
        raise EnvironmentFault(f"{file} cannot be written", fault.strerror or "") from fault


def _replace(file: Path, content: bytes) -> None:
    """Write a file whole: a reader sees the old one or the new one."""
    beside = file.with_name(f".{file.name}.new")
    with beside.open("wb") as out:
        out.write(content)
        out.flush()
        os.fsync(out.fileno())
    beside.replace(file)
