"""What the label of a prepacked food carries in the European Union.

Regulation (EU) No 1169/2011 ('FIC'), Directive 76/211/EEC (net quantity, ℮), Directive 2011/91/EU
(lot). Not judged here, since a label does not know: whether a nutrition declaration is due (Art.
9(1)(l); unprocessed products of one ingredient or class are exempt, Annex V) and whether origin is
(Art. 26 and, from 1 January 2025, Regulation (EU) 2023/2429).
"""

from itertools import chain, pairwise

from labels.ingredients import quantified
from labels.rules.figure_height import E_MARK, E_MARK_MM, least_figure_height
from labels.rules.letter_height import least_letter_height
from labels.rules.rule import (
    MANDATORY_ROLES,
    MEMORY,
    PUBLIC,
    Need,
    Rule,
    Shown,
    metric_grams,
    substances,
)
from labels.typeface import Face
from labels.words import BETWEEN, WORDS, Durability

# Annex II, as words that stand in lists of ingredients (English; from memory). Celeriac is celery.
ANNEX_II = (
    *("celery", "celeriac", "mustard", "sesame", "peanut", "soya", "soy", "soybean", "lupin"),
    *("wheat", "khorasan", "rye", "barley", "oat", "spelt", "milk", "lactose", "cheese", "egg"),
    *("fish", "crustacean", "prawn", "shrimp", "crab", "lobster", "almond", "hazelnut", "walnut"),
    *("cashew", "pecan", "brazil nut", "pistachio", "macadamia", "queensland nut", "mollusc"),
    *("sulphite", "sulphur dioxide"),
)
ANNEX_II_WORD = substances(ANNEX_II)
# Annex X 1(a): 'best before end' is for a date without its day, and every label here gives the day.
# The others are words of other markets.
NOT_WITH_A_DAY = (
    *("Best before end", "Najlepiej spożyć przed końcem", "Bäst före utgången av"),
    *("Best før utgangen av", "Best if used by", "Meilleur avant"),
)
E_MARK_GRAMS = (5, 10000)  # 76/211/EEC Art. 1: 5 g to 10 kg
ADDRESS_PARTS = 2


def _name(shown: Shown) -> str:
    return "" if shown.texts("Name") else "the name of the food does not stand on the label"


def same_field(shown: Shown) -> str:
    """Name and net quantity on one side of one label."""
    if shown.texts("Name") and shown.texts("Net quantity"):
        return ""
    return "name and net quantity do not stand in the same field of vision"


def list_heading(shown: Shown) -> str:
    """A heading with the word 'ingredients' in the language of the label."""
    word = WORDS[shown.label.language].ingredients
    if any(text.text.startswith(word) for text in shown.texts("Ingredients")):
        return ""
    return f"the list of ingredients lacks its heading {word!r}"


def descending(shown: Shown) -> str:
    """Ingredients in descending order of weight, where their shares are known."""
    label = shown.label
    for (one, share), (after, next_share) in pairwise(
        zip(label.ingredients, label.shares, strict=False)
    ):
        if next_share > share:
            return (
                f"{after!r} ({next_share} %) stands after {one!r} ({share} %); list them by "
                "weight, the heaviest first"
            )
    return ""


def quid(shown: Shown) -> str:
    """A share for each ingredient the name mentions."""
    label = shown.label
    if label.shares:
        return ""
    missing = [one for one, must in zip(label.ingredients, quantified(label), strict=True) if must]
    if not missing:
        return ""
    return f"the name mentions {', '.join(missing)}; give the shares of the recipe in percent"


def allergens_declared(shown: Shown) -> str:
    """Every substance of Annex II in the list is among those to emphasise."""
    label = shown.label
    marked = " ".join(label.allergens).casefold()
    for ingredient in label.ingredients:
        for substance in ANNEX_II_WORD.findall(ingredient.casefold()):
            if substance not in marked:
                return (
                    f"{ingredient!r} holds {substance}, a substance that causes allergies, and is "
                    "not emphasised; mark it as an allergen in the recipe"
                )
    return ""


def allergens_emphasised(shown: Shown) -> str:
    """Each declared allergen is set in another face than the list around it."""
    strong = " ".join(
        text.text for text in shown.texts("Ingredients") if text.face is Face.NARROW_STRONG
    ).casefold()
    for allergen in shown.label.allergens:
        if not all(word in strong for word in allergen.casefold().split()):
            return f"{allergen!r} is not emphasised in the list of ingredients"
    return ""


def quantity_is_nominal(shown: Shown) -> str:
    """The quantity in words is the nominal one, in g or kg."""
    label = shown.label
    grams = metric_grams(label.net_quantity_text)
    if grams is None:
        return f"{label.net_quantity_text!r} states no quantity in g or kg"
    if grams != label.nominal_grams:
        return f"{label.net_quantity_text!r} is not the nominal quantity {label.nominal_grams} g"
    return ""


def figures(shown: Shown) -> str:
    """The figures of the net quantity, as high as the market asks for."""
    label = shown.label
    least = least_figure_height(label.market, label.nominal_grams, shown.design.panel_cm2)
    height = shown.figure_height("Net quantity")
    if height >= least:
        return ""
    return f"its figures are {height:.2f} mm high; at least {least} mm are asked for"


def letters(shown: Shown) -> str:
    """The x-height of mandatory words."""
    least = least_letter_height(shown.label.market)
    height = shown.x_height(MANDATORY_ROLES)
    if height >= least:
        return ""
    return f"letters have an x-height of {height:.2f} mm; at least {least} mm are asked for"


