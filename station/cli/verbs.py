"""All verbs that need neither a screen nor a line, on one command line."""

from __future__ import annotations

import typer

from station.cli import (
    about,
    backup,
    batch,
    centre,
    centre_downlink,
    centre_questions,
    checks,
    evidence,
    export,
    forecast,
    giveaway,
    handover,
    holds,
    journal,
    journal_heads,
    label,
    labels,
    limits,
    lots,
    people,
    printers,
    purge,
    recall,
    record,
    rejects,
    report,
    scale_check,
    settings,
    suspect_windows,
    sync,
    target,
    trace,
    verdict,
)
from station.cli.root import group, root


def build() -> typer.Typer:
    """Return the command line with its verbs; more may be added to it."""
    app = root()
    app.command("about")(about.about)
    app.command("limits")(limits.limits)
    app.command("verdict")(verdict.verdict)
    app.command("batch")(batch.batch)
    app.command("forecast")(forecast.forecast)
    app.command("target")(target.target)
    app.command("scale-check")(scale_check.scale_check)
    app.command("suspects")(suspect_windows.suspects)
    app.command("handover")(handover.handover)
    app.command("recall")(recall.recall)
    app.command("evidence")(evidence.evidence)
    app.command("export")(export.export)
    app.command("giveaway")(giveaway.giveaway)
    app.command("report")(report.report)
    app.command("printers")(printers.printers)
    app.command("record")(record.record)
    app.command("backup")(backup.backup)
    app.command("restore")(backup.restore)
    app.command("purge")(purge.purge)
    rejects_verbs = group("List a day's rejects, decide about them, count their bin.")
    rejects_verbs.callback(invoke_without_command=True, no_args_is_help=False)(rejects.rejects)
    rejects_verbs.command("decide")(rejects.decide)
    rejects_verbs.command("bin")(rejects.count_bin)
    app.add_typer(rejects_verbs, name="rejects")
    app.command("hold")(holds.hold)
    app.command("release")(holds.release)
    app.command("checks")(checks.checks)
    app.command("trace")(trace.trace)
    app.command("label")(label.label)
    journal_verbs = group("Prove the record, check it, or build its tables again.")
    journal_verbs.command("verify")(journal.verify)
    journal_verbs.command("rebuild")(journal.rebuild)
    journal_verbs.command("head")(journal_heads.head)
    journal_verbs.command("prove")(journal_heads.prove)
    journal_verbs.command("key")(journal_heads.key)
    journal_verbs.callback()(_journal)
    app.add_typer(journal_verbs, name="journal")
    lots_verbs = group("Take in deliveries, list, hold and release lots.")
    lots_verbs.command("receive")(lots.receive)
    lots_verbs.command("list")(lots.list_lots)
    lots_verbs.command("hold")(lots.hold)
    lots_verbs.command("release")(lots.release)
    lots_verbs.callback()(_lots)
    app.add_typer(lots_verbs, name="lots")
    people_verbs = group("List people; set their PINs and badges.")
    people_verbs.command("list")(people.list_people)
    people_verbs.command("add")(people.add)
    people_verbs.command("pin")(people.pin)
    people_verbs.command("badge")(people.badge)
    people_verbs.command("disable")(people.disable)
    people_verbs.callback()(_people)
    app.add_typer(people_verbs, name="people")
    labels_verbs = group("Look at labels in doubt, label rolls and first-offs.")
    labels_verbs.callback(invoke_without_command=True, no_args_is_help=False)(labels.labels)
    labels_verbs.command("resolve")(labels.resolve)
    app.add_typer(labels_verbs, name="labels")
    sync_verbs = group("Send the record to the centre, and see how it stands.")
    sync_verbs.command("status")(sync.status)
    sync_verbs.command("once")(sync.once)
    sync_verbs.command("drain")(sync.drain)
    sync_verbs.command("reconcile")(sync.reconcile)
    sync_verbs.callback()(_sync)
    app.add_typer(sync_verbs, name="sync")
    centre_verbs = group("Make the centre, and ask it about every site and line.")
    centre_verbs.command("init")(centre.init)
    centre_verbs.command("stations")(centre.stations)
    centre_verbs.command("quarantine")(centre.quarantine)
    centre_verbs.command("key")(centre_downlink.key)
    centre_verbs.command("publish")(centre_downlink.publish)
    centre_verbs.command("stop")(centre_downlink.stop)
    centre_verbs.command("free")(centre_downlink.free)
    centre_verbs.command("rejects")(centre_questions.rejects)
    centre_verbs.command("recall")(centre_questions.recall)
    centre_verbs.command("trace")(centre_questions.trace)
    centre_verbs.command("giveaway")(centre_questions.giveaway)
    centre_verbs.callback()(_centre)
    app.add_typer(centre_verbs, name="centre")
    settings_verbs = group("Check the settings.")
    settings_verbs.command("check")(settings.check)
    settings_verbs.callback()(_settings)
    app.add_typer(settings_verbs, name="settings")
    return app


def _journal() -> None:
    """Prove the record, check it, or build its tables again."""


def _lots() -> None:
    """Take in deliveries, list, hold and release lots."""


def _people() -> None:
    """List people; set their PINs and badges."""


def _sync() -> None:
    """Send the record to the centre, and see how it stands."""


def _centre() -> None:
    """Make the centre, and ask it about every site and line."""


def _settings() -> None:
    """Check the settings."""
