"""Station processes for campaigns: everything is loaded once, then one is forked for each request.

`python -m tests.campaigns.chain.nursery` reads requests, one JSON object a line; each forks a
process that does what `work` names (see `packing`) and tells what it acknowledged, a line each.
"""

import json
import os
import select
import shlex
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

PATIENCE_S = 120.0


def say(words: str) -> None:
    """Tell the campaign, from any thread, in one write that no kill can cut."""
    os.write(1, f"{words}\n".encode())


class Nursery:
    """Lends station processes to a campaign; use as a context.

    Args:
        preload: a library for LD_PRELOAD, or None.
        within: a command that is given this one, as one word of a shell, to run.
    """

    def __init__(self, preload: Path | None = None, within: tuple[str, ...] = ()) -> None:
        # What a killed process leaves of its bench lies here, and is taken away at the end.
        self._left = tempfile.TemporaryDirectory(prefix="nursery-")
        environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "TMPDIR": self._left.name}
        if preload is not None:
            environment["LD_PRELOAD"] = str(preload)
        command = (sys.executable, "-m", "tests.campaigns.chain.nursery")
        if within:
            command = (*within[:-1], f"{within[-1]} exec {shlex.join(command)}")
        self._process = subprocess.Popen(
            command,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=environment,
        )
        self._buffer = b""
        self.child = 0

    def __enter__(self) -> "Nursery":
        return self

    def __exit__(self, *_: object) -> None:
        assert self._process.stdin is not None
        self._process.stdin.close()
        self._process.wait(30)
        assert self._process.stdout is not None
        self._process.stdout.close()
        self._left.cleanup()

    def ask(self, work: str, home: Path, **options: object) -> None:
        """Let a new process begin."""
        assert self._process.stdin is not None
        request = {"work": work, "home": str(home), **options}
        self._process.stdin.write(json.dumps(request).encode() + b"\n")
        self._process.stdin.flush()
        self.child = int(self.line().split()[1])

    def line(self, patience_s: float = PATIENCE_S) -> str:
        """The next line.

        Raises:
            TimeoutError: none came in time.
        """
        assert self._process.stdout is not None
        ends = time.monotonic() + patience_s
        while b"\n" not in self._buffer:
            left = max(0.0, ends - time.monotonic())
            if not select.select([self._process.stdout], [], [], left)[0]:
                raise TimeoutError("the station process says nothing")
            found = os.read(self._process.stdout.fileno(), 65536)
            if not found:
                raise EOFError("the nursery ended")
            self._buffer += found
        line, _, self._buffer = self._buffer.partition(b"\n")
        return line.decode()

    def lines(self, patience_s: float = PATIENCE_S) -> Iterator[str]:
        """All lines until the process has ended; its exit code is then in `ended`."""
        while True:
            line = self.line(patience_s)
            if line.startswith("ended "):
                self.ended = int(line.split()[1])
                return
            yield line

    def kill(self) -> None:
        """Kill the process as a power switch would."""
        os.kill(self.child, signal.SIGKILL)


def main() -> None:
    """Fork for each request."""
    from tests.campaigns.chain import hindered, lasting, packing, surrounded

    for line in sys.stdin:
        request = json.loads(line)
        process = os.fork()
        if process == 0:
            code = 1
            try:
                name = request.pop("work")
                modules = (packing, surrounded, hindered, lasting)
                work = getattr(next(one for one in modules if hasattr(one, name)), name)
                # The campaign hears of the process before the process says anything.
                say(f"process {os.getpid()}")
                work(Path(request.pop("home")), **request)
                code = 0
            except BaseException as fault:  # noqa: BLE001  told to the campaign
                say(f"fault {type(fault).__name__}: {fault}")
            finally:
                os._exit(code)
        _, status = os.waitpid(process, 0)
        say(f"ended {os.waitstatus_to_exitcode(status)}")


if __name__ == "__main__":
    main()
