"""What the label of a bag said, asked of the record: its run as it stood for this bag."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from sqlalchemy import select

from station.core.dating import Dating
from station.core.label_life import LabelledBag
from station.core.lot_set import LotSet, LotUse
from station.store.bodies import draft_of, run_of
from station.store.engine import reading
from station.store.journal import read_entry
from station.store.queries import unknown_serial
from station.store.tables import OF_BLEND, blend, journal, lot_use, pack, run


def labelled_pack(home: Path, serial: str) -> LabelledBag:
    """Return a bag with its run.

    Raises:
        BadInput: no such serial; the message names close ones.
    """
    of_bag = (
        select(pack.c.quality, pack.c.label, pack.c.copies, blend.c.run_id, blend.c.lot_set_id)
        .add_columns(journal.c.canonical)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(journal, pack.c.entry_id == journal.c.id)
        .where(pack.c.serial == serial)
    )
    of_run = select(journal.c.canonical).join(run, run.c.entry_id == journal.c.id)
    with reading(home) as connection:
        row = connection.execute(of_bag).one_or_none()
        if row is None:
            raise unknown_serial(connection, serial)
        kept = connection.execute(of_run.where(run.c.id == row.run_id)).scalar_one()
        uses = connection.execute(
            select(lot_use.c.component, lot_use.c.lot).where(lot_use.c.lot_set_id == row.lot_set_id)
        ).all()
    its_run, entry = run_of(read_entry(kept).body), read_entry(row.canonical)
    draft = draft_of(entry.body, entry.at)
    frozen = replace(
        its_run,
        dating=Dating(draft.production_day, draft.use_by, its_run.dating.shortened_by),
        lot_set=LotSet.of(LotUse(use.component, use.lot) for use in uses),
        blend_lot=draft.blend_lot,
    )
    return LabelledBag(serial, frozen, draft.weighing.net, row.quality, row.label, row.copies)
