"""The console script ``station``."""

from __future__ import annotations

import sys

from station.app.demo import demo
from station.cli.entry import run
from station.cli.verbs import build


def main() -> None:
    """Carry out the command line and exit with its code."""
    app = build()
    app.command("demo")(demo)
    sys.exit(run(app, sys.argv[1:]))


if __name__ == "__main__":
    main()
