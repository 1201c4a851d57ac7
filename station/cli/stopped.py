"""The record of a station that does not run, open for signed entries from the command line."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.signing import check_right, give_pin, opened_access, sign
from station.core.rights import Act, Proof, Role, Signer, signer
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from collections.abc import Sequence

    from station.config.packhouse import Packhouse
    from station.core.facts import Fact
    from station.core.pack import Moment
    from station.store.writer import StationStore

_WITNESSES = (Role.PACKER, Role.LEAD, Role.QA, Role.MANAGER)

Settings = Annotated[
    Path, typer.Option("--config", metavar="DIR", envvar="STATION_CONFIG", help="The settings.")
]
Who = Annotated[str, typer.Option("--who", metavar="ID", help="Who says so, from people.toml.")]
Why = Annotated[str, typer.Option("--why", metavar="WORDS", help="Why.")]


def packhouse(config: Path) -> Packhouse:
    """The settings, with days counted from today in the plant's time."""
    from station.clock import SystemClock
    from station.config.load import load, load_settings
    from station.line.opening import calendar_day

    today = calendar_day(SystemClock(load_settings(config).zone).now())
    return load(config, today)


@contextmanager
def stopped(
    house: Packhouse, home: Path | None, who: str, act: Act, on_screen: str, second: str = ""
) -> Iterator[tuple[StationStore, Moment, Path]]:
    """The record, open for one signed entry.

    Args:
        house: the settings.
        home: folder of the record, where it is not the settings' own.
        who: id of who signs.
        act: what is signed.
        on_screen: where it is done while the station runs.
        second: id of the second person; empty where one is enough.

    Raises:
        BadInput: who signs may not.
        EnvironmentFault: the station runs, or the disk does not serve.
    """
    from station.clock import SystemClock
    from station.store.writer import StationStore

    if who not in house.people:
        raise BadInput(f"--who {who}", f"is nobody of people.toml: {', '.join(house.people)}")
    settings = house.settings
    folder = home or settings.home
    clock = SystemClock(settings.zone)
    try:
        key = settings.record.key_of(folder)
        store = StationStore.open(folder, settings.site, settings.station, clock, key)
    except EnvironmentFault as fault:
        if "in use" in fault.title:
            raise EnvironmentFault("the station runs", on_screen) from fault
        raise
    with store:
        access = opened_access(house, folder, clock, store)
        sign(act, who, access, house)
        if second:
            if second == who:
                raise BadInput(f"--second {second}", f"{who} signs first: name another person")
            first = signer(act, second)
            check_right(Signer(act, second, _WITNESSES, first.proof), access, house)
            if access.signing.required and first.proof is not Proof.NAME:
                give_pin(second, access)
        at = clock.now()
        store.add_lots(tuple(house.lots.values()), at, "station")
        yield store, at, folder


def record(store: StationStore, facts: Sequence[Fact], at: Moment, who: str, what: str) -> None:
    """Record facts in one commit.

    Raises:
        BadInput: the record refuses them; names what they are about.
    """
    from station.line.ports import StoreFault

    try:
        store.record(facts, at, who)
    except StoreFault as refused:
        raise BadInput(what, str(refused)) from refused
