"""What the label of a prepackaged food carries in Canada.

Safe Food for Canadians Regulations ('SFCR') and Food and Drug Regulations ('FDR'). Both official
languages (SFCR s. 206, FDR B.01.012, from memory); the months of a date as two letters that serve
both. Not judged here: whether a nutrition facts table is due (from memory, not for fresh vegetables
without added ingredients).
"""

from labels.rules import eu
from labels.rules.rule import (
    MEMORY,
    METRIC,
    PUBLIC,
    SECONDARY,
    Need,
    Rule,
    Shown,
    metric_grams,
)
from labels.words import BILINGUAL, WORDS

LANGUAGES = ("en", "fr")
KILOGRAM, HALF_A_KILOGRAM = 1000, 500  # grams


def both_languages(shown: Shown) -> str:
    """The texts in English and in French."""
    label = shown.label
    given = {label.language} | ({label.second.language} if label.second else set())
    missing = [language for language in LANGUAGES if language not in given]
    return f"no texts in {', '.join(missing)}; give both languages" if missing else ""


def bilingual_date_words(shown: Shown) -> str:
    """Words of the date in both languages."""
    allowed = BILINGUAL[LANGUAGES].values()
    if shown.label.use_by_words in allowed:
        return ""
    return f"{shown.label.use_by_words!r}; allowed: {' or '.join(map(repr, allowed))}"


def both_lists(shown: Shown) -> str:
    """A list of ingredients in each language, with its heading."""
    label = shown.label
    roles = {label.language: "Ingredients"}
    if label.second:
        roles[label.second.language] = "Ingredients, second language"
    for language, role in roles.items():
        word = WORDS[language].ingredients
        if not any(text.text.startswith(word) for text in shown.texts(role)):
            return f"no list under the heading {word!r}"
    return ""


def metric_unit(shown: Shown) -> str:
    """Grams below a kilogram and kilograms from there on; 500 g may be 0.5 kg."""
    text = shown.label.net_quantity_text
    grams, kilograms = metric_grams(text), METRIC.search(text)
    if grams is None or kilograms is None:
        return ""  # said already
    wanted = "kg" if grams >= KILOGRAM else "g"
    if kilograms[2] == wanted or grams == HALF_A_KILOGRAM:
        return ""
    return f"{text!r}; write it in {wanted}"


REQUIRED, OPTIONAL, COMPUTED = Need.REQUIRED, Need.OPTIONAL, Need.COMPUTED
RULES = (
    Rule("Languages", REQUIRED, "SFCR s. 206; FDR B.01.012", MEMORY, both_languages),
    Rule("Product name", REQUIRED, "SFCR s. 199; FDR B.01.006", MEMORY, eu.same_field),
    Rule("Ingredients", REQUIRED, "FDR B.01.008.1", MEMORY, both_lists),
    Rule("Ingredients", COMPUTED, "FDR B.01.008.2", MEMORY, eu.descending),
    Rule("Allergens", REQUIRED, "FDR B.01.010.1", MEMORY, eu.allergens_declared),
    Rule("Net quantity", COMPUTED, "SFCR s. 221, 231", MEMORY, eu.quantity_is_nominal),
    Rule("Net quantity", COMPUTED, "SFCR s. 229 to 235", PUBLIC, metric_unit),
    Rule("Net quantity", REQUIRED, "SFCR Schedule 6", PUBLIC, eu.figures),
    Rule("Letters", REQUIRED, "SFCR s. 210; FDR A.01.016", PUBLIC, eu.letters),
    Rule("Use-by words", REQUIRED, "FDR B.01.007", PUBLIC, bilingual_date_words),
    Rule("Use-by date", REQUIRED, "FDR B.01.007(1.1)", PUBLIC, eu.date_shown),
    Rule("Packer", REQUIRED, "SFCR s. 92, 218", MEMORY, eu.address),
    Rule("Lot", REQUIRED, "SFCR s. 92", SECONDARY, eu.lot),
)
