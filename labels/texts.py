"""Texts a label can print: one line of printable characters in normal form C."""

import unicodedata
from functools import lru_cache

from labels.errors import LabelError, shown
from labels.gs1_digits import describe

# Categories that are never ink: controls, formats (bidi overrides among them), surrogates, private
# and unassigned characters, line and paragraph separators.
UNPRINTABLE = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
TEXTS_KEPT = 512


def checked_text(where: str, value: object, longest: int) -> str:
    """Return a text of one printable line in normal form C.

    Args:
        where: What the text is, for the message.
        value: The text.
        longest: Most characters.

    Raises:
        LabelError: No text, an empty or too long one, or a character that cannot be printed.
    """
    if not isinstance(value, str):
        raise LabelError(where, f"{shown(value)} is no text")
    return _checked(where, value, longest)


@lru_cache(TEXTS_KEPT)
def _checked(where: str, value: str, longest: int) -> str:
    """Check a text; every label of a run asks for the same ones."""
    text = unicodedata.normalize("NFC", value)
    if not text.strip():
        raise LabelError(where, "is empty; a text is needed here")
    if len(text) > longest:
        raise LabelError(
            where, f"{shown(text)} has {len(text)} characters; allowed: up to {longest}"
        )
    for position, character in enumerate(text, start=1):
        if unicodedata.category(character) in UNPRINTABLE:
            raise LabelError(
                where,
                f"{shown(text)} has {describe(character)} at place {position}; allowed: "
                "printable characters on one line",
            )
    return text
