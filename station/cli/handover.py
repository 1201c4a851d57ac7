"""``station handover``: the sheet one crew hands to the next."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from station.cli.answer import Answer, Json, iso, run_verb
from station.cli.cut_off import cut_off_of
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.outside import key_file
from station.cli.page import Weight, facts, heading, note
from station.cli.purged import with_purged

Day = Annotated[str, typer.Option("--day", metavar="DATE", help="The production day.")]
Pdf = Annotated[Path | None, typer.Option("--pdf", metavar="FILE", help="Write the sheet here.")]


def handover(
    day: Day,
    pdf: Pdf = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Show what a crew hands over; exit 1 when something is open."""

    def work() -> Answer:
        folder, asked = home_of(home, config), read_day("--day", day)
        from station.reports.files import check_free, write_whole  # slow to load
        from station.reports.handover import handover as gather

        if pdf is not None:
            check_free(pdf, force=force)
        sheet = gather(folder, asked, key_file(folder, config), cut_off_of(config))
        if pdf is not None:
            from station.reports.handover_pdf import handover_pdf

            write_whole(pdf, handover_pdf(sheet))
        points: list[Json] = list(sheet.open_points)
        document: dict[str, Json] = {
            "day": iso(asked),
            "open": points,
            "runs": [
                {
                    "run": one.run.id,
                    "product": one.run.product.code,
                    "blend_lot": one.run.blend_lot,
                    "on_pallet": one.on_pallet,
                    "set_aside": one.tally.rejects,
                    "open": one.open,
                }
                for one in sheet.runs
            ],
            "stops": [
                {"reason": str(stop.reason), "from": iso(stop.began), "to": iso(stop.ended)}
                for stop in sheet.stops
            ],
            "entries": len(sheet.entered),
            "in_doubt": list(sheet.in_doubt),
            "undecided": sheet.undecided,
            "on_line": [
                {"line": line, "lot": use.lot, "component": use.component}
                for line, there in sheet.lots.items()
                for use in there.uses
            ],
            "roll": None
            if sheet.roll is None
            else {"roll": sheet.roll.roll, "issued": sheet.roll.issued, "used": sheet.roll.used},
            "head": {
                "size": sheet.head.head.size,
                "words": sheet.head.head.words,
                "signed": sheet.head.signed is not None,
                "why_not": sheet.head.unsigned,
            },
            "pdf": None if pdf is None else str(pdf),
        }
        title = "SOMETHING IS OPEN" if points else "NOTHING IS OPEN"
        page = (
            heading(title, Weight.ATTEND if points else Weight.PLAIN),
            facts([("Open", point) for point in sheet.open_points]),
            facts(
                [
                    (
                        one.run.product.name,
                        f"{one.run.blend_lot}, on the pallet: {one.on_pallet},"
                        f" set aside: {one.tally.rejects}",
                    )
                    for one in sheet.runs
                ]
            ),
            facts(
                [(f"On line {line}", ", ".join(there.codes)) for line, there in sheet.lots.items()]
            ),
            facts((("Head of the record", f"{sheet.head.head.size} {sheet.head.head.words}"),)),
            note(f"{len(sheet.stops)} stops, {len(sheet.entered)} entries on {asked}"),
        )
        answer = Answer(document, page, yes=not points)
        return with_purged(answer, sheet.gone)

    run_verb(as_json, work)
