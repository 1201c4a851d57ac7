"""Judges a laid-out pack label by the rules of its market; one broken rule refuses it."""

from collections.abc import Sequence

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.rules import ca, eu, gb, us
from labels.rules.rule import Rule, Shown
from labels.sheet import Plan

RULES: dict[str, tuple[Rule, ...]] = {
    "EU": eu.RULES,
    "DE": eu.RULES,
    "AT": eu.RULES,
    "GB": gb.RULES,
    "US": us.RULES,
    "CA": ca.RULES,
    # No content rule has been seen for these; heights of figures and letters hold all the same.
    "OIML": (),
    "NZ": (),
}


def broken_rules(
    label: PackLabel, design: LabelDesign, plans: Sequence[Plan]
) -> tuple[tuple[Rule, str], ...]:
    """Return each rule of the market a label breaks, with the reason."""
    shown = Shown(label, design, plans)
    reasons = ((rule, rule.broken(shown)) for rule in RULES[label.market])
    return tuple((rule, reason) for rule, reason in reasons if reason)


def judge(label: PackLabel, design: LabelDesign, plans: Sequence[Plan]) -> None:
    """Refuse a label that breaks a rule of its market.

    Raises:
        LabelError: Titled by the particular; says why, the clause, and how well it is known.
    """
    broken = broken_rules(label, design, plans)
    if broken:
        rule, _ = broken[0]
        reasons = "; ".join(
            f"{one.particular.lower()}: {reason} ({one.clause}, {one.status})"
            for one, reason in broken
        )
        raise LabelError(rule.particular, f"refused for {label.market}: {reasons}")
