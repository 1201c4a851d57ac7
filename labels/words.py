"""The fixed words a label prints beside its own data, by language.

Words of the date are those of Regulation (EU) No 1169/2011 Annex X in each language (from memory,
but for English, German and French). Headings are common practice.
"""

from dataclasses import dataclass
from enum import Enum

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
}

# Two languages side by side, as Canada asks for them.
BILINGUAL = {
    ("en", "fr"): {
        Durability.USE_BY: "Use by / Utiliser avant",
        Durability.BEST_BEFORE: "Best before / Meilleur avant",
    }
}


def words_of_language(language: str) -> LabelWords:
    """Return the fixed words of a language.

    Raises:
        LabelError: None are known.
    """
    if language not in WORDS:
        raise LabelError(
            "Language of the label",
            f"no fixed words for {shown(language)}; known: {', '.join(sorted(WORDS))}",
        )
    return WORDS[language]


_BEST_BEFORE = frozenset(
    [
        *(words.casefold() for known in WORDS.values() for words in known.best_before),
        *(words[Durability.BEST_BEFORE].casefold() for words in BILINGUAL.values()),
    ]
)


def durability_of(words: str) -> Durability:
    """Tell what a date means by the words before it; words not known mean the stricter use-by."""
    return Durability.BEST_BEFORE if words.casefold() in _BEST_BEFORE else Durability.USE_BY
