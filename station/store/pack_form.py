"""The commit of a bag, made short: its entry and its row with nothing worked out twice.

What the bags of a blend share is written once (:class:`PackForm`). A bag's row is made by one
function, :func:`pack_row`, whether the bag is on the pan or read back from its entry years later.
"""

from __future__ import annotations

from datetime import datetime
from json.encoder import encode_basestring

from station.core.entry_form import NUMBER, TEXT, WORD, EntryForm
from station.core.journal import EntryKind, Value, written
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, Moment, PackDraft, PackId, Quality
from station.store.bodies import Body, pack_body, residue_body
from station.store.columns import mass_row, utc_text, word_check

_GAPS = {
    "dwell_ms": NUMBER,
    "frame": TEXT,
    "gross": WORD,
    "label": WORD,
    "net": WORD,
    "number": NUMBER,
    "quality": WORD,
    "reason": TEXT,
    "residue": TEXT,
    "serial": TEXT,
    "spread": WORD,
    "tare": WORD,
    "top_ups": NUMBER,
    "uid": WORD,
    "verdict": WORD,
}
"""What one bag of a blend has for itself, in the order of the names."""

BLEND = ("run", "lot_set", "blend_lot", "production_day", "use_by")
"""Members of a body that name its blend."""

_quality, _verdict, _label = (word_check(words) for words in (Quality, Verdict, LabelState))

BlendKey = tuple[object, ...]


def blend_key(draft: PackDraft) -> BlendKey:
    """What bags must have alike to share a form."""
    return (
        draft.run,
        draft.lot_set,
        draft.blend_lot,
        draft.use_by,
        draft.production_day,
        draft.operator,
    )


class PackForm:
    """What the entries of a blend's bags share.

    Args:
        chain: site, station and epoch of the journal.
        frame: what the run fixes.
        members: of the lot set.
        draft: any bag of the blend.
    """

    def __init__(
        self, chain: tuple[str, str, int], frame: Body, members: list[Value], draft: PackDraft
    ) -> None:
        whole = pack_body(frame, members, draft, PackId(*chain, 1), "")
        self.shared = {name: value for name, value in whole.items() if name not in _GAPS}
        self._form = EntryForm(chain, EntryKind.PACK, self.shared, _GAPS)

    def bytes_of(self, seq: int, number: int, serial: str, uid: str, draft: PackDraft) -> bytes:
        """Return the canonical bytes of a bag's entry."""
        weighing = draft.weighing
        residue = draft.residue
        values = (
            weighing.dwell_ms,
            encode_basestring(weighing.frame),
            str(weighing.gross),
            first_label(draft),
            str(weighing.net),
            number,
            draft.quality,
            encode_basestring(draft.reason),
            "null" if residue is None else written(residue_body(residue)),
            encode_basestring(serial),
            str(weighing.spread),
            str(weighing.tare),
            weighing.top_ups,
            uid,
            draft.verdict,
        )
        return self._form.bytes_of(seq, draft.judged_at, draft.operator, values)


def first_label(draft: PackDraft) -> LabelState:
    """The state of a new bag's label: none is due for a reject."""
    return LabelState.RECORDED if draft.quality is Quality.GOOD else LabelState.NONE


def pack_row(
    *,
    epoch: int,
    number: int,
    serial: str,
    uid: str,
    entry_row: int,
    blend_id: int,
    gross: str,
    tare: str,
    net: str,
    verdict: str,
    quality: str,
    reason: str,
    label: str,
    operator: str,
    at: Moment,
    residue: tuple[str, datetime] | None,
) -> tuple[object, ...]:
    """Return a bag's row, all columns in the table's order, as SQLite keeps them.

    Everything stands as in a body (masses as ``0.250 kg``), but for ``residue``: the digits the
    empty pan showed before the bag, and when.

    Raises:
        ValueError: a text is no mass, or no word of its list.
    """
    return (
        None,  # SQLite counts
        epoch,
        number,
        serial,
        uid,
        entry_row,
        blend_id,
        *mass_row(gross),
        *mass_row(tare),
        *mass_row(net),
        _verdict(verdict),
        _quality(quality),
        quality == Quality.REJECT,
        reason,
        _label(label),
        operator,
        utc_text(at.utc),
        at.offset_minutes,
        None if residue is None else residue[0],
        None if residue is None else utc_text(residue[1]),
        0,
    )


def row_of(
    draft: PackDraft, identity: PackId, uid: str, entry_row: int, blend_id: int
) -> tuple[object, ...]:
    """Return the row of a bag that was just judged; see :func:`pack_row`."""
    weighing, residue = draft.weighing, draft.residue
    return pack_row(
        epoch=identity.epoch,
        number=identity.number,
        serial=identity.serial,
        uid=uid,
        entry_row=entry_row,
        blend_id=blend_id,
        gross=str(weighing.gross),
        tare=str(weighing.tare),
        net=str(weighing.net),
        verdict=draft.verdict,
        quality=draft.quality,
        reason=draft.reason,
        label=first_label(draft),
        operator=draft.operator,
        at=draft.judged_at,
        residue=None if residue is None else (residue.reading.digits, residue.at),
    )
