"""Fixed words: complete for each language, those of the date as the law writes them."""

import dataclasses

import pytest

from labels.dates import CALENDARS
from labels.errors import LabelError
from labels.typeface import Face, type_of
from labels.words import (
    WORDS,
    Durability,
    durability_of,
    languages,
    missing_words,
    usual_date_words,
    words_of_language,
)

# Regulation (EC) No 2295/2003 Annex I gives 'best before' on packings in each language.
BEST_BEFORE_2295_2003 = {
    "da": "Mindst holdbar til",
    "de": "Mindestens haltbar bis",
    "el": "Ανάλωση κατά προτίμηση πριν από",
    "en": "Best before",
    "fi": "parasta ennen",
    "fr": "À consommer de préférence avant le",
    "pl": "Najlepiej spożyć przed",
    "sv": "Bäst före",
}


def test_every_language_with_a_calendar_is_complete() -> None:
    assert set(languages()) == set(CALENDARS)
    assert {"pl", "sv", "da", "nb", "fi", "el"} <= set(languages())


@pytest.mark.parametrize("language", sorted(BEST_BEFORE_2295_2003))
def test_best_before_in_the_words_of_regulation_2295_2003(language: str) -> None:
    known = [one.casefold() for one in WORDS[language].best_before]
    assert BEST_BEFORE_2295_2003[language].casefold() in known


@pytest.mark.parametrize("language", languages())
def test_words_have_glyphs_a_lot_begins_with_l_and_dates_mean_what_they_say(language: str) -> None:
    own = words_of_language(language)
    for field in dataclasses.fields(own):
        value = getattr(own, field.name)
        for text in (value,) if isinstance(value, str) else value:
            type_of(Face.NARROW_STRONG).check(text, language)
            type_of(Face.STRONG).check(text, language)
    assert own.lot.startswith("L")  # Directive 2011/91/EU Art. 4
    assert {durability_of(one) for one in own.use_by} == {Durability.USE_BY}
    assert {durability_of(one) for one in own.best_before} == {Durability.BEST_BEFORE}


def test_a_language_that_lacks_words_is_refused_with_what_it_lacks(monkeypatch) -> None:
    with monkeypatch.context() as changed:
        changed.setitem(WORDS, "vi", dataclasses.replace(WORDS["en"], lot="", use_by=()))
        missing_words.cache_clear()
        with pytest.raises(LabelError, match=r"'vi' lacks lot, use by, names of weekdays"):
            words_of_language("vi")
        assert "vi" not in languages()
    missing_words.cache_clear()


@pytest.mark.parametrize(
    ("language", "second", "meaning", "text"),
    [
        ("en", "", Durability.USE_BY, "Use by"),
        ("en", "fr", Durability.BEST_BEFORE, "Best before / Meilleur avant"),
        ("fr", "en", Durability.BEST_BEFORE, "Best before / Meilleur avant"),
        ("sv", "fi", Durability.USE_BY, "Sista förbrukningsdag / Viimeinen käyttöajankohta"),
    ],
)
def test_usual_words_of_one_language_or_two(language, second, meaning, text) -> None:
    assert usual_date_words(meaning, language, second) == text
    assert durability_of(text) is meaning
