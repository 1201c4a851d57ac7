"""The languages in which the screens speak, by their codes of ISO 639-1."""

from __future__ import annotations

from enum import StrEnum


class Language(StrEnum):
    """A language by its code, as settings name it."""

    ENGLISH = "en"
    SPANISH = "es"
    FRENCH = "fr"
    PUNJABI = "pa"
    """In Gurmukhi letters."""
    VIETNAMESE = "vi"
    CHINESE = "zh"
    """In simplified characters."""
    TAGALOG = "tl"
    PORTUGUESE = "pt"

    @property
    def own_name(self) -> str:
        """What its speakers call it, so that they find it whatever the screen speaks now."""
        return _OWN_NAMES[self]


_OWN_NAMES = {
    Language.ENGLISH: "English",
    Language.SPANISH: "Español",
    Language.FRENCH: "Français",
    Language.PUNJABI: "ਪੰਜਾਬੀ",
    Language.VIETNAMESE: "Tiếng Việt",
    Language.CHINESE: "简体中文",
    Language.TAGALOG: "Tagalog",
    Language.PORTUGUESE: "Português",
}
