"""``people.toml``: who works at the station."""

from __future__ import annotations

from collections.abc import Mapping

from station.config.check import check_keys, check_rows
from station.config.faults import Faults
from station.config.packhouse import Person, Role
from station.config.settings import PersonRow
from station.config.toml_file import read_toml

FILE = "people.toml"
_NEEDED = (Role.LEAD, Role.PACKER)


def read_people(faults: Faults) -> Mapping[str, Person]:
    """Return the people by id; notes what is wrong, and a role that nobody holds."""
    table = read_toml(FILE, faults)
    if table is None:
        return {}
    check_keys(table, ("person",), "[[{}]]", FILE, faults)
    rows = check_rows(PersonRow, table, "person", FILE, faults)
    people = {row.id: Person(row.id, row.name, Role(row.role)) for row in rows.values()}
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
