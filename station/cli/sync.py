"""``station sync``: how it stands with the centre, and sending by hand."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from importlib.metadata import version
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.options import AsJson, NeededConfig
from station.cli.page import Weight, facts, heading, listing
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.sync.reconcile import DayCompared
    from station.sync.sender import Sender

_WAIT_S = 30.0
_KILO = Decimal("1e-9")
Minutes = Annotated[
    float, typer.Option("--minutes", metavar="N", help="How long to try before giving up.")
]
HomeFolder = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", envvar="STATION_HOME", help="Folder of the record."),
]


@dataclass(frozen=True, slots=True)
class _Outcome:
    sent: int
    left: int
    oldest: str | None
    centre: str
    words: str = ""
    reached: bool = True


def status(config: NeededConfig, home: HomeFolder = None, as_json: AsJson = False) -> None:
    """Compare the record with the centre; exit 1 where entries wait or the two disagree."""
    run_verb(as_json, lambda: _answer(_once(config, home, lambda _: 0)))


def once(config: NeededConfig, home: HomeFolder = None, as_json: AsJson = False) -> None:
    """Send everything there is, in one try; exit 1 where the centre holds other entries."""
    run_verb(as_json, lambda: _answer(_once(config, home, lambda sender: sender.drain())))


def drain(
    config: NeededConfig, home: HomeFolder = None, minutes: Minutes = 60.0, as_json: AsJson = False
) -> None:
    """Send until everything is at the centre, however often the line breaks."""

    def work() -> Answer:
        from drivers.backoff import Backoff
        from station.sync.errors import CentreGone

        backoff, end, sent = Backoff(0.5, 30.0), time.monotonic() + minutes * 60, 0
        while True:
            try:
                outcome = _once(config, home, lambda sender: sender.drain())
            except EnvironmentFault as fault:
                wait = backoff.next_s()
                if not isinstance(fault.__cause__, CentreGone) or time.monotonic() + wait > end:
                    raise
                time.sleep(wait)
                continue
            sent += outcome.sent
            if not outcome.left or outcome.words:
                return _answer(outcome)
            backoff.reset()

    run_verb(as_json, work)


def reconcile(
    config: NeededConfig,
    home: HomeFolder = None,
    days: Annotated[int, typer.Option("--days", metavar="N", help="How many days back.")] = 7,
    as_json: AsJson = False,
) -> None:
    """Compare counts, sums and Merkle roots of each day with the centre; exit 1 on a difference."""

    def work() -> Answer:
        from station.sync.reconcile import reconcile as compare  # slow to load

        if days < 1:
            raise BadInput("--days", f"{days}: give 1 or more")
        found: list[DayCompared] = []

        def compare_days(sender: Sender) -> int:
            upto = {epoch: mark.seq for epoch, mark in sender.marks.items()}
            found.extend(compare(*sender.both_sides, _first_day(config, days), upto))
            return 0

        outcome = _once(config, home, compare_days)
        return _compared(found, outcome)

    run_verb(as_json, work)


def _first_day(config: Path, days: int) -> date:
    from station.clock import SystemClock  # slow to load
    from station.config.load import load_settings
    from station.line.opening import calendar_day

    today = calendar_day(SystemClock(load_settings(config).zone).now())
    return max(date(2000, 1, 1), today - timedelta(days=min(days, 9000) - 1))


def _compared(found: list[DayCompared], outcome: _Outcome) -> Answer:
    listed: list[Json] = [
        {
            "day": iso(one.day),
            "epoch": str(one.epoch),
            "entries": [one.ours.entries, one.theirs.entries],
            "packs": [one.ours.packs, one.theirs.packs],
            "net_ug": [one.ours.net_ug, one.theirs.net_ug],
            "root": [one.ours.root.hex(), one.theirs.root.hex()],
            "differing": [list(each) for each in one.differing],
            "purged": one.purged,
        }
        for one in found
    ]
    rows = [
        (
            f"{one.day}",
            f"{one.ours.entries} / {one.theirs.entries}",
            f"{one.ours.packs} / {one.theirs.packs}",
            f"{one.ours.net_ug * _KILO:.3f} / {one.theirs.net_ug * _KILO:.3f}",
            (", ".join(f"{a}–{b}" for a, b in one.differing) or "equal")
            + (f"; {one.purged} purged here" if one.purged else ""),
        )
        for one in found
    ]
    unequal = [one for one in found if not one.equal]
    words = outcome.words or (
        f"{len(unequal)} of {len(found)} days differ"
        if unequal
        else f"{len(found)} days are equal at the station and at the centre"
    )
    weight = Weight.STOP if unequal or outcome.words else Weight.PLAIN
    columns = ("day", "entries", "bags", "kg", "entries_that_differ")
    page = (heading(words, weight), listing(columns, rows, "entries bags kg"))
    document: dict[str, Json] = {"days": listed, "left": outcome.left, "trouble": outcome.words}
    return Answer(document, page, yes=not (unequal or outcome.words))


def _once(config: Path, home: Path | None, work: Callable[[Sender], int]) -> _Outcome:
    from station.clock import SystemClock  # slow to load
    from station.config.load import load_settings
    from station.store.outlet import JournalOutlet
    from station.sync.address import address_of
    from station.sync.connection import connect
    from station.sync.delivery import Delivery, Heartbeat
    from station.sync.errors import CentreGone, TakenElsewhere, TwoRecords
    from station.sync.sender import Sender

    settings = load_settings(config)
    if settings.sync is None:
        raise BadInput(f"{config / 'station.toml'}", "has no table [sync]: name the centre in it")
    address = address_of(settings.sync)
    try:
        with (
            JournalOutlet(home or settings.home) as outlet,
            connect(address, "station sync", 10.0) as connection,
        ):
            owner = outlet.owner()
            delivery = Delivery(connection, owner.site, owner.station, _WAIT_S)
            sender, sent, words = Sender(outlet, delivery), 0, ""
            try:
                sender.shake_hands()
                sent = work(sender)
            except TwoRecords as two:
                words = str(two)
            except TakenElsewhere:
                sender.shake_hands()  # the running station sends at the same time
            left = sender.backlog()
            if sent and not words:
                now = SystemClock(settings.zone).now().utc
                told = Heartbeat(*sender.head(), left.oldest, now, version("pack-line-station"), "")
                delivery.beat(told)
            return _Outcome(sent, left.entries, iso(left.oldest), address.shown, words)
    except CentreGone as gone:
        raise EnvironmentFault(f"the centre {address.shown} does not serve", str(gone)) from gone


def _answer(outcome: _Outcome) -> Answer:
    document: dict[str, Json] = {
        "centre": outcome.centre,
        "sent": outcome.sent,
        "left": outcome.left,
        "oldest": outcome.oldest,
        "trouble": outcome.words,
    }
    if outcome.words:
        title = heading(f"NOTHING MORE IS SENT: {outcome.words}", Weight.STOP)
    elif outcome.left:
        title = heading(f"{outcome.left} entries wait for the centre", Weight.ATTEND)
    else:
        title = heading("Everything is at the centre")
    rows = (
        ("Centre", outcome.centre),
        ("Sent now", str(outcome.sent)),
        ("Waiting", str(outcome.left)),
        ("The oldest", outcome.oldest or "–"),
    )
    return Answer(document, (title, facts(rows)), yes=not (outcome.left or outcome.words))