def date_words(shown: Shown) -> str:
    """The words before the date are those of the language, or of both; they mean one thing."""
    label = shown.label
    known = [WORDS[label.language]] + ([WORDS[label.second.language]] if label.second else [])
    meanings = (
        [words for one in known for words in one.use_by],
        [words for one in known for words in one.best_before if words not in NOT_WITH_A_DAY],
    )
    text = label.use_by_words
    for allowed in meanings:
        folded = {words.casefold() for words in allowed}
        if {text.casefold()} <= folded or {one.casefold() for one in text.split(BETWEEN)} <= folded:
            return ""
    return f"{text!r}; allowed in this language: {', '.join(chain(*meanings))}"


def date_shown(shown: Shown) -> str:
    """The date itself stands with its words, uncoded."""
    if shown.texts("Use-by words") and shown.texts("Use-by date"):
        return ""
    return "words and day do not both stand on the label"


def address(shown: Shown) -> str:
    """Name and address of the business: at least two parts set off by commas."""
    parts = [part for part in shown.label.packer_text.split(",") if part.strip()]
    if len(parts) >= ADDRESS_PARTS and shown.texts("Packer"):
        return ""
    return f"{shown.label.packer_text!r} gives no address; write name, street, place"


def lot(shown: Shown) -> str:
    """A lot that begins with L, or a word before it that does."""
    word = WORDS[shown.label.language].lot
    titles = [text.text for text in shown.texts(word)]
    if any(title.startswith("L") for title in titles) or shown.label.blend_lot.startswith("L"):
        return ""
    return "neither the lot nor the word before it begins with the letter L"


def e_mark_declared(shown: Shown) -> str:
    """The sign ℮ only where the packer declares to be entitled to it."""
    label = shown.label
    if E_MARK not in label.quantity_shown:
        return ""
    if not label.e_mark:
        return f"{E_MARK} stands on the label, but the packer does not declare to be entitled to it"
    low, high = E_MARK_GRAMS
    if not low <= label.nominal_grams <= high:
        return f"{E_MARK} is for packs of {low} g to {high} g, not {label.nominal_grams} g"
    return ""


def e_mark_height(shown: Shown) -> str:
    """The sign ℮ at least 3 mm high, beside the net quantity."""
    if E_MARK not in shown.label.quantity_shown:
        return ""
    height = shown.sign_height("Net quantity", E_MARK)
    if height >= E_MARK_MM:
        return ""
    return f"{E_MARK} is {height:.2f} mm high; at least {E_MARK_MM} mm are asked for"


def storage_with_use_by(shown: Shown) -> str:
    """A use-by date is followed by the conditions of storage."""
    if shown.label.durability is not Durability.USE_BY or shown.texts("Storage"):
        return ""
    return "a use-by date stands without conditions of storage"


def origin_shown(shown: Shown) -> str:
    """Origin stands in words where it is given."""
    origin = shown.label.origin
    if not origin or any(origin.split()[0] in text.text for text in shown.texts("Ingredients")):
        return ""
    return f"the origin {origin!r} does not stand on the label"


REQUIRED, OPTIONAL, COMPUTED = Need.REQUIRED, Need.OPTIONAL, Need.COMPUTED
RULES = (
    Rule("Product name", REQUIRED, "FIC Art. 9(1)(a), 17", PUBLIC, _name),
    Rule("Field of vision", REQUIRED, "FIC Art. 13(5)", PUBLIC, same_field),
    Rule("Ingredients", REQUIRED, "FIC Art. 9(1)(b), 18(1)", MEMORY, list_heading),
    Rule("Ingredients", COMPUTED, "FIC Art. 18(1)", MEMORY, descending),
    Rule("Quantity of ingredients", COMPUTED, "FIC Art. 9(1)(d), 22(1)(a)", MEMORY, quid),
    Rule("Allergens", REQUIRED, "FIC Art. 9(1)(c), Annex II", MEMORY, allergens_declared),
    Rule("Allergens", COMPUTED, "FIC Art. 21(1)(b)", MEMORY, allergens_emphasised),
    Rule("Net quantity", COMPUTED, "FIC Art. 9(1)(e), 23(1)", MEMORY, quantity_is_nominal),
    Rule("Net quantity", REQUIRED, "76/211/EEC Annex I 3.1", PUBLIC, figures),
    Rule("Sign ℮", OPTIONAL, "76/211/EEC Art. 1 and 3", MEMORY, e_mark_declared),
    Rule("Sign ℮", OPTIONAL, "76/211/EEC Annex I 3.3", PUBLIC, e_mark_height),
    Rule("Letters", REQUIRED, "FIC Art. 13(2)", PUBLIC, letters),
    Rule("Use-by words", REQUIRED, "FIC Art. 24, Annex X", PUBLIC, date_words),
    Rule("Use-by date", REQUIRED, "FIC Art. 9(1)(f), Annex X", PUBLIC, date_shown),
    Rule("Storage", REQUIRED, "FIC Art. 9(1)(g), Annex X 2", MEMORY, storage_with_use_by),
    Rule("Packer", REQUIRED, "FIC Art. 9(1)(h)", MEMORY, address),
    Rule("Lot", REQUIRED, "2011/91/EU Art. 3 and 4", PUBLIC, lot),
    Rule("Origin", OPTIONAL, "FIC Art. 9(1)(i), 26", MEMORY, origin_shown),
)
