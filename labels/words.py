"""The fixed words a label prints beside its own data, by language.

Words of the date are those of Regulation (EU) No 1169/2011 Annex X in each language. Seen in public
text: English, German, French; Swedish and Finnish 'use by' (guidance of a national authority and a
public collection); 'best before' also in Regulation (EC) No 2295/2003 Annex I in Danish, Greek,
Polish, Finnish, Swedish. From memory: the others; Norwegian is of the national regulation.
Headings are common practice; in Polish, Swedish, Danish, Norwegian, Finnish and Greek they are from
memory and were not reviewed by a speaker. There the word before the lot is the letter L itself
(Directive 2011/91/EU Art. 4).
"""

from dataclasses import dataclass, fields
from enum import Enum
from functools import cache

from labels.dates import CALENDARS
from labels.errors import LabelError, shown


class Durability(Enum):
    """What the date of a label means; the value is its application identifier."""

    USE_BY = "17"
    BEST_BEFORE = "15"


@dataclass(frozen=True, slots=True)
class LabelWords:
    """Headings of one language.

    Attributes:
        ingredients: Heading with the word 'ingredients', Regulation (EU) No 1169/2011 Art. 18(1).
        lot: Word before the blend lot; starts with L, Directive 2011/91/EU Art. 4.
        input_lots: Word before the list of input lots.
        serial: Word before the serial of the pack.
        packed: Word before the packing date.
        copy: Word before the copy mark of a reprint.
        see_second: Sentence in the place of input lots that stand on a second label.
        origin: Word before the origin.
        use_by: Words of a use-by date that a label may carry, the usual ones first.
        best_before: Words of a date of minimum durability, the usual ones first.
    """

    ingredients: str
    lot: str
    input_lots: str
    serial: str
    packed: str
    copy: str
    see_second: str
    origin: str
    use_by: tuple[str, ...]
    best_before: tuple[str, ...]


WORDS = {
    "en": LabelWords(
        *("Ingredients", "Lot", "Input lots", "Serial", "Packed", "Copy"),
        "Input lots: see label 2 of 2.",
        "Origin",
        ("Use by",),
        ("Best before", "Best before end", "Best if used by"),
    ),
    "fr": LabelWords(
        *("Ingrédients", "Lot", "Lots entrants", "Série", "Emballé le", "Copie"),
        "Lots entrants : voir étiquette 2 sur 2.",
        "Origine",
        ("À consommer jusqu'au",),
        ("À consommer de préférence avant le", "Meilleur avant"),
    ),
    "de": LabelWords(
        *("Zutaten", "Los", "Eingangslose", "Serie", "Verpackt am", "Kopie"),
        "Eingangslose: siehe Etikett 2 von 2.",
        "Ursprung",
        ("Zu verbrauchen bis",),
        ("Mindestens haltbar bis",),
    ),
    "es": LabelWords(
        *("Ingredientes", "Lote", "Lotes de entrada", "Serie", "Envasado el", "Copia"),
        "Lotes de entrada: véase la etiqueta 2 de 2.",
        "Origen",
        ("Fecha de caducidad",),
        ("Consumir preferentemente antes del",),
    ),
    "it": LabelWords(
        *("Ingredienti", "Lotto", "Lotti in entrata", "Serie", "Confezionato il", "Copia"),
        "Lotti in entrata: vedi etichetta 2 di 2.",
        "Origine",
        ("Da consumare entro",),
        ("Da consumarsi preferibilmente entro il",),
    ),
    "nl": LabelWords(
        *("Ingrediënten", "Lot", "Ingaande loten", "Serie", "Verpakt op", "Kopie"),
        "Ingaande loten: zie etiket 2 van 2.",
        "Oorsprong",
        ("Te gebruiken tot",),
        ("Ten minste houdbaar tot",),
    ),
    "pl": LabelWords(
        *("Składniki", "L", "Partie surowców", "Nr seryjny", "Zapakowano", "Kopia"),
        "Partie surowców: patrz etykieta 2 z 2.",
        "Pochodzenie",
        ("Należy spożyć do",),
        ("Najlepiej spożyć przed", "Najlepiej spożyć przed końcem"),
    ),
    "sv": LabelWords(
        *("Ingredienser", "L", "Ingående partier", "Serienr", "Förpackad", "Kopia"),
        "Ingående partier: se etikett 2 av 2.",
        "Ursprung",
        ("Sista förbrukningsdag",),
        ("Bäst före", "Bäst före utgången av"),
    ),
    "da": LabelWords(
        *("Ingredienser", "L", "Indgående partier", "Serienr.", "Pakket", "Kopi"),
        "Indgående partier: se etiket 2 af 2.",
        "Oprindelse",
        ("Sidste anvendelsesdato",),
        ("Bedst før", "Mindst holdbar til"),
    ),
    "nb": LabelWords(
        *("Ingredienser", "L", "Inngående partier", "Serienr.", "Pakket", "Kopi"),
        "Inngående partier: se etikett 2 av 2.",
        "Opprinnelse",
        ("Siste forbruksdag",),
        ("Best før", "Best før utgangen av"),
    ),
    "fi": LabelWords(
        *("Ainesosat", "L", "Raaka-aine-erät", "Sarjanro", "Pakattu", "Kopio"),
        "Raaka-aine-erät: katso etiketti 2/2.",
        "Alkuperä",
        ("Viimeinen käyttöajankohta",),
        ("Parasta ennen",),
    ),
    "el": LabelWords(
        *("Συστατικά", "L", "Παρτίδες πρώτων υλών", "Αρ. σειράς", "Συσκευασία", "Αντίγραφο"),
        "Παρτίδες πρώτων υλών: βλ. ετικέτα 2 από 2.",
        "Καταγωγή",
        ("Ανάλωση έως",),
        ("Ανάλωση κατά προτίμηση πριν από",),
    ),
}

