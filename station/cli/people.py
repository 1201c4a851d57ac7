"""``station people``: who there is, and their PINs and badges; changes on a stopped station."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Home, NeededConfig
from station.cli.page import heading, listing, note
from station.cli.signing import check_right, give_pin, opened_access, secret
from station.core.people import PersonStep, person_fact
from station.core.pins import PinError
from station.core.rights import Act, Role, signer
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.access.credentials import Credential
    from station.access.opening import Access
    from station.config.packhouse import Packhouse
    from station.core.pack import Moment
    from station.store.writer import StationStore

Of = Annotated[str, typer.Argument(metavar="ID", help="Whose, from people.toml.")]
Who = Annotated[str, typer.Option("--who", metavar="ID", help="Who does it, from people.toml.")]
Why = Annotated[str, typer.Option("--why", metavar="WORDS", help="The reason, for the record.")]

_COLUMNS = ("person", "name", "role", "PIN", "badge", "may sign")
_ON_SCREEN = "stop it first: PINs and badges are changed on a stopped station"


def list_people(config: NeededConfig, home: Home = None, as_json: AsJson = False) -> None:
    """List the people, and whether each has a PIN or a badge."""

    def work() -> Answer:
        from station.access.credentials import Credentials

        house = _house(config)
        kept = Credentials(home or house.settings.home)
        rows: list[Json] = []
        cells = []
        for who, person in house.people.items():
            has = kept.of(who)
            may = kept.can_sign(who) or (not house.settings.people.pins and not has.disabled)
            rows.append(
                {
                    "id": who,
                    "name": person.name,
                    "role": str(person.role),
                    "pin": bool(has.pin),
                    "badge": bool(has.badge),
                    "disabled": has.disabled,
                    "may_sign": may,
                }
            )
            yes = [str(person.role), _yes(has.pin), _yes(has.badge), _yes(may)]
            cells.append((who, person.name, *yes))
        pins = "needed" if house.settings.people.pins else "off"
        page = (heading(f"{len(rows)} people, PINs are {pins}"), listing(_COLUMNS, cells))
        return Answer({"pins": pins, "people": rows}, page)

    run_verb(as_json, work)


def add(
    person: Of,
    name: Annotated[str, typer.Option("--name", metavar="NAME", help="As colleagues say.")],
    role: Annotated[str, typer.Option("--role", help=f"One of {', '.join(Role)}.")],
    who: Who,
    why: Why,
    config: NeededConfig,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Add a person to people.toml; a PIN or badge is set afterwards."""

    def work() -> Answer:
        from station.config.people_file import add_person

        with _signed(config, home, who, person) as desk:
            if person in desk.house.people:
                raise BadInput(person, "stands in people.toml already")
            if role not in tuple(Role):
                raise BadInput("--role", f"{role!r}: give one of {', '.join(Role)}")
            add_person(config, person, name, role, lambda: _house(config))
            desk.keep(PersonStep.ADDED, "nobody", f"{name}, {role}", why)
        return _answer(person, f"{name} is {role} now, without a PIN")

    run_verb(as_json, work)


def pin(
    person: Of, who: Who, why: Why, config: NeededConfig, home: Home = None, as_json: AsJson = False
) -> None:
    """Set a person's PIN; it is asked for, after the one of who does it."""

    def work() -> Answer:
        with _signed(config, home, who, person) as desk:
            desk.known()
            before = _pin_words(desk.kept)
            given = _twice("new PIN")
            _set(lambda: desk.access.credentials.set_pin(person, given), person)
            desk.keep(PersonStep.PIN_SET, before, "a PIN", why)
        return _answer(person, f"The PIN of {person} is set")

    run_verb(as_json, work)


def badge(
    person: Of, who: Who, why: Why, config: NeededConfig, home: Home = None, as_json: AsJson = False
) -> None:
    """Set a person's badge; its code is asked for, after the PIN of who does it."""

    def work() -> Answer:
        with _signed(config, home, who, person) as desk:
            desk.known()
            before = "a badge" if desk.kept.badge else "none"
            code = secret("scan the badge")
            _set(lambda: desk.access.credentials.set_badge(person, code), person)
            desk.keep(PersonStep.BADGE_SET, before, "a badge", why)
        return _answer(person, f"The badge of {person} is set")

    run_verb(as_json, work)


