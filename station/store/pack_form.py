"""The commit of a bag, made short: its entry and its row with nothing worked out twice.

What the bags of a blend share is written once (:class:`PackForm`). A bag's row is made by one
function, :func:`pack_row`, whether the bag is on the pan or read back from its entry years later.
"""

from __future__ import annotations

from collections.abc import Mapping
from json.encoder import encode_basestring
from typing import Any

from station.core.entry_form import TEXT, WORD, EntryForm, utc_of
from station.core.journal import Entry, EntryKind, Value, written
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, PackDraft, PackId, Quality
from station.store.bodies import Body, pack_body, residue_body, residue_of
from station.store.columns import mass_row, utc_kept, utc_text

_GAPS = {
    "dwell_ms": TEXT,
    "frame": TEXT,
    "gross": WORD,
    "label": WORD,
    "net": WORD,
    "number": TEXT,
    "quality": WORD,
    "reason": TEXT,
    "residue": TEXT,
    "serial": TEXT,
    "spread": WORD,
    "tare": WORD,
    "top_ups": TEXT,
    "uid": WORD,
    "verdict": WORD,
}
"""What one bag of a blend has for itself, in the order of the names."""

BLEND = ("run", "lot_set", "blend_lot", "production_day", "use_by")
"""Members of a body that name its blend."""

_NO_RESIDUE = (None, None)
# A member looked up in its class takes as long as all else that is done with it.
_GOOD, _REJECT, _RECORDED, _NONE = (
    *(Quality.GOOD, Quality.REJECT),
    *(LabelState.RECORDED, LabelState.NONE),
)
_qualities, _verdicts, _labels = (
    {str(word): str(word) for word in words} for words in (Quality, Verdict, LabelState)
)

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
        draft.judged_at.zone,
        draft.judged_at.offset_minutes,
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
        self.blend = tuple(self.shared[name] for name in BLEND)
        at = draft.judged_at
        self._form = EntryForm(
            *(chain, EntryKind.PACK, draft.operator, at.zone, at.offset_minutes),
            *(self.shared, _GAPS),
        )

    def entry_and_row(
        self,
        draft: PackDraft,
        identity: PackId,
        uid: str,
        seq: int,
        entry_row: int,
        blend_id: int,
    ) -> tuple[bytes, tuple[object, ...]]:
        """Return the canonical bytes of a bag's entry, and the bag's row.

        Args:
            draft: the bag.
            identity: its name.
            uid: its public id.
            seq: number of its entry.
            entry_row: row number of its entry in the journal.
            blend_id: row number of its blend.
        """
        weighing, residue, at = draft.weighing, draft.residue, draft.judged_at
        gross, tare, net = str(weighing.gross), str(weighing.tare), str(weighing.net)
        label, utc = first_label(draft), utc_of(at)
        serial = identity.serial
        values = (
            str(weighing.dwell_ms),
            encode_basestring(weighing.frame),
            gross,
            label,
            net,
            str(identity.number),
            draft.quality,
            encode_basestring(draft.reason),
            "null" if residue is None else written(residue_body(residue)),
            encode_basestring(serial),
            str(weighing.spread),
            tare,
            str(weighing.top_ups),
            uid,
            draft.verdict,
        )
        kept = self._form.bytes_of(seq, utc, at.monotonic_ns, values)
        row = pack_row(
            epoch=identity.epoch,
            number=identity.number,
            serial=serial,
            uid=uid,
            entry_row=entry_row,
            blend_id=blend_id,
            gross=gross,
            tare=tare,
            net=net,
            verdict=draft.verdict,
            quality=draft.quality,
            reason=draft.reason,
            label=label,
            operator=draft.operator,
            utc=utc_kept(utc),
            offset_minutes=at.offset_minutes,
            residue=None if residue is None else (residue.reading.digits, utc_text(residue.at)),
        )
        return kept, row


def first_label(draft: PackDraft) -> LabelState:
    """The state of a new bag's label: none is due for a reject."""
    return _RECORDED if draft.quality is _GOOD else _NONE


def pack_row_of(entry: Entry, row: int, blend_id: int) -> tuple[object, ...]:
    """Return the row of a bag that is read back from its entry, as :func:`pack_row` makes it.

    Args:
        entry: of the bag.
        row: row number of the entry in the journal.
        blend_id: row number of its blend.
    """
    body: Mapping[str, Any] = entry.body
    residue = residue_of(body.get("residue"))  # entries of the first shape have none
    return pack_row(
        epoch=entry.epoch,
        number=body["number"],
        serial=body["serial"],
        uid=body["uid"],
        entry_row=row,
        blend_id=blend_id,
        gross=body["gross"],
        tare=body["tare"],
        net=body["net"],
        verdict=body["verdict"],
        quality=body["quality"],
        reason=body["reason"],
        label=body["label"],
        operator=body["operator"],
        utc=utc_text(entry.at.utc),
        offset_minutes=entry.at.offset_minutes,
        residue=None if residue is None else (residue.reading.digits, utc_text(residue.at)),
    )


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
    utc: str,
    offset_minutes: int,
    residue: tuple[str, str] | None,
) -> tuple[object, ...]:
    """Return a bag's row, all columns but the first in the table's order, as SQLite keeps them.

    Everything stands as in a body (masses as ``0.250 kg``), but for ``utc``, which is kept as
    ``utc_text`` has it, and ``residue``: the digits the empty pan showed before the bag, and when.

    Raises:
        ValueError: a text is no mass, or no word of its list.
    """
    try:
        return (
            epoch,
            number,
            serial,
            uid,
            entry_row,
            blend_id,
            *mass_row(gross),
            *mass_row(tare),
            *mass_row(net),
            _verdicts[verdict],
            _qualities[quality],
            1 if quality == _REJECT else 0,
            reason,
            _labels[label],
            operator,
            utc,
            offset_minutes,
            *(residue or _NO_RESIDUE),
            0,
        )
    except KeyError as unknown:
        raise ValueError(f"{unknown} is no word of its list") from unknown
