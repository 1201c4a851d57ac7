"""``station about``: which software this is, and how often settings changed."""

from __future__ import annotations

import platform
from pathlib import Path
from typing import Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import facts, heading, listing, note

Files = Annotated[bool, typer.Option("--files", help="List the files behind the hash.")]
_NOTE = "The hash is that of `sha256sum` over the listed files, taken again by `sha256sum`."
_MOST = 1000


def about(
    files: Files = False, home: Home = None, config: Config = None, as_json: AsJson = False
) -> None:
    """Tell version and hash of the software, and with a home the counters of its settings."""

    def work() -> Answer:
        from station.software_id import relevant_files, software_id  # slow to load

        known = software_id()
        document: dict[str, Json] = {
            "version": known.version,
            "sha256": known.digest,
            "files": known.files,
            "python": platform.python_version(),
        }
        rows = [
            ("Version", known.version),
            ("SHA-256", known.digest),
            ("Files", str(known.files)),
            ("Python", platform.python_version()),
        ]
        page = [heading(f"Software {known}")]
        if home is not None or config is not None:
            counters = _counters(home_of(home, config))
            document |= counters
            rows += [(name.capitalize(), f"{count} changes") for name, count in counters.items()]
        page.append(facts(rows))
        if files:
            names = relevant_files(Path(__file__).resolve().parents[2])
            document["names"] = list(names)
            page.append(listing(("file",), [(name,) for name in names]))
        page.append(note(_NOTE))
        return Answer(document, tuple(page))

    run_verb(as_json, work)


def _counters(home: Path) -> dict[str, int]:
    from station.core.changed_settings import counters_of
    from station.core.journal import EntryKind
    from station.store.facts import facts as read

    found = counters_of(read(home, (EntryKind.SETTING,), newest=_MOST))
    return {"configuration": found.configuration, "calibration": found.calibration}
