"""``station journal head``, ``prove`` and ``key``: what leaves the station as evidence of it."""

from __future__ import annotations

import json
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, cast

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, NeededConfig, home_of
from station.cli.outside import key_file
from station.cli.page import Weight, facts, heading, note
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.store.head_now import HeadNow

To = Annotated[Path | None, typer.Option("--to", metavar="FILE", help="Write it here.")]
Entry = Annotated[
    int | None, typer.Option("--entry", metavar="N", min=1, help="Prove entry N of this epoch.")
]
Serial = Annotated[
    str | None, typer.Option("--serial", metavar="S", help="Prove the entry of this bag.")
]
Since = Annotated[
    int | None,
    typer.Option("--since", metavar="N", min=1, help="Prove that the first N are unchanged."),
]
New = Annotated[bool, typer.Option("--new", help="Take a new key; the station must not run.")]
Who = Annotated[str | None, typer.Option("--who", metavar="ID", help="Who takes it.")]
Why = Annotated[str | None, typer.Option("--why", metavar="WORDS", help="Why.")]

_KEEP = "Keep it away from this machine. It holds for the entries before it, whatever comes later."


def head(
    to: To = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Show the head of the record as words, signed with the station's key."""

    def work() -> Answer:
        folder = home_of(home, config)
        from station.store.head_now import head_now  # slow to load

        now = head_now(folder, key_file(folder, config))
        if to is not None:
            if now.signed is None:
                raise BadInput("the head is not signed", now.unsigned)
            _write(to, f"{now.signed.text()}\n", force=force)
        return _head_answer(now, to)

    run_verb(as_json, work)


def prove(
    entry: Entry = None,
    serial: Serial = None,
    since: Since = None,
    to: To = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Make a proof that can be checked without the record."""

    def work() -> Answer:
        if sum(given is not None for given in (entry, serial, since)) != 1:
            raise BadInput("what to prove", "give one of --entry, --serial and --since")
        folder = home_of(home, config)
        from station.store import proofs  # slow to load

        if since is not None:
            document = proofs.prove_growth(folder, since)
            words = f"The first {since} entries begin the record of this head"
        else:
            seq = entry if entry is not None else proofs.entry_of_serial(folder, serial or "")
            document = proofs.prove_entry(folder, seq)
            words = f"Entry {seq} lies under this head"
        if to is not None:
            _write(to, json.dumps(document, ensure_ascii=False, indent=2) + "\n", force=force)
        rows = (
            ("Head", str(document["words"])),
            ("Written to", str(to) if to is not None else "nowhere: add --to FILE"),
        )
        advice = "Check it with station journal verify --proof FILE --key KEY; no record is needed."
        file = None if to is None else str(to)
        answer: dict[str, Json] = {"file": file}
        answer.update(cast("dict[str, Json]", document))
        return Answer(answer, (heading(words), facts(rows), note(advice)))

    run_verb(as_json, work)


def key(
    config: NeededConfig,
    home: Home = None,
    new: New = False,
    who: Who = None,
    why: Why = None,
    as_json: AsJson = False,
) -> None:
    """Show the key that signs heads; --new takes another one and says so in the record."""

    def work() -> Answer:
        folder = home_of(home, config)
        path = key_file(folder, config)
        if new:
            if not who or not why:
                raise BadInput("--new", "needs --who ID and --why WORDS: the record keeps both")
            _take_new(folder, config, path, who, why)
        from station.store.signing import read_key  # slow to load

        found = read_key(path)
        rows = (("File", str(path)), ("Name", found.id), ("Public key", found.public.hex()))
        document: dict[str, Json] = {
            "file": str(path),
            "id": found.id,
            "public": found.public.hex(),
        }
        words = "A new key signs from now on" if new else "This key signs heads of the journal"
        advice = (
            "Copy the file to a safe place away from this machine, once. Give the public key to "
            "whoever is to check heads."
        )
        return Answer(document, (heading(words), facts(rows), note(advice)))

    run_verb(as_json, work)


def _take_new(folder: Path, config: Path, path: Path, who: str, why: str) -> None:
    from station.cli.settings import today_of  # slow to load
    from station.clock import SystemClock
    from station.config.load import load
    from station.core.ids import new_uid
    from station.store.day_heads import key_fact
    from station.store.signing import make_key
    from station.store.writer import StationStore

    house = load(config, today_of(config))
    if who not in house.people:
        raise BadInput(f"--who {who}", f"is nobody of people.toml: {', '.join(house.people)}")
    settings = house.settings
    clock = SystemClock(settings.zone)
    with StationStore.open(folder, settings.site, settings.station, clock) as store:
        at = clock.now()
        if path.exists():
            aside = path.with_name(f"{path.name}.before-{at.utc:%Y%m%dT%H%M%S}")
            try:
                path.rename(aside)
            except OSError as fault:
                raise EnvironmentFault(f"cannot put {path} aside", str(fault)) from fault
        made = make_key(path)
        store.record((key_fact(new_uid(at), made.public, "replaced", why),), at, who)


def _head_answer(now: HeadNow, to: Path | None) -> Answer:
    signed = now.signed
    document: dict[str, Json] = {
        "size": now.head.size,
        "words": now.head.words,
        "root": now.head.root.hex(),
        "epoch": str(now.head.epoch),
        "signed": None if signed is None else signed.text(),
        "why_not": now.unsigned,
        "file": None if to is None else str(to),
    }
    rows = [
        ("Entry", str(now.head.size)),
        ("Words", now.head.words),
        ("Root", now.head.root.hex()),
        ("Signed", _when(signed.at) if signed else f"NO: {now.unsigned}"),
    ]
    title = heading("Head of the record", Weight.PLAIN if signed else Weight.ATTEND)
    return Answer(document, (title, facts(rows), note(_KEEP)), yes=signed is not None)


def _when(at: datetime) -> str:
    return f"{at:%Y-%m-%d %H:%M:%S} UTC"


def _write(path: Path, text: str, *, force: bool) -> None:
    from station.reports.files import check_free, write_whole  # slow to load

    check_free(path, force=force)
    write_whole(path, text.encode())
