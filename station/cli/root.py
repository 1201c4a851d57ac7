"""The root of the command line: what ``station`` itself says and takes before any verb."""

from __future__ import annotations

import sys
from typing import Annotated

import typer


def root() -> typer.Typer:
    """Return the command line without a verb; they are added to it."""
    app = group("Weigh, check, label and record every bag of a pack line.")
    app.callback(invoke_without_command=True)(_start)
    return app


def group(words: str) -> typer.Typer:
    """Return a group of verbs, with what its help says of it."""
    return typer.Typer(
        help=words, add_completion=False, no_args_is_help=True, pretty_exceptions_enable=False
    )


def _version(asked: bool) -> None:
    if asked:
        from importlib.metadata import version

        sys.stdout.write(f"{version('pack-line-station')}\n")
        raise typer.Exit


def _start(
    show_version: Annotated[
        bool,
        typer.Option("--version", callback=_version, is_eager=True, help="Show the version."),
    ] = False,
) -> None:
    """Weigh, check, label and record every bag of a pack line."""
