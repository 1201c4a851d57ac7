"""The list of ingredients: which carry their share, and how the share is written.

Regulation (EU) No 1169/2011 Art. 22(1)(a): the quantity of an ingredient that stands in the name
of the food is given, in percent; Annex VIII 4: in or beside the name, or in the list.
"""

import re
from decimal import Decimal

from labels.content import PackLabel

POINT_LANGUAGES = frozenset({"en"})  # the others write a comma before decimals


def named(name: str, ingredient: str) -> bool:
    """Tell whether an ingredient, as listed, stands in the name of the food as whole words.

    One or many of it are the same ingredient: carrot stands in 'Carrots and celery'. A category it
    belongs to is not known here.
    """
    sought = _stems(ingredient)
    return bool(sought) and f" {sought} " in f" {_stems(name)} "


def _stems(text: str) -> str:
    """Return the words of a text in small letters, without an ending -s or -es."""
    words = re.findall(r"\w+", text.casefold())
    return " ".join(word.removesuffix("s").removesuffix("e") or word for word in words)


def quantified(label: PackLabel) -> tuple[bool, ...]:
    """Tell for each ingredient whether its share must be given: it is named, and not the only one.

    An ingredient named in either language of the label counts.
    """
    if len(label.ingredients) == 1:
        return (False,)
    lists = [(label.product_name, label.ingredients)]
    if label.second:
        lists.append((label.second.product_name, label.second.ingredients))
    return tuple(
        any(named(name, ingredients[place]) for name, ingredients in lists)
        for place in range(len(label.ingredients))
    )


def percent(share: Decimal, language: str) -> str:
    """Return a share in words, such as '(20 %)'."""
    figures = f"{share.normalize():f}"
    return f"({figures if language in POINT_LANGUAGES else figures.replace('.', ',')} %)"


def listed(label: PackLabel, ingredients: tuple[str, ...], language: str) -> tuple[str, ...]:
    """Return ingredients as printed, with the share of each that is named and known."""
    if not label.shares:
        return ingredients
    return tuple(
        f"{ingredient} {percent(share, language)}" if must else ingredient
        for ingredient, share, must in zip(
            ingredients, label.shares, quantified(label), strict=True
        )
    )
