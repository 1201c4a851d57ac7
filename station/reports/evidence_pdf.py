"""An evidence pack on paper: what is open, then lots, then each run, then the proof."""

from __future__ import annotations

from io import BytesIO

from PIL import Image as Picture
from reportlab.lib.units import mm
from reportlab.platypus import Flowable, Image, PageBreak, Paragraph

from labels.raster import rasterise_pages
from station.core.checks.first_off import first_off_of
from station.core.journal import EntryKind
from station.core.long_work import steps
from station.core.metrology.exact import decimal_of
from station.reports import paper
from station.reports.batch_pdf import run_story
from station.reports.evidence import Evidence, RunEvidence
from station.reports.evidence_parts import run_parts
from station.reports.evidence_proof import EntryProof, not_proved_words, proved_words
from station.reports.evidence_windows import windows_story
from station.reports.paper import escape, gap, heading, listing, note, pairs, together
from station.store.verify import VerifyReport

_DOTS = 8
_WIDEST = 120 * mm
_CAUTIONS = (
    "A chain of hashes makes a change evident; it does not prevent one, and who can rewrite the "
    "whole file can rewrite the chain. Compare the head with one kept elsewhere.",
    "Use-by dates follow the packhouse's own policy, which needs validated studies.",
    "What bags took of each lot is estimated by the recipe's shares.",
    "Times are those of the station's clock at the entry, in the plant's zone.",
)


def evidence_pdf(found: Evidence) -> bytes:
    """Set an evidence pack; the same evidence gives the same bytes.

    Args:
        found: what was gathered.
    """
    paper.load_faces()
    story = [*_front(found), *_lots(found)]
    for run in steps(found.runs, len(found.runs)):
        story += [PageBreak(), *run_story(run.record), *specimen_story(run)]
        story += run_parts(run, found.zone)
    story += [*windows_story(found), *_proof(found), *_cautions()]
    foot = f"Evidence pack, {found.asked}. {software_words(found)}. No official document."
    return paper.write("Evidence pack", foot, story)


def _front(found: Evidence) -> list[Flowable]:
    records = [run.record for run in found.runs]
    columns = (("product", 0.3), ("blend lots", 0.2), ("production day", 0.16), ("bags", 0.1),
               ("aside", 0.1), ("passes", 0.14))  # fmt: skip
    rows = [
        (
            f"{one.run.product.name} (version {one.run.product.version})",
            ", ".join(blend.code for blend in one.blends),
            one.run.dating.production_day.isoformat(),
            str(len(one.bags)),
            str(len(one.left)),
            "yes" if one.accepted else "NO",
        )
        for one in records
    ]
    return [
        Paragraph(escape("Evidence pack"), paper.TITLE),
        Paragraph(escape(found.asked), paper.UNDER),
        gap(3),
        pairs(
            (
                ("Site, station", f"{found.trace.site}, {found.trace.station}"),
                ("Software", software_words(found)),
                ("Its hash", f"{found.software.digest} (SHA-256)"),
                ("Journal", _journal(found)),
            )
        ),
        *heading(f"Open points: {len(found.open_points)}"),
        *(note(f"[  ]  {point}") for point in found.open_points or ("nothing is open",)),
        *heading("Runs"),
        listing(columns, rows, frozenset({3, 4})),
    ]


def software_words(found: Evidence) -> str:
    """What packs and reports, as the pages name it."""
    return f"pack line station {found.software}"


def _journal(found: Evidence) -> str:
    """What was found of the journal, in one line for the first page."""
    if found.whole is not None:
        return _whole(found.whole)
    broken = [run.own.why for run in found.runs if not run.own.holds]
    if broken:
        return f"DOES NOT HOLD: {broken[0]}"
    own = sum(run.own.entries for run in found.runs)
    loose = sum(run.own.loose for run in found.runs)
    under = "each lies under a signed head" if not loose else f"{loose} under no signed head"
    return f"{own} entries of this were read and hold, {under}; the rest of it was not read"


def _whole(proof: VerifyReport) -> str:
    if proof.whole:
        return f"whole: {proof.entries} entries hold, each follows from the one before"
    return f"DOES NOT HOLD: {proof.why}"


