"""The packhouse's shelf-life policy: how many days a bag may live in which atmosphere.

The days are the packhouse's own and need a validated study; nothing here supplies them. A life
outside the policy stands only under the name of the person who approved it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from station.config.check import check_rows
from station.config.faults import Faults, shown, unknown
from station.config.packhouse import Person, Role
from station.config.settings import ProductRow, ShelfLifeRow
from station.config.toml_file import Table

APPROVERS = (Role.QA, Role.MANAGER)


@dataclass(frozen=True, slots=True)
class Policy:
    """The days allowed, by atmosphere, and the people of the packhouse."""

    lives: Mapping[str, ShelfLifeRow]
    people: Mapping[str, Person]


def read_policy(table: Table, people: Mapping[str, Person], file: str, faults: Faults) -> Policy:
    """Return the policy of a file; notes a row whose days do not rise, and an atmosphere's second.

    Of two rows for one atmosphere the longer life must not win unseen.
    """
    rows = check_rows(ShelfLifeRow, table, "shelf_life", file, faults)
    places = dict[str, int]()
    for number, row in rows.items():
        first = places.setdefault(row.atmosphere, number)
        if first != number:
            why = f"{shown(row.atmosphere)} stands already in shelf_life[{first}]"
            faults.add(file, f"shelf_life[{number}].atmosphere", why, "each one once")
        if row.least_days > row.most_days:
            why = f"{row.least_days} is above most_days {row.most_days}"
            faults.add(file, f"shelf_life[{number}].least_days", why, f"1 to {row.most_days}")
    return Policy({row.atmosphere: row for row in rows.values()}, people)


def life_problems(row: ProductRow, policy: Policy) -> Iterator[tuple[str, str, str]]:
    """Yield the key, the fault and what is allowed, where a product's life breaks the policy."""
    if not policy.lives:
        return  # the missing policy was noted already
    if row.life_approved_by:
        yield from approver_problems("life_approved_by", row.life_approved_by, policy.people)
        return
    allowed = policy.lives.get(row.atmosphere)
    if allowed is None:
        why = f"{unknown(row.atmosphere, policy.lives)} in the shelf-life policy"
        known = ", ".join(f'"{one}"' for one in policy.lives)
        yield "atmosphere", why, f"{known}; or life_approved_by"
    elif not allowed.least_days <= row.life_days <= allowed.most_days:
        why = f"{row.life_days} days in {row.atmosphere!r} are outside the shelf-life policy"
        days = f"{allowed.least_days} to {allowed.most_days} days ({allowed.basis})"
        yield "life_days", why, f"{days}; or life_approved_by a person of QA or a manager"


def approver_problems(
    key: str, name: str, people: Mapping[str, Person]
) -> Iterator[tuple[str, str, str]]:
    """Yield what is wrong where the person under a key may not approve."""
    person = people.get(name)
    roles = " or ".join(map(str, APPROVERS))
    may = ", ".join(one.id for one in people.values() if one.role in APPROVERS)
    if person is None:
        yield key, unknown(name, people), f"{may} ({roles})"
    elif person.role not in APPROVERS:
        yield key, f"{name} has the role {person.role}", f"{may} ({roles})"
