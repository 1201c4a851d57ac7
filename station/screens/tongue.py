"""The one door through which words of the screens pass into the language shown now.

English words are the keys. Core, line and record speak English alone; what they say is turned into
another language at the moment it is painted, so that a record reads the same whoever packed. What
has no translation is shown in English. Figures keep the digits and the decimal point of the scale
in every language: whoever compares the screen with the scale's own display must see the same signs.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from importlib.resources import as_file, files

from PySide6.QtCore import QCoreApplication, QTranslator

from station.core.languages import Language
from station.screens.sentences import SENTENCES

CONTEXT = "station"
"""Of every message, as Qt Linguist calls what belongs together."""
FOLDER = "languages"
_HOLE = re.compile(r"\{(\w+)\}")


class _Now:
    """What is spoken in this process; Qt too has one set of translators for all its windows."""

    language = Language.ENGLISH
    translator: QTranslator | None = None


def spoken() -> Language:
    """The language shown now."""
    return _Now.language


def speak(language: Language) -> None:
    """Show another language; every widget is told by Qt's own LanguageChange event.

    Raises:
        RuntimeError: the language's file is not readable: the installation is damaged.
    """
    if language is _Now.language:
        return
    before, _Now.language, _Now.translator = _Now.translator, language, _loaded(language)
    if _Now.translator is not None:
        QCoreApplication.installTranslator(_Now.translator)
    if before is not None:
        QCoreApplication.removeTranslator(before)


@cache
def _loaded(language: Language) -> QTranslator | None:
    """The translator of a language; English needs none."""
    if language is Language.ENGLISH:
        return None
    translator = QTranslator()
    with as_file(files("station.screens") / FOLDER / f"station_{language}.qm") as path:
        if not translator.load(str(path)):
            raise RuntimeError(f"language file {path.name} cannot be read: install again")
    return translator


def mark(source: str) -> str:
    """Return words as they are, and let them be found for translation."""
    return source


def tr(source: str) -> str:
    """Return fixed words in the language shown now."""
    if not source or _Now.language is Language.ENGLISH:
        return source
    return QCoreApplication.translate(CONTEXT, source)


def say(sentence: str) -> str:
    """Return what core or line said, with figures and codes in it, in the language shown now."""
    return _said(sentence, _Now.language)


@lru_cache(maxsize=4096)
def _said(sentence: str, language: Language) -> str:
    if language is Language.ENGLISH or not any(map(str.isalpha, sentence)):
        return sentence
    if "\n" in sentence:
        return "\n".join(_said(line, language) for line in sentence.split("\n"))
    found = _whole(sentence, language)
    return _in_parts(sentence, language) if found is None else found


def _whole(sentence: str, language: Language) -> str | None:
    """The translation of a sentence, however it begins and ends; None where it is not listed."""
    small = sentence[0].lower() + sentence[1:]
    for words in (sentence, small):
        if (found := tr(words)) != words:
            return found if words is sentence else upper_first(found)
    for source, pattern in likely(sentence, small):
        for words in (sentence, small):
            if found := _filled(source, pattern.fullmatch(words), language):
                return found if words is sentence else upper_first(found)
    if sentence[-1] in _STOPS and len(sentence) > 1:
        without = _whole(sentence[:-1], language)
        return without and without + _STOPS[sentence[-1]].get(language, sentence[-1])
    return None


def _filled(source: str, match: re.Match[str] | None, language: Language) -> str:
    """The translation of a sentence with holes that matched; empty where it is none."""
    if match is None:
        return ""
    words = tr(source)
    taken = match.groupdict()
    ends = match.string[-1] in _STOPS and source[-1] == "}"
    if ends or any(map(_NO_HOLE.search, taken.values())):
        return ""
    said = words.format(**{name: _said(one, language) for name, one in taken.items()})
    return "" if said == match.string else said


def _in_parts(sentence: str, language: Language) -> str:
    """Each part of what is put together of sentences, words and codes, by itself."""
    for sign in _SIGNS:
        parts, between = sign.split(sentence), sign.findall(sentence)
        if len(parts) > 1:
            parts, between = _together(parts, between, language)
            said = [_said(part, language) for part in parts]
            if said == parts:
                continue
            signs = _SIGNS_OF.get(language, {})
            between = [signs.get(one, one) for one in between]
            ends = (*between, "")
            return "".join(part + end for part, end in zip(said, ends, strict=True))
    return sentence


def _together(
    parts: list[str], between: list[str], language: Language
) -> tuple[list[str], list[str]]:
    """Join the parts of what is listed as one sentence although the gap stands in it."""
    for long in range(min(len(parts) - 1, _MOST_PARTS), 1, -1):
        for at in range(len(parts) - long + 1):
            end = at + long
            gaps = (*between[at : end - 1], "")
            one = "".join(map(str.__add__, parts[at:end], gaps))
            if parts[at] and parts[end - 1] and _whole(one, language):
                return [*parts[:at], one, *parts[end:]], [*between[:at], *between[end - 1 :]]
    return parts, between


_MOST_PARTS = 3
_END = r"(?<=[.?!]) (?=[^a-z])"
"""A blank behind which the next sentence begins."""
_NO_HOLE = re.compile(rf"{_END}|,$")
"""What no hole takes: the end of a sentence, and a part up to its comma."""
_GAPS = (_END, "^[\u2013\u25b6!] +", " {2,}", "; ", " [\u2013\u00b7] ", ": ", ", ")
_SIGNS = tuple(map(re.compile, _GAPS))
"""What stands between the parts of a text, the widest gap first."""
_STOPS = {
    ".": {Language.CHINESE: "\u3002", Language.PUNJABI: "\u0964"},
    ":": {Language.CHINESE: "\uff1a", Language.FRENCH: "\u00a0:"},
}
_SIGNS_OF = {
    Language.CHINESE: {" ": "", "; ": "\uff1b", ": ": "\uff1a", ", ": "\uff0c"},
    Language.FRENCH: {"; ": "\u00a0; ", ": ": "\u00a0: "},
}
"""Chinese: GB/T 15834; French: a blank that does not break before both, as French is set."""


Pattern = tuple[str, re.Pattern[str]]
"""A sentence with holes, and the regular expression of it."""


def likely(*sentences: str) -> tuple[Pattern, ...]:
    """Return the sentences with holes that may fit, those with most words of their own first.

    Only those are tried of which one chosen word stands in the sentence, so that codes, figures
    and names, of which tables are full, cost no regular expression at all.
    """
    by_word = _by_word()
    words = {word for sentence in sentences for word in _WORD.findall(sentence)}
    found = [one for word in words for one in by_word.get(word, ())]
    return tuple((source, pattern) for _, source, pattern in sorted(found, key=_rank))


_WORD = re.compile(r"\w+")


def _rank(one: tuple[int, str, re.Pattern[str]]) -> int:
    return one[0]


@cache
def _by_word() -> dict[str, list[tuple[int, str, re.Pattern[str]]]]:
    """Every sentence with holes under its longest word that touches no hole.

    Of two with as many words of their own, the one whose holes take less comes first.
    """
    found: dict[str, list[tuple[int, str, re.Pattern[str]]]] = {}
    for source in filter(holes, SENTENCES):
        own = _HOLE.sub("\0", source)
        words = re.findall(r"(?<![\w\0])\w+(?![\w\0])", own)
        if not words:
            raise ValueError(f"sentence {source!r} has no word of its own: list it without holes")
        rank = 2 * -len(own.replace("\0", "")) + (".+?" in pattern_of(source))
        found.setdefault(max(words, key=len), []).append(
            (rank, source, re.compile(pattern_of(source)))
        )
    return found


def holes(source: str) -> frozenset[str]:
    """Names of the holes of a message."""
    return frozenset(_HOLE.findall(source))


_TAKES = {
    ("count", "number", "whole"): r"[-+\u2212]?[\d.:]+|\u2026",
    ("code",): r"\S+",
    ("begin_code", "end_code"): r"\S*\d\S*",
    ("mass",): r"[-+\u2212]?\d.*?|\u2026.*?",
}
"""Holes that take figures alone, one word, a code with a figure in it, or what begins with a
figure; others take anything."""


def pattern_of(source: str) -> str:
    """Return the regular expression of a sentence with holes."""
    parts = _HOLE.split(source)
    for index in range(1, len(parts), 2):
        takes = next((one for names, one in _TAKES.items() if parts[index] in names), ".+?")
        parts[index] = f"(?P<{parts[index]}>{takes})"
    parts[::2] = map(re.escape, parts[::2])
    return "".join(parts)


def upper_first(words: str) -> str:
    """Return a sentence with its first letter as a capital, where the script has any."""
    return words[:1].upper() + words[1:]