def disable(
    person: Of,
    who: Who,
    why: Why,
    config: NeededConfig,
    again: Annotated[bool, typer.Option("--undo", help="Let the person sign again.")] = False,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Let a person sign no more; PIN and badge are forgotten, the name stays on record."""

    def work() -> Answer:
        with _signed(config, home, who, person) as desk:
            desk.known()
            if person == who:
                raise BadInput(person, "nobody disables themselves: another manager does")
            before = "disabled" if desk.kept.disabled else _pin_words(desk.kept)
            desk.access.credentials.set_disabled(person, not again)
            step = PersonStep.ENABLED if again else PersonStep.DISABLED
            desk.keep(step, before, str(step), why)
        return _answer(person, f"{person} is {step}")

    run_verb(as_json, work)


# --- the stopped station ------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Desk:
    person: str
    who: str
    house: Packhouse
    access: Access
    store: StationStore
    at: Moment
    first: bool

    @property
    def kept(self) -> Credential:
        return self.access.credentials.of(self.person)

    def known(self) -> None:
        if self.person not in self.house.people:
            known = ", ".join(self.house.people)
            raise BadInput(self.person, f"is nobody of people.toml: {known}")

    def keep(self, step: PersonStep, before: str, after: str, why: str) -> None:
        """Put a step on record."""
        from station.core.ids import new_uid
        from station.line.ports import StoreFault

        reason = f"{why}; nobody who may had a PIN before" if self.first else why
        fact = person_fact(new_uid(self.at), self.person, step, before, after, reason)
        try:
            self.store.record((fact,), self.at, self.who)
        except StoreFault as fault:
            words = f"it is done, but not on record: {fault}"
            raise EnvironmentFault(self.person, words) from fault


@contextmanager
def _signed(config: Path, home: Path | None, who: str, person: str) -> Iterator[_Desk]:
    """A stopped station whose PINs a person may change, after giving the own PIN.

    Everybody may change their own. The first one of all is set without: nobody could sign for it.
    """
    from station.clock import SystemClock
    from station.store.writer import StationStore

    house = _house(config)
    settings = house.settings
    folder, clock = home or settings.home, SystemClock(settings.zone)
    try:
        key = settings.record.key_of(folder)
        store = StationStore.open(folder, settings.site, settings.station, clock, key)
    except EnvironmentFault as fault:
        if "in use" in fault.title:
            raise EnvironmentFault("the station runs", _ON_SCREEN) from fault
        raise
    with store:
        access = opened_access(house, folder, clock, store)
        needed = signer(Act.MANAGE_PEOPLE, who)
        own = person == who and access.credentials.can_sign(who)
        if not own:
            check_right(needed, access, house)
        able = any(
            access.signing.roles.get(one) in needed.roles and access.credentials.can_sign(one)
            for one in house.people
        )
        first = settings.people.pins and not able and not own
        if settings.people.pins and not first:
            give_pin(who, access)
        yield _Desk(person, who, house, access, store, clock.now(), first)


def _house(config: Path) -> Packhouse:
    from station.cli.settings import today_of
    from station.config.load import load

    return load(config, today_of(config))


def _twice(what: str) -> str:
    given = secret(what)
    if secret(f"{what} again") != given:
        raise BadInput(what, "the two are not the same: nothing was changed")
    return given


def _set(change: Callable[[], None], person: str) -> None:
    try:
        change()
    except PinError as refused:
        raise BadInput(person, str(refused)) from refused


def _pin_words(kept: Credential) -> str:
    return "a PIN" if kept.pin else "none"


def _yes(has: object) -> str:
    return "yes" if has else "–"


def _answer(person: str, words: str) -> Answer:
    return Answer({"person": person, "done": words}, (heading(words), note("It is on record.")))
