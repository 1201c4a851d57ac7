"""Which translations nobody who speaks the language has read yet.

The files of Qt Linguist keep it: a message of the type ``unfinished`` that has words is a draft,
and whoever reviews it there marks it as done. All translations of this project began as drafts made
by machine.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from xml.etree import ElementTree as Tree

from station.core.languages import Language
from station.screens.tongue import FOLDER


@dataclass(frozen=True, slots=True)
class Reviewed:
    """How far one language is reviewed.

    Args:
        language: which.
        messages: how many there are.
        drafts: of them made by machine and not reviewed.
        missing: of them without words, shown in English.
    """

    language: Language
    messages: int
    drafts: int
    missing: int


@cache
def unreviewed() -> tuple[Reviewed, ...]:
    """Every language but English, in which the messages are written."""
    return tuple(_count(one) for one in Language if one is not Language.ENGLISH)


def _count(language: Language) -> Reviewed:
    text = (files("station.screens") / FOLDER / f"station_{language}.ts").read_bytes()
    found = Tree.fromstring(text).findall(".//message/translation")
    words = [bool((one.text or "").strip()) for one in found]
    finished = [one.get("type") != "unfinished" for one in found]
    drafts = sum(said and not done for said, done in zip(words, finished, strict=True))
    return Reviewed(language, len(found), drafts, words.count(False))


def review_words() -> str:
    """For the service page: languages with drafts, and how many."""
    open_ones = [one for one in unreviewed() if one.drafts or one.missing]
    if not open_ones:
        return "all reviewed"
    said = ", ".join(
        f"{one.language} {one.drafts} of {one.messages}"
        + (f" ({one.missing} missing)" if one.missing else "")
        for one in open_ones
    )
    return f"made by machine, not reviewed: {said}"
