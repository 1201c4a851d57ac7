"""``station labels``: doubts, rolls and first-offs on record; answers on a stopped station."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import Weight, heading, listing, note
from station.cli.signing import opened_access, sign
from station.core.label_life import FATE_WORDS, STATE_AFTER, Fate, LabelLifeError, Resolve
from station.core.rights import Act
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from rich.console import RenderableType

    from station.core.checks.rolls import RollAccount
    from station.core.facts import FactRecord
    from station.core.label_life import OpenLabel

_MOST = 100
_DOUBTS = ("serial", "copy", "product", "time", "label", "why")
_ROLLS = ("roll", "issued", "used", "spoiled", "samples", "returned", "difference", "why")
_FIRST_OFFS = ("time", "product", "version", "result", "signed", "label")
_FATES = {fate.replace(" ", "-"): fate for fate in Fate}


def labels(
    context: typer.Context,
    in_doubt: Annotated[bool, typer.Option("--in-doubt", help="Labels in doubt only.")] = False,
    rolls: Annotated[bool, typer.Option("--rolls", help="Accounts of rolls only.")] = False,
    first_offs: Annotated[bool, typer.Option("--first-offs", help="First-offs only.")] = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Show labels in doubt, accounts of label rolls, first-offs; exit 1 where one is open."""
    if context.invoked_subcommand is not None:
        return
    everything = not (in_doubt or rolls or first_offs)

    def work() -> Answer:
        folder = home_of(home, config)
        document: dict[str, Json] = {}
        page: list[RenderableType] = []
        still_open = False
        if in_doubt or everything:
            still_open |= _show_doubts(folder, document, page)
        if rolls or everything:
            still_open |= _show_rolls(folder, document, page)
        if first_offs or everything:
            _show_first_offs(folder, document, page)
        return Answer(document, tuple(page), yes=not still_open)

    run_verb(as_json, work)