BETWEEN = " / "  # two languages

# Two languages side by side, as Canada asks for them.
BILINGUAL = {
    ("en", "fr"): {
        Durability.USE_BY: "Use by / Utiliser avant",
        Durability.BEST_BEFORE: "Best before / Meilleur avant",
    }
}


@cache
def missing_words(language: str) -> tuple[str, ...]:
    """Return what a label in a language would lack; empty where all is known."""
    words = WORDS.get(language)
    lacking = [
        field.name.replace("_", " ")
        for field in fields(LabelWords)
        if words is None or not getattr(words, field.name)
    ]
    if language not in CALENDARS:
        lacking.append("names of weekdays and months")
    return tuple(lacking)


def languages() -> tuple[str, ...]:
    """Return the languages a label can be in."""
    return tuple(sorted(language for language in WORDS if not missing_words(language)))


def words_of_language(language: str) -> LabelWords:
    """Return the fixed words of a language.

    Raises:
        LabelError: Some are not known; names them.
    """
    lacking = missing_words(language)
    if lacking:
        raise LabelError(
            "Language of the label",
            f"{shown(language)} lacks {', '.join(lacking)}; complete: {', '.join(languages())}",
        )
    return WORDS[language]


def usual_date_words(durability: Durability, language: str, second: str = "") -> str:
    """Return the words before the date of a label in one language or two."""
    pair = BILINGUAL.get((language, second)) or BILINGUAL.get((second, language))
    if pair:
        return pair[durability]
    known = [words_of_language(one) for one in (language, second) if one]
    both = [
        (one.use_by if durability is Durability.USE_BY else one.best_before)[0] for one in known
    ]
    return BETWEEN.join(both)


_BEST_BEFORE = frozenset(
    [
        *(words.casefold() for known in WORDS.values() for words in known.best_before),
        *(words[Durability.BEST_BEFORE].casefold() for words in BILINGUAL.values()),
    ]
)


def durability_of(words: str) -> Durability:
    """Tell what a date means by the words before it; words not known mean the stricter use-by."""
    parts = [words, *words.split(BETWEEN)]
    best = any(part.casefold() in _BEST_BEFORE for part in parts)
    return Durability.BEST_BEFORE if best else Durability.USE_BY
