"""The console script ``station``."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

from station.app.memory import loading

if TYPE_CHECKING:
    import typer

_RUN = "run"


def main() -> None:
    """Carry out the command line and exit with its code."""
    words = sys.argv[1:]
    with loading():
        from station.cli.entry import run as run_command

        app = station_verb() if words[:1] == [_RUN] else every_verb()
    sys.exit(run_command(app, words))


def station_verb() -> typer.Typer:
    """The verb that starts a station, alone: a packer waits for it, and all others take a while."""
    from station.app.run import run
    from station.cli.root import root

    app = root()
    app.command(_RUN)(run)
    return app


def every_verb() -> typer.Typer:
    """The whole command line."""
    from station.app.demo import demo
    from station.app.run import run
    from station.app.shipping_verbs import shipping_verbs
    from station.app.speed import verb as speed
    from station.app.week.verb import week
    from station.cli.verbs import build

    app = build()
    app.command(_RUN)(run)
    app.command("demo")(demo)
    app.add_typer(speed.verbs(), name="bench")
    app.command("week")(week)
    app.add_typer(shipping_verbs(), name="cases")
    return app


if __name__ == "__main__":
    main()
