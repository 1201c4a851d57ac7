"""Where the net weights of a batch come from: a CSV file, or the bags of the record."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Json
from station.cli.limits import limits_of
from station.cli.nets_file import read_nets
from station.cli.options import home_of, read_mass
from station.core.mass import Mass, MassError
from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_set import Limits, RuleSet
from station.core.metrology.rule_sets.registry import rule_set
from station.core.pack import IN_THE_BATCH
from station.errors import BadInput

if TYPE_CHECKING:
    from station.core.run import Run
    from station.store.answers import RunPacks, WeighedPack

Csv = Annotated[
    Path | None, typer.Option("--csv", metavar="FILE", help="Net weights, a bag a row.")
]
Column = Annotated[str, typer.Option("--column", metavar="NAME", help="Column of the net weights.")]
RunUid = Annotated[
    str | None, typer.Option("--run", metavar="UID", help="A run of the record, or `last`.")
]
Blend = Annotated[
    str | None, typer.Option("--blend", metavar="LOT", help="A blend lot of the record.")
]
OwnRules = Annotated[
    str | None,
    typer.Option("--rules", metavar="ID", help="Net-quantity rules; the run's own if not given."),
]
OwnNominal = Annotated[
    str | None,
    typer.Option("--nominal", metavar="MASS", help="Declared net quantity; the run's own always."),
]


@dataclass(frozen=True, slots=True)
class Asked:
    """The options that name net weights, as given."""

    rules: str | None
    nominal: str | None
    csv: Path | None
    column: str
    home: Path | None
    config: Path | None
    run: str | None
    blend: str | None


@dataclass(frozen=True, slots=True)
class Nets:
    """Net weights and what judges them.

    Args:
        rules: rule set.
        limits: limits of the nominal quantity; those frozen with the run where there is one.
        nets: net weights in the unit of the nominal quantity, in order.
        origin: where they come from, for ``--json``.
        words: the same for people.
        runs: runs of the record with all their bags; empty for a file.
    """

    rules: RuleSet
    limits: Limits
    nets: tuple[Mass, ...]
    origin: dict[str, Json]
    words: str
    runs: tuple[RunPacks, ...] = ()


def nets_of(asked: Asked) -> Nets:
    """Return the net weights that the options name.

    Raises:
        BadInput: none are named, or two kinds; a fault in the file; no such run or blend lot, or
            none of its bags is in the batch.
    """
    named = [one for one in (asked.csv, asked.run, asked.blend) if one is not None]
    if len(named) != 1:
        raise BadInput(
            "which net weights",
            "give one of --csv FILE, --run UID or --blend LOT, the latter two with --home DIR",
        )
    return _of_file(asked, asked.csv) if asked.csv is not None else _of_record(asked)


def _of_file(asked: Asked, path: Path) -> Nets:
    if asked.rules is None or asked.nominal is None:
        raise BadInput("--csv", "a file needs --rules ID and --nominal MASS beside it")
    limits = limits_of(asked.rules, read_mass("--nominal", asked.nominal))
    nets = read_nets(path, asked.column, limits.nominal.unit)
    origin: dict[str, Json] = {"csv": str(path), "column": asked.column}
    return Nets(rule_set(asked.rules), limits, nets, origin, f"{path}, column {asked.column}")


def _of_record(asked: Asked) -> Nets:
    if asked.nominal is not None:
        raise BadInput("--nominal", "is for --csv: a run keeps its own nominal quantity")
    from station.store.weighed import packs_of_blend, packs_of_run  # slow to load

    home = home_of(asked.home, asked.config)
    if asked.run is not None:
        found: tuple[RunPacks, ...] = (packs_of_run(home, asked.run),)
        words = f"run {found[0].run.id}"
    else:
        assert asked.blend is not None
        found = packs_of_blend(home, asked.blend)
        words = f"blend lot {asked.blend}"
    rules, limits = _judged_alike(found, asked.rules, words)
    nets = tuple(
        net_in(pack, limits) for group in found for pack in group.packs
        if pack.quality in IN_THE_BATCH
    )  # fmt: skip
    if not nets:
        raise BadInput(words, "none of its bags is good, held or released: there is no batch")
    runs: list[Json] = [group.run.id for group in found]
    origin: dict[str, Json] = {"home": str(home), "runs": runs, "blend_lot": asked.blend}
    product = found[0].run.product
    return Nets(rules, limits, nets, origin, f"{product.name} v{product.version}, {words}", found)


def net_in(pack: WeighedPack, limits: Limits) -> Mass:
    """Return the net of a bag in the unit of the nominal quantity.

    Raises:
        BadInput: it has no exact value in that unit.
    """
    try:
        return pack.net.in_unit(limits.nominal.unit)
    except MassError as fault:
        raise BadInput(f"bag {pack.serial}", str(fault)) from fault


def rules_of(run: Run, rules: str | None = None) -> tuple[RuleSet, Limits]:
    """Return what judges a run: its own frozen rules, or others if asked for.

    Raises:
        BadInput: no such rules, or another edition of them was frozen with the run.
    """
    limits = run.window.limits
    if rules is not None and rules != limits.rule_set:
        return rule_set_of("--rules", rules), limits_of(rules, limits.nominal)
    own = rule_set_of(f"run {run.id}", limits.rule_set)
    if own.version != limits.version and rules is None:
        raise BadInput(
            f"run {run.id} was packed under {own.id}, {limits.version}",
            f"this station knows {own.version}: give --rules {own.id} to judge it by that",
        )
    return own, limits if own.version == limits.version else limits_of(own.id, limits.nominal)


def rule_set_of(option: str, rules: str) -> RuleSet:
    """Return a rule set by its id.

    Raises:
        BadInput: there is none; names the option and the known ones.
    """
    try:
        return rule_set(rules)
    except RuleRefused as refused:
        raise BadInput(option, str(refused)) from refused


def _judged_alike(
    found: tuple[RunPacks, ...], rules: str | None, words: str
) -> tuple[RuleSet, Limits]:
    """Return what judges all runs found.

    Raises:
        BadInput: they are not judged alike.
    """
    judged = [rules_of(group.run, rules) for group in found]
    if any(limits != judged[0][1] for _, limits in judged):
        runs = ", ".join(group.run.id for group in found)
        raise BadInput(
            words, f"is packed by several runs with other limits: take --run UID, one of {runs}"
        )
    return judged[0]
