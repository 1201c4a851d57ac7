"""The shim of `shim.c`: compiled when a campaign begins, spoken to inside a station process."""

import ctypes
import os
import shutil
import subprocess
from functools import lru_cache
from pathlib import Path

KINDS = {"write": 0, "sync": 1, "open": 2}


def compiled(folder: Path) -> Path | None:
    """Compile the shim; None where this machine has no C compiler, which the campaign then says."""
    compiler = shutil.which("gcc") or shutil.which("cc")
    if compiler is None:
        return None
    library = folder / "shim.so"
    source = Path(__file__).with_name("shim.c")
    words = [compiler, "-O1", "-shared", "-fPIC", "-o", str(library), str(source), "-ldl"]
    subprocess.run(words, check=True)
    return library


@lru_cache(maxsize=1)
def _library() -> ctypes.CDLL:
    library = ctypes.CDLL(os.environ["LD_PRELOAD"])
    library.shim_calls.restype = ctypes.c_long
    return library


def log(home: Path, to: Path) -> None:
    """From now on write down what happens to files in a folder."""
    _library().shim_log(str(home.resolve()).encode(), str(to).encode())


def arm(home: Path, call: int, kind: str, persistent: bool, error: int) -> None:
    """Let the n-th call of a kind fail, and all after it where it is persistent; 0 only counts."""
    where = str(home.resolve()).encode()
    _library().shim_arm(where, ctypes.c_long(call), KINDS[kind], int(persistent), error)


def calls(kind: str) -> int:
    """How many calls of a kind there were since it was armed."""
    return int(_library().shim_calls(KINDS[kind]))


def disarm() -> None:
    """Let everything pass again."""
    _library().shim_arm(b"/nowhere", ctypes.c_long(0), -1, 0, 0)