def resolve(
    serial: Annotated[str, typer.Argument(metavar="SERIAL", help="As printed.")],
    fate: Annotated[str, typer.Option("--fate", help=f"One of {', '.join(_FATES)}.")],
    who: Annotated[str, typer.Option("--who", metavar="ID", help="Who looked.")],
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Say what became of a label in doubt, on a stopped station."""

    def work() -> Answer:
        if fate not in _FATES:
            raise BadInput("--fate", f"{fate!r}: give one of {', '.join(_FATES)}")
        answer = Resolve(serial, _FATES[fate], who)
        if config is None:
            raise BadInput(
                "--config", "people and station stand in the settings: name their folder"
            )
        _settle(home_of(home, config), config, answer)
        state, words = STATE_AFTER[answer.fate], FATE_WORDS[answer.fate]
        document: dict[str, Json] = {"serial": serial, "label": str(state), "why": words}
        return Answer(document, (heading(f"Label {serial} is {state}: {words}"),))

    run_verb(as_json, work)


def _settle(folder: Path, config: Path, answer: Resolve) -> None:
    from station.cli.settings import today_of  # slow to load
    from station.clock import SystemClock
    from station.config.load import load
    from station.line.label_steps import settle
    from station.line.ports import StoreFault
    from station.store.writer import StationStore

    house = load(config, today_of(config))
    if answer.who not in house.people:
        known = ", ".join(house.people)
        raise BadInput(f"--who {answer.who}", f"is nobody of people.toml: {known}")
    settings = house.settings
    clock = SystemClock(settings.zone)
    key = settings.record.key_of(folder)
    with StationStore.open(folder, settings.site, settings.station, clock, key) as store:
        sign(Act.ANSWER_DOUBT, answer.who, opened_access(house, folder, clock, store), house)
        try:
            settle(store, answer, clock.now())
        except LabelLifeError as refused:
            raise BadInput(f"label {answer.serial}", str(refused)) from refused
        except StoreFault as fault:
            raise EnvironmentFault(f"label {answer.serial}", str(fault)) from fault


def _show_doubts(folder: Path, document: dict[str, Json], page: list[RenderableType]) -> bool:
    from station.store.label_doubts import open_labels  # slow to load

    found = open_labels(folder)
    document["in_doubt"] = [_doubt(one) for one in found]
    if not found:
        page.append(heading("No label is in doubt"))
        return False
    page.append(heading(f"{len(found)} labels wait for an answer", Weight.ATTEND))
    rows = [
        (one.serial, one.mark, one.product, f"{_local(one):%m-%d %H:%M}", str(one.label), one.why)
        for one in found
    ]
    page.append(listing(_DOUBTS, rows, wraps="product why"))
    return True


def _show_rolls(folder: Path, document: dict[str, Json], page: list[RenderableType]) -> bool:
    from station.store.label_rolls import roll_accounts  # slow to load

    found = roll_accounts(folder, _MOST)
    still_open = [one for one in found if one.open]
    document["rolls"] = [_roll(one) for one in found]
    words = f"{len(still_open)} rolls do not add up" if still_open else f"{len(found)} label rolls"
    page.append(heading(words, Weight.ATTEND if still_open else Weight.PLAIN))
    if found:
        page.append(listing(_ROLLS, map(_roll_row, found), " ".join(_ROLLS[1:-1]), "why"))
        page.append(note("difference = issued - used - spoiled - samples - returned"))
    return bool(still_open)


def _show_first_offs(folder: Path, document: dict[str, Json], page: list[RenderableType]) -> None:
    from station.core.checks.first_off import first_off_of  # slow to load
    from station.core.journal import EntryKind
    from station.store.facts import facts

    found = facts(folder, (EntryKind.FIRST_OFF,), newest=_MOST)
    document["first_offs"] = [_first_off(one) for one in found]
    page.append(heading(f"{len(found)} first-offs"))
    rows = []
    for one in found:
        said = first_off_of(one)
        result = f"{one.fact.result} {said.refusal}".strip()
        signed = " ".join(filter(None, (said.lead, said.second)))
        time = f"{_at(one):%m-%d %H:%M}"
        rows.append((time, said.product, str(said.version), result, signed, said.sha256[:12]))
    if rows:
        page.append(listing(_FIRST_OFFS, rows, "version"))


def _doubt(one: OpenLabel) -> Json:
    return {
        "serial": one.serial,
        "copy": one.mark,
        "product": one.product,
        "at": _local(one).isoformat(),
        "label": str(one.label),
        "why": one.why,
    }


def _roll(one: RollAccount) -> Json:
    count = one.count
    return {
        "roll": one.roll,
        "put_in": _at(one.put_in).isoformat(),
        "taken_out": None if one.taken_out is None else _at(one.taken_out).isoformat(),
        "issued": one.issued,
        "used": one.used,
        "spoiled": None if count is None else count.spoiled,
        "samples": None if count is None else count.samples,
        "returned": None if count is None else count.returned,
        "difference": one.difference,
        "explanation": one.explanation,
        "open": one.open,
    }


def _roll_row(one: RollAccount) -> tuple[str, ...]:
    counts: tuple[str, ...] = ("–",) * 4
    if one.count is not None:
        whole = (one.count.spoiled, one.count.samples, one.count.returned, one.difference)
        counts = tuple(str(number) for number in whole)
    words = "in the printer" if one.count is None else one.explanation
    return (one.roll, str(one.issued), str(one.used), *counts, "open" if one.open else words)


def _first_off(record: FactRecord) -> Json:
    from station.core.checks.first_off import first_off_of  # slow to load

    said = first_off_of(record)
    return {
        "at": _at(record).isoformat(),
        "run": said.run,
        "product": said.product,
        "version": said.version,
        "result": record.fact.result,
        "refusal": said.refusal,
        "signed": [one for one in (said.lead, said.second) if one],
        "pieces": said.pieces,
        "sha256": said.sha256,
    }


def _local(one: OpenLabel) -> datetime:
    from station.store.queries import local_time  # slow to load

    return local_time(one.judged_at, one.offset_minutes)


def _at(record: FactRecord) -> datetime:
    from station.store.queries import local_time  # slow to load

    return local_time(record.at.utc, record.at.offset_minutes)
