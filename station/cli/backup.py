"""``station backup`` and ``station restore``: the record on a second medium, and back."""

from __future__ import annotations

import os
import signal
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, NeededConfig, home_of
from station.cli.page import Weight, facts, heading, note
from station.cli.progress import progress
from station.errors import BadInput

To = Annotated[
    Path | None,
    typer.Option("--to", metavar="DIR", help="Folder on another disk; else that of the settings."),
]
Gently = Annotated[
    bool, typer.Option("--gently", help="Let everything else on this machine go first.")
]
From = Annotated[Path, typer.Option("--from", metavar="FILE", help="The backup.")]
Who = Annotated[str, typer.Option("--who", metavar="ID", help="Who restores it.")]
Why = Annotated[str, typer.Option("--why", metavar="WORDS", help="Why, for the record.")]

_SAME = "It lies on the same disk as the record, and would be lost with it."
_OTHER = "Every entry was read back from there and checked. Keep the station's key elsewhere too."


def backup(
    to: To = None,
    gently: Gently = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Copy the record to a second medium and check it there; the station may run."""

    def work() -> Answer:
        if gently:
            _be_gentle()
        folder = home_of(home, config)
        target = to or _target(config)
        from station.clock import SystemClock  # slow to load
        from station.store.backup import back_up
        from station.store.weighed import plant_zone

        clock = SystemClock(plant_zone(folder).key)
        with _telling(quiet=as_json) as told:
            done = back_up(folder, target, clock.now(), told)
        document: dict[str, Json] = {
            "file": str(done.backup.path),
            "entries": done.entries,
            "epoch": str(done.place.epoch),
            "head_seq": done.place.seq,
            "head": done.place.hash.hex(),
            "bytes": done.size,
            "same_disk": done.same_disk,
        }
        rows = (
            ("File", str(done.backup.path)),
            ("Entries checked there", str(done.entries)),
            ("Last of them", f"{done.place.seq} of epoch {done.place.epoch}"),
            ("Its hash", done.place.hash.hex()),
            ("Size", f"{done.size / 1e6:.1f} MB"),
        )
        title = heading("The backup is whole", Weight.ATTEND if done.same_disk else Weight.PLAIN)
        return Answer(document, (title, facts(rows), note(_SAME if done.same_disk else _OTHER)))

    run_verb(as_json, work)


def restore(
    source: From,
    config: NeededConfig,
    who: Who,
    why: Why,
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Put a backup in the place of a stopped station's record, under a new epoch."""

    def work() -> Answer:
        from station.cli.settings import today_of  # slow to load
        from station.clock import SystemClock
        from station.config.load import load
        from station.store.restore import restore as put_back

        house = load(config, today_of(config))
        if who not in house.people:
            raise BadInput(f"--who {who}", f"is nobody of people.toml: {', '.join(house.people)}")
        settings = house.settings
        folder = home or settings.home
        with _telling(quiet=as_json) as told:
            done = put_back(
                source,
                folder,
                (settings.site, settings.station),
                SystemClock(settings.zone),
                who,
                why,
                settings.record.key_of(folder),
                told,
            )
        document: dict[str, Json] = {
            "home": str(folder),
            "entries": done.entries,
            "last": done.last,
            "mark": done.mark,
            "aside": None if done.aside is None else str(done.aside),
            "lost": done.lost,
        }
        lost = "nobody knows" if done.lost is None else str(done.lost)
        rows = (
            ("Entries restored", str(done.entries)),
            ("Entries not in the backup", lost),
            ("Serials go on with", f"…-{done.mark}-000001"),
            ("The old home", "there was none" if done.aside is None else str(done.aside)),
        )
        advice = (
            "Bags packed after the backup are not in this record. The old home and the centre may "
            "still have them: look there before anything is shipped or thrown away."
        )
        whole = done.lost == 0
        title = heading("The record is restored", Weight.PLAIN if whole else Weight.ATTEND)
        return Answer(document, (title, facts(rows), note(advice)))

    run_verb(as_json, work)


def _be_gentle() -> None:
    """Let others go first, and clean up when the station that asked stops."""
    if hasattr(os, "nice"):
        os.nice(15)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))


def _target(config: Path | None) -> Path:
    if config is not None:
        from station.config.load import load_settings  # slow to load

        backup_settings = load_settings(config).record.backup
        if backup_settings is not None:
            return backup_settings.folder
    raise BadInput("--to", "name a folder on another disk, or give [backup] in station.toml")


@contextmanager
def _telling(*, quiet: bool) -> Iterator[Callable[[str, int, int], None]]:
    """Show one bar for both halves of the work."""
    with progress("Copying and checking", 200, quiet=quiet or not sys.stderr.isatty()) as told:
        yield lambda what, done, all_: told(
            (100 if what == "checking" else 0) + (100 * done // all_ if all_ else 100)
        )
