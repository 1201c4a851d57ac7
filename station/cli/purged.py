"""What an answer says of runs that were purged, so that a gap is not read as nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from station.cli.answer import Answer, Json
from station.cli.page import Weight, day, facts, heading

if TYPE_CHECKING:
    from station.core.shipping_lines import Place
    from station.store.purged import GoneRun


def with_purged(answer: Answer, gone: Sequence[GoneRun]) -> Answer:
    """Put what was purged beside an answer about what is left.

    Args:
        answer: of what is on record.
        gone: purged runs that belong to what was asked.
    """
    if not gone:
        return answer
    runs = "1 run was" if len(gone) == 1 else f"{len(gone)} runs were"
    page = (
        heading(f"NOT IN THIS ANSWER: {runs} purged", Weight.ATTEND),
        facts([(one.run.uid, f"{one.words}") for one in gone]),
    )
    listed: list[Json] = [purged_document(one) for one in gone]
    return replace(
        answer, document={**answer.document, "purged": listed}, page=(*answer.page, *page)
    )


def purged_document(gone: GoneRun) -> dict[str, Json]:
    """A purged run for ``--json``."""
    return {
        "run": gone.run.uid,
        "product": gone.run.product,
        "blend_lots": list(gone.run.blend_lots),
        "first_day": gone.run.first_day.isoformat(),
        "last_day": gone.run.last_day.isoformat(),
        "bags": gone.run.bags,
        "purged_utc": gone.record.at.utc.isoformat(),
        "who": gone.record.who,
        "why": gone.purge.why,
        "entry": gone.record.seq,
        "export": gone.purge.folder,
        "sha256": gone.purge.digest,
    }


def gone_answer(serial: str, gone: GoneRun, place: Place | None) -> Answer:
    """A bag that was purged: when and by which purge it went, where its entry is now."""
    from station.reports.recall_back import place_words

    where = None if place is None else place_words(place)
    document: dict[str, Json] = {
        "serial": serial,
        "place": where,
        "purged": [purged_document(gone)],
        "lots": list(gone.run.inputs),
    }
    page = (
        heading(f"Bag {serial}, {gone.run.name}, was purged", Weight.ATTEND),
        facts(
            (
                ("Purged", f"{gone.day} by {gone.record.who}: {gone.purge.why}"),
                ("With run", f"{gone.run.uid}, {gone.run.bags} bags"),
                ("Production day", day(gone.run.first_day)),
                ("Blend lots", ", ".join(gone.run.blend_lots)),
                ("Input lots", ", ".join(gone.run.inputs)),
                ("It went", where or "no shipment on record"),
                ("Journal entry", f"{gone.record.seq} of the purge"),
                ("Its entry is in", f"{gone.purge.folder}, {_file(gone)}"),
                ("SHA-256", f"{gone.purge.digest} of its manifest.json"),
            )
        ),
    )
    return Answer(document, page, yes=False)


def _file(gone: GoneRun) -> str:
    return f"run-{gone.run.first_day}-{gone.run.uid}.jsonl"
