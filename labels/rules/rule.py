"""What a rule of label content is, and what it looks at: the label's facts and its laid-out words.

Heights are measured on the glyphs as placed, never taken from type sizes.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from functools import cached_property

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.layout import PlacedText
from labels.sheet import Plan
from labels.typeface import type_of

HAIR = 1e-6  # mm; a height computed back from its own em is off by less


class Need(Enum):
    """Whether a particular must stand on a label."""

    REQUIRED = "required"
    OPTIONAL = "optional"
    COMPUTED = "computed from the recipe or the facts"


@dataclass(frozen=True)
class Shown:
    """A label with its design and its pages as laid out."""

    label: PackLabel
    design: LabelDesign
    plans: Sequence[Plan]

    @cached_property
    def _by_role(self) -> dict[str, list[PlacedText]]:
        found: dict[str, list[PlacedText]] = {}
        for text in self.plans[0].texts:
            found.setdefault(text.role, []).append(text)
        return found

    def texts(self, role: str) -> list[PlacedText]:
        """Return the texts of a role on the first page."""
        return self._by_role.get(role, [])

    def figure_height(self, role: str) -> Decimal:
        """Return the least height of the figures 0-9 of a role, mm; 0 where it has none."""
        heights = [
            type_of(text.face).height(figures) * text.size
            for text in self.texts(role)
            if (figures := "".join(re.findall("[0-9]", text.text)))
        ]
        return Decimal(min(heights, default=0.0) + HAIR)

    def sign_height(self, role: str, sign: str) -> Decimal:
        """Return the least height of a sign in a role, mm; 0 where it does not stand there."""
        heights = [
            type_of(text.face).height(sign) * text.size
            for text in self.texts(role)
            if sign in text.text
        ]
        return Decimal(min(heights, default=0.0) + HAIR)

    def x_height(self, roles: Sequence[str]) -> Decimal:
        """Return the least x-height of the texts whose role begins with one of these, mm."""
        begins = tuple(roles)
        sizes = {
            (text.face, text.size)
            for plan in self.plans
            for text in plan.texts
            if text.role.startswith(begins)
        }
        heights = [type_of(face).x_height * size for face, size in sizes]
        return Decimal(min(heights, default=0.0) + HAIR)


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule of one market.

    Attributes:
        particular: What it is about; the title of a refusal.
        need: Whether the particular must be there.
        clause: Where it is written.
        status: 'public text', 'secondary text' or 'from memory'.
        broken: Why a label breaks it, or '' where it keeps it.
    """

    particular: str
    need: Need
    clause: str
    status: str
    broken: Callable[[Shown], str]


PUBLIC, SECONDARY, MEMORY = "public text", "secondary text", "from memory"

MANDATORY_ROLES = ("Storage", "Ingredients", "Input lots", "Packer", "Lot", "Use-by words")
METRIC = re.compile(r"([0-9][0-9  ]*(?:[.,][0-9]+)?)[  ]?(kg|g)\b")


def substances(names: Sequence[str]) -> re.Pattern[str]:
    """Return what finds any of these in an ingredient in small letters, one or many of it."""
    return re.compile(rf"\b({'|'.join(names)})(?:e?s)?\b")


def metric_grams(text: str) -> Decimal | None:
    """Return the metric quantity a text states, in grams; None where it states none."""
    match = METRIC.search(text)
    if match is None:
        return None
    number = re.sub(r"[  ]", "", match[1]).replace(",", ".")
    return Decimal(number) * (1000 if match[2] == "kg" else 1)
