"""All rule sets by id."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_set import RuleSet
from station.core.metrology.rule_sets.ca_sfcr import CA_SFCR
from station.core.metrology.rule_sets.de_fpackv_2020 import DE_FPACKV_2020
from station.core.metrology.rule_sets.eu_76_211 import EU_76_211
from station.core.metrology.rule_sets.gb_2006_659 import GB_2006_659
from station.core.metrology.rule_sets.nz_sch7a import NZ_SCH7A
from station.core.metrology.rule_sets.oiml_r87_2016 import OIML_R87_2016
from station.core.metrology.rule_sets.us_hb133 import US_HB133

_ALL = (OIML_R87_2016, EU_76_211, GB_2006_659, DE_FPACKV_2020, US_HB133, CA_SFCR, NZ_SCH7A)

RULE_SETS: Mapping[str, RuleSet] = MappingProxyType({one.id: one for one in _ALL})


def rule_set(rule_set_id: str) -> RuleSet:
    """Return the rule set with this id.

    Raises:
        RuleRefused: no such id; the message lists the known ones.
    """
    found = RULE_SETS.get(rule_set_id)
    if found is None:
        raise RuleRefused(f"{rule_set_id!r} is no rule set: use one of {', '.join(RULE_SETS)}")
    return found
