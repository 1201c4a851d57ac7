"""How a product's label is set and in which languages; frozen with the product at a run's start."""

from __future__ import annotations

from dataclasses import dataclass

DESIGN = "pack 100 x 60"


@dataclass(frozen=True, slots=True)
class Wording:
    """A product's own texts in another language.

    Args:
        language: the language, such as ``fr``.
        name: name of the food.
        storage: storage words.
        components: code of each component with its name.
    """

    language: str
    name: str
    storage: str
    components: tuple[tuple[str, str], ...]

    def component(self, code: str) -> str:
        """Return the name of a component.

        Raises:
            KeyError: it has none in this language.
        """
        return dict(self.components)[code]


@dataclass(frozen=True, slots=True)
class ProductLabel:
    """What is settled about the label of a product version.

    Args:
        packer: name and address of the responsible business.
        design: name of the label design.
        language: language of the product's texts and of the fixed words.
        second: the same texts in a second language, where the market asks for two.
        e_mark: whether the packer declares to be entitled to the sign ℮ for it.
        origin: country or place of origin in words; empty where none is given.
        link_stem: start of the web address where the matrix symbol is a QR Code with a GS1 Digital
            Link; empty for GS1 DataMatrix.
    """

    packer: str = ""
    design: str = DESIGN
    language: str = "en"
    second: Wording | None = None
    e_mark: bool = False
    origin: str = ""
    link_stem: str = ""


USUAL = ProductLabel()
"""What holds where a product says nothing about its label."""
