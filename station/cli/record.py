"""``station record``: the batch record of runs as PDF and CSV."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.progress import long_work
from station.cli.purged import with_purged
from station.cli.source import Blend, RunUid
from station.core.long_work import steps
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import decimal_of, plain
from station.errors import BadInput

if TYPE_CHECKING:
    from station.reports.batch import BatchRecord, Verdict
    from station.store.answers import RunPacks

Pdf = Annotated[Path | None, typer.Option("--pdf", metavar="FILE", help="Write the record here.")]
Csv = Annotated[Path | None, typer.Option("--csv", metavar="FILE", help="Write every bag here.")]
Day = Annotated[
    str | None, typer.Option("--day", metavar="DATE", help="All runs of a production day.")
]

_CAVEAT = "An aid to the packer, no official test; the competent authority decides."
_PLACES = 9
_COLUMNS = ("batch", "bags", "mean", "below_T1", "below_T2", "passes")


def record(
    run: RunUid = None,
    blend: Blend = None,
    day: Day = None,
    pdf: Pdf = None,
    csv: Csv = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Write the record of a batch; exit 1 when a batch of it does not pass."""

    def work() -> Answer:
        folder = home_of(home, config)
        from station.reports.files import check_free, write_whole  # slow to load
        from station.store.purged import gone_between

        for file in (pdf, csv):
            if file is not None:
                check_free(file, force=force)
        with long_work("Judging the runs"):
            records = _records(folder, _chosen(folder, run, blend, day))
        asked = None if day is None else read_day("--day", day)
        gone = () if asked is None else gone_between(folder, asked, asked)
        if pdf is not None:
            from station.reports.batch_pdf import batch_pdf

            with long_work(f"Setting {pdf}"):
                content = batch_pdf(records)
            write_whole(pdf, content)
        if csv is not None:
            from station.reports.batch_csv import batch_csv

            write_whole(csv, batch_csv(records, gone))
        return with_purged(_answer(records, pdf, csv), gone)

    run_verb(as_json, work)


def _chosen(
    home: Path, run: str | None, blend: str | None, day: str | None
) -> tuple[RunPacks, ...]:
    from station.store.purged import refusal_between
    from station.store.run_evidence import runs_of_day
    from station.store.weighed import packs_of_blend, packs_of_run

    if sum(one is not None for one in (run, blend, day)) != 1:
        raise BadInput("nothing to record", "give one of --run UID, --blend LOT or --day DATE")
    if run is not None:
        return (packs_of_run(home, run),)
    if blend is not None:
        return packs_of_blend(home, blend)
    assert day is not None
    asked = read_day("--day", day)
    found = tuple(packs_of_run(home, uid) for uid in runs_of_day(home, asked))
    if not found:
        raise refusal_between(home, asked, asked) or BadInput(
            "--day", f"no run was packed on the production day {asked}"
        )
    return found


def _records(home: Path, chosen: tuple[RunPacks, ...]) -> tuple[BatchRecord, ...]:
    from station.reports.batch import batch_record

    records = []
    for packs in steps(chosen, len(chosen)):
        try:
            records.append(batch_record(home, packs))
        except RuleRefused as refused:
            raise BadInput(f"run {packs.run.id}", str(refused)) from refused
    return tuple(records)


def _answer(records: tuple[BatchRecord, ...], pdf: Path | None, csv: Path | None) -> Answer:
    yes = all(one.accepted for one in records)
    document: dict[str, Json] = {
        "accepted": yes,
        "pdf": None if pdf is None else str(pdf),
        "csv": None if csv is None else str(csv),
        "runs": [_document(one) for one in records],
    }
    title, weight = ("THE BATCH PASSES", Weight.PLAIN) if yes else (
        "THE BATCH DOES NOT PASS",
        Weight.STOP,
    )  # fmt: skip
    page = [heading(title, weight)]
    for one in records:
        unit = one.figures.limits.nominal.unit
        page += [
            facts(
                (
                    ("Run", f"{one.run.product.name}, blend lot {_codes(one)}"),
                    ("Rules", f"{one.rules.id}, {one.rules.version}"),
                    ("Masses in", str(unit)),
                    ("Not in the batch", f"{len(one.left)} bags"),
                )
            ),
            listing(_COLUMNS, [_row(batch) for batch in (*one.hours, one.whole)], "bags mean"),
        ]
    for kind, file in (("PDF", pdf), ("CSV", csv)):
        if file is not None:
            page.append(note(f"{kind} written: {file}"))
    page.append(note(_CAVEAT))
    return Answer(document, tuple(page), yes=yes)


def _codes(one: BatchRecord) -> str:
    return ", ".join(blend.code for blend in one.blends)


def _document(one: BatchRecord) -> dict[str, Json]:
    run, advice, rehearsal = one.run, one.advice, one.rehearsal
    limits = one.figures.limits
    proposal = None if advice is None else advice.proposal
    return {
        "run": run.id,
        "blends": [
            {
                "blend_lot": blend.code,
                "use_by": blend.use_by.isoformat(),
                "lots": [lot for _, lot in blend.lots],
            }
            for blend in one.blends
        ],
        "production_day": run.dating.production_day.isoformat(),
        "product": run.product.code,
        "product_version": run.product.version,
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(limits.nominal.unit),
        "T1": plain(limits.t1.amount),
        "T2": plain(limits.t2.amount),
        "software": run.software,
        "open": one.still_open,
        "accepted": one.accepted,
        "whole": _batch(one.whole),
        "hours": [_batch(hour) for hour in one.hours],
        "rehearsal": None
        if rehearsal is None
        else {"draws": rehearsal.draws, "passed": rehearsal.passed, "seed": rehearsal.seed},
        "target": None if advice is None else advice.target,
        "proposed": None if proposal is None else proposal.target,
        "not_in_batch": [bag.serial for bag in one.left],
        "facts": len(one.facts),
        "head": {"seq": one.evidence.head.seq, "hash": one.evidence.head.hash},
    }


def _batch(one: Verdict) -> dict[str, Json]:
    judged, outlook = one.judged, one.outlook
    if judged is None:
        return {"batch": one.name, "n": 0, "accepted": False, "why": one.why}
    return {
        "batch": one.name,
        "n": judged.n,
        "mean": plain(judged.mean_shown),
        "mean_exact": str(judged.mean),
        "s": plain(judged.s),
        "t1_count": judged.t1_count,
        "t1_accept": judged.t1_accept,
        "t2_count": judged.t2_count,
        "mean_ok": judged.mean_ok,
        "t1_ok": judged.t1_ok,
        "t2_ok": judged.t2_ok,
        "accepted": judged.accepted,
        "passing": None if outlook is None else round(outlook.passing, 6),
        "plan": str(judged.plan),
        "why": one.why,
    }


def _row(one: Verdict) -> tuple[str, ...]:
    judged = one.judged
    if judged is None:
        return (one.name, "0", "", "", "", one.why)
    return (
        one.name,
        str(judged.n),
        plain(decimal_of(judged.mean, _PLACES)),
        f"{judged.t1_count} of {judged.t1_accept}",
        str(judged.t2_count),
        "yes" if judged.accepted else "NO",
    )