def _lots(found: Evidence) -> list[Flowable]:
    rows = []
    for one in found.trace.receipts:
        delivery, lot = one.delivery, one.lot
        quantity = None if delivery is None else delivery.quantity
        warm = None if delivery is None else delivery.temperature
        rows.append(
            (
                lot.code,
                lot.component,
                lot.supplier,
                lot.received.isoformat(),
                "" if quantity is None else str(quantity),
                "" if warm is None else f"{warm} °C",
                "" if delivery is None else delivery.reference,
                str(lot.status),
            )
        )
    columns = (("lot", 0.18), ("component", 0.15), ("from", 0.16), ("received", 0.11),
               ("came", 0.1), ("arrived at", 0.09), ("paper", 0.14), ("is", 0.07))  # fmt: skip
    took = [
        (
            one.blend.code,
            lot.code,
            lot.component,
            f"{decimal_of(used.likely / 1000, 3)} kg",
            f"{decimal_of(used.low / 1000, 3)} to {decimal_of(used.high / 1000, 3)} kg",
        )
        for one in found.trace.transformations
        for lot, used in one.inputs
    ]
    blends = (("blend lot", 0.2), ("input lot", 0.24), ("component", 0.2), ("likely", 0.16),
              ("between", 0.2))  # fmt: skip
    return [
        *heading("Input lots"),
        listing(columns, rows, frozenset({4, 5})),
        *heading("What the blends took of them"),
        listing(blends, took, frozenset({3, 4})),
    ]


def specimen_story(run: RunEvidence) -> list[Flowable]:
    """The label as it was drawn for the run, with its heading on the same page."""
    story = heading("Specimen of the label")
    if run.specimen is None:
        return [*story, note(f"It cannot be drawn now: {run.why_none}")]
    for page in rasterise_pages(run.specimen.pdf, _DOTS):
        kept = BytesIO()
        Picture.fromarray(page).convert("1").save(kept, "PNG")
        rows, across = page.shape
        width = min(across / _DOTS * mm, _WIDEST)
        story += [Image(kept, width, width * rows / across, hAlign="LEFT"), gap(2)]
    seen = {first_off_of(one).sha256 for one in run.of(EntryKind.FIRST_OFF)}
    words = "no first-off is on record"
    if seen:
        same = run.specimen.sha256 in seen
        words = f"{'equal to' if same else 'NOT equal to'} what the first-off approved"
    story.append(
        note(
            "Drawn again from the frozen run; its bar codes were read back equal. SHA-256 "
            f"{run.specimen.sha256}: {words}."
        )
    )
    return [together(story)]


def _proof(found: Evidence) -> list[Flowable]:
    rows: list[tuple[str, str]] = []
    for run in found.runs:
        named = f"Entries of {run.record.run.blend_lot}"
        rows += [("" if at else named, words) for at, words in enumerate(proved_words(run.own))]
    if found.whole is None:
        words = not_proved_words(found.last_copy)
        rows += [("" if at else "Not proved", one) for at, one in enumerate(words)]
    else:
        rows += [
            ("Whole journal", f"read from the first entry on, as was asked; {_whole(found.whole)}"),
            ("Epoch", str(found.whole.epoch)),
            ("Head", f"entry {found.whole.head_seq}, {found.whole.head}"),
        ]
    for one in (proof for run in found.runs for proof in run.proofs):
        rows.append((one.what, f"entry {one.place.seq}, {one.place.hash}"))
        rows.append(("", one.words))
        if one.file:
            rows.append(("", f"{_steps(one)} hashes lead to its root: {one.file}"))
    software = found.software
    return [
        *heading("Proof of the journal"),
        pairs(rows),
        note(
            "Each file proves its entry without the record, by RFC 9162: station journal verify "
            "--proof FILE --key KEY, with the station's public key from elsewhere."
        ),
        *heading("Identity of the software"),
        pairs(
            (
                ("Version", software.version),
                ("Hash", software.digest),
                ("Over", f"{software.files} files that make a weight a record"),
            )
        ),
        note("It is what sha256sum makes of the lines that sha256sum prints for these files."),
    ]


def _steps(proof: EntryProof) -> int:
    path = proof.document["path"]
    return len(path) if isinstance(path, list) else 0


def _cautions() -> list[Flowable]:
    return [*heading("More cautions"), *(note(words) for words in _CAUTIONS)]
