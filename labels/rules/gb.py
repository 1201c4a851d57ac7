"""What the label of a prepacked food carries in Great Britain.

Regulation (EU) No 1169/2011 as assimilated law, the Food (Lot Marking) Regulations 1996 and the
Weights and Measures (Packaged Goods) Regulations 2006 ask for the same particulars (from memory).
The address must be in the United Kingdom, the Channel Islands or the Isle of Man (from memory);
where a place lies is not judged here.
"""

from dataclasses import replace

from labels.rules import eu
from labels.rules.rule import MEMORY, Rule

CLAUSES = {
    "76/211/EEC": "SI 2006/659",
    "2011/91/EU": "SI 1996/1502",
    "FIC": "assimilated Regulation 1169/2011",
}


def _british(rule: Rule) -> Rule:
    law = next(law for law in CLAUSES if rule.clause.startswith(law))
    place = rule.clause.removeprefix(law).strip() if law == "FIC" else ""
    return replace(rule, clause=f"{CLAUSES[law]} {place}".strip(), status=MEMORY)


RULES = tuple(_british(rule) for rule in eu.RULES)
