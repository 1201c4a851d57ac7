"""The fixed words a label prints beside its own data, by language."""

from dataclasses import dataclass


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
    """

    ingredients: str
    lot: str
    input_lots: str
    serial: str
    packed: str
    copy: str
    see_second: str


WORDS = {
    "en": LabelWords(
        *("Ingredients", "Lot", "Input lots", "Serial", "Packed", "Copy"),
        "Input lots: see label 2 of 2.",
    ),
}
