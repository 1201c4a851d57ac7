"""Long checks by name: `python -m tests.campaigns NAME [--short|--full|--minutes N]`.

Each campaign is a module of this folder, '-' in its name for '_', with a function `run(full)` that
prints what it found and returns the number of faults; one that can last for any time has
`run_for(minutes)` too.
"""

import argparse
import importlib
import sys
from pathlib import Path


def names() -> list[str]:
    """Return the campaigns of this folder."""
    files = Path(__file__).parent.glob("[a-z]*.py")
    return sorted(
        file.stem.replace("_", "-") for file in files if not file.stem.startswith("test_")
    )


def main() -> int:
    """Run one campaign; exit 1 where it found a fault."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns", description=__doc__)
    parser.add_argument("name", choices=names())
    size = parser.add_mutually_exclusive_group()
    size.add_argument("--short", action="store_true", help="the size the checks of a commit run")
    size.add_argument("--full", action="store_true", help="the full size")
    size.add_argument("--minutes", type=float, help="for so long, where the campaign has a length")
    chosen = parser.parse_args()
    module = importlib.import_module(f"tests.campaigns.{chosen.name.replace('-', '_')}")
    if chosen.minutes is None:
        return 1 if module.run(chosen.full) else 0
    if not hasattr(module, "run_for"):
        parser.error(f"{chosen.name} has no length: give --short or --full")
    return 1 if module.run_for(chosen.minutes) else 0


if __name__ == "__main__":
    sys.exit(main())
