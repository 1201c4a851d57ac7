"""The console script ``station``."""

from __future__ import annotations

import sys

from station.app.demo import demo
from station.app.run import run
from station.app.shipping_verbs import shipping_verbs
from station.app.speed import verb as speed
from station.app.week.verb import week
from station.cli.entry import run as run_command
from station.cli.verbs import build


def main() -> None:
    """Carry out the command line and exit with its code."""
    app = build()
    app.command("run")(run)
    app.command("demo")(demo)
    app.add_typer(speed.verbs(), name="bench")
    app.command("week")(week)
    app.add_typer(shipping_verbs(), name="cases")
    sys.exit(run_command(app, sys.argv[1:]))


if __name__ == "__main__":
    main()
