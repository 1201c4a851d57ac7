"""All rule sets by id."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_set import RuleSet
from station.core.metrology.rule_sets.eu_76_211 import EU_76_211

RULE_SETS: Mapping[str, RuleSet] = MappingProxyType({one.id: one for one in (EU_76_211,)})


def rule_set(rule_set_id: str) -> RuleSet:
    """Return the rule set with this id.

    Raises:
        RuleRefused: no such id; the message lists the known ones.
    """
    found = RULE_SETS.get(rule_set_id)
    if found is None:
        raise RuleRefused(f"{rule_set_id!r} is no rule set: use one of {', '.join(RULE_SETS)}")
    return found
