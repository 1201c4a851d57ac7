"""``station limits``: the legal limits of one declared net quantity."""

from __future__ import annotations

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Nominal, Rules, read_mass
from station.cli.page import facts, heading, note
from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import plain
from station.core.metrology.rule_set import Limits
from station.core.metrology.rule_sets.registry import rule_set
from station.errors import BadInput

_CAVEAT = (
    "A transcription of the law, to be held against its current text; the competent authority "
    "decides."
)


def limits(rules: Rules, nominal: Nominal, as_json: AsJson = False) -> None:
    """Show T, T1 and T2 of a declared net quantity."""
    run_verb(as_json, lambda: _answer(limits_of(rules, read_mass("--nominal", nominal))))


def limits_of(rules: str, nominal: Mass) -> Limits:
    """Return the limits of a nominal quantity.

    Raises:
        BadInput: no such rule set, or it does not cover the quantity.
    """
    try:
        found = rule_set(rules)
    except RuleRefused as refused:
        raise BadInput("--rules", str(refused)) from refused
    try:
        return found.limits(nominal)
    except RuleRefused as refused:
        raise BadInput("--nominal", str(refused)) from refused


def limits_document(limits: Limits) -> dict[str, Json]:
    """The limits for ``--json``: exact decimals as text, all in ``unit``."""
    return {
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(limits.nominal.unit),
        "T": plain(limits.tolerable.amount),
        "T1": plain(limits.t1.amount),
        "T2": plain(limits.t2.amount),
        "source": limits.source,
    }


def _answer(limits: Limits) -> Answer:
    page = (
        heading(f"{limits.nominal} under {limits.rule_set}"),
        facts(
            (
                ("Nominal quantity", f"{limits.nominal}"),
                ("Tolerable shortage T", f"{limits.tolerable}"),
                ("T1, short when strictly below", f"{limits.t1}"),
                ("T2, none may lie below", f"{limits.t2}"),
                ("Edition", limits.version),
                ("Source", limits.source),
            )
        ),
        note(_CAVEAT),
    )
    return Answer(limits_document(limits), page)
