"""Long checks by name: `python -m tests.campaigns NAME [--short|--full]`.

Each campaign is a module of this folder, '-' in its name for '_', with a function `run(full)` that
prints what it found and returns the number of faults.
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
    chosen = parser.parse_args()
    module = importlib.import_module(f"tests.campaigns.{chosen.name.replace('-', '_')}")
    return 1 if module.run(chosen.full) else 0


if __name__ == "__main__":
    sys.exit(main())
