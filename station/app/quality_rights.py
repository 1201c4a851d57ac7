"""Who may decide what in QA's work; the one place that says so."""

from __future__ import annotations

from collections.abc import Mapping

from station.config.packhouse import Person, Role
from station.config.shelf_life import APPROVERS

DECIDERS = (Role.LEAD, *APPROVERS)
"""May decide about rejects, lay holds on and count the bin."""


class NotAllowed(ValueError):
    """Somebody may not do this; the message says who may."""


def check_role(people: Mapping[str, Person], who: str, roles: tuple[Role, ...], what: str) -> None:
    """Pass when a person has one of the roles.

    Args:
        people: by id.
        who: id of the person.
        roles: any of them.
        what: what the person wants to do, such as ``release bags``.

    Raises:
        NotAllowed: nobody of that id, or another role.
    """
    if not who:
        raise NotAllowed("who signs? Touch a name first")
    person = people.get(who)
    if person is None:
        raise NotAllowed(f"{who!r} is nobody in people.toml")
    if person.role not in roles:
        may = " or ".join(map(str, roles))
        raise NotAllowed(f"{person.name} ({person.role}) may not {what}: {may} may")
