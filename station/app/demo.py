"""The verb ``demo``: the station on the demo packhouse, in a window or headless."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from station.cli.answer import Answer, run_verb
from station.cli.options import AsJson
from station.errors import BadInput

Packs = Annotated[
    int | None,
    typer.Option("--packs", metavar="N", help="A simulated packer packs N good bags."),
]
Headless = Annotated[bool, typer.Option("--headless", help="Without a window.")]
HomeFolder = Annotated[
    Path | None,
    typer.Option("--home", metavar="DIR", help="Where store and labels go; else a fresh folder."),
]
Settings = Annotated[
    Path | None,
    typer.Option("--config", metavar="DIR", help="Folder of settings; else the demo packhouse."),
]
Seed = Annotated[int, typer.Option("--seed", help="Same seed, same bags.")]
RecordOnly = Annotated[
    int | None,
    typer.Option(
        "--record-only",
        metavar="N",
        help="Only make a record of N practice bags, some hours of them in a minute; no labels.",
    ),
]
ProductCode = Annotated[
    str | None, typer.Option("--product", metavar="CODE", help="What --record-only packs.")
]


def demo(
    packs: Packs = None,
    headless: Headless = False,
    home: HomeFolder = None,
    config: Settings = None,
    seed: Seed = 1,
    record_only: RecordOnly = None,
    product: ProductCode = None,
    as_json: AsJson = False,
) -> None:
    """Run the station on the demo packhouse with a simulated scale."""

    def work() -> Answer:
        from station.app import demo_answer, practice_answer  # slow to load

        if record_only is not None:
            if packs is not None:
                raise BadInput("--record-only", "leave out --packs: it says how many bags itself")
            return practice_answer.record(record_only, product, home, config, seed, as_json)
        if product is not None:
            raise BadInput("--product", "is for --record-only N")
        if headless:
            return demo_answer.headless(packs, home, config, seed, quiet=as_json)
        return demo_answer.window(packs, home, config, seed)

    run_verb(as_json, work)
