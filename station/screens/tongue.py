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


@lru_cache(maxsize=1024)
def _said(sentence: str, language: Language) -> str:
    if language is Language.ENGLISH or not sentence:
        return sentence
    if "\n" in sentence:
        return "\n".join(_said(line, language) for line in sentence.split("\n"))
    found = _found(sentence, language)
    if found is None and sentence[0].isupper():
        lower = _found(sentence[0].lower() + sentence[1:], language)
        return sentence if lower is None else upper_first(lower)
    return sentence if found is None else found


def _found(sentence: str, language: Language) -> str | None:
    """The translation of a sentence, or None where it is not listed."""
    whole = tr(sentence)
    if whole != sentence:
        return whole
    for source, pattern in _patterns():
        found = pattern.fullmatch(sentence)
        if found is not None and (words := tr(source)) != source:
            return words.format(**{k: _said(v, language) for k, v in found.groupdict().items()})
    return None


@cache
def _patterns() -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Sentences with holes, those with most words of their own first."""
    by_words = sorted(SENTENCES, key=lambda one: -len(_HOLE.sub("", one)))
    return tuple((one, re.compile(pattern_of(one))) for one in by_words)


def holes(source: str) -> frozenset[str]:
    """Names of the holes of a message."""
    return frozenset(_HOLE.findall(source))


def pattern_of(source: str) -> str:
    """Return the regular expression of a sentence with holes."""
    parts = _HOLE.split(source)
    return "".join(
        f"(?P<{part}>.+?)" if index % 2 else re.escape(part) for index, part in enumerate(parts)
    )


def upper_first(words: str) -> str:
    """Return a sentence with its first letter as a capital, where the script has any."""
    return words[:1].upper() + words[1:]
