"""Faults of settings files, collected so that a person sees all of them at once."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from difflib import get_close_matches
from pathlib import Path

from station.errors import BadInput

_LONGEST_SHOWN = 60


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing a settings file must not say.

    Args:
        file: name of the file.
        key: where in it, such as ``product[2].life_days``, counted from 1; or a line and column.
        why: what was given and what is wrong with it.
        allowed: what may stand there; empty where ``why`` says so already.
    """

    file: str
    key: str
    why: str
    allowed: str = ""

    @property
    def words(self) -> str:
        """What is wrong and what is allowed."""
        return f"{self.why}; allowed: {self.allowed}" if self.allowed else self.why


@dataclass(slots=True)
class Faults:
    """The faults found so far in the settings of one folder."""

    folder: Path
    found: list[Fault] = field(default_factory=list)
    instead: Mapping[str, Path] = field(default_factory=dict)
    """Files read in the place of those of the folder, by name."""

    def path_of(self, file: str) -> Path:
        """Where a file of the settings is read."""
        return self.instead.get(file, self.folder / file)

    def add(self, file: str, key: str, why: str, allowed: str = "") -> None:
        """Note one fault."""
        self.found.append(Fault(file, key, why, allowed))

    def raise_any(self) -> None:
        """Refuse the settings when there is a fault.

        Raises:
            BadInput: names each fault's file, key, value given and what is allowed.
        """
        if not self.found:
            return
        if len(self.found) == 1:
            (one,) = self.found
            raise BadInput(f"{self.folder / one.file}: {one.key}", one.words)
        lines = (f"  {one.file}: {one.key}: {one.words}" for one in self.found)
        raise BadInput(
            f"{len(self.found)} faults in the settings of {self.folder}", "\n" + "\n".join(lines)
        )


def shown(value: object) -> str:
    """Quote a value as a file would: text in quotes, all on one line, long ones shortened."""
    if isinstance(value, str):
        text = json.dumps(value, ensure_ascii=not value.isprintable())
    else:
        text = str(value).lower() if isinstance(value, bool) else str(value)
    return text if len(text) <= _LONGEST_SHOWN else text[: _LONGEST_SHOWN - 1] + "…"


def closest(word: str, known: Iterable[str]) -> str:
    """Return the known word a person most likely meant, or an empty text."""
    return next(iter(get_close_matches(word, list(known), n=1, cutoff=0.6)), "")


def unknown(word: str, known: Iterable[str]) -> str:
    """Say that a word is not known, and the one that was probably meant."""
    meant = closest(word, known)
    return f"{shown(word)} is not known" + (f", did you mean {shown(meant)}?" if meant else "")
