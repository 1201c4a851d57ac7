"""Real IPP printers on the loopback interface: ippeveprinter, with a bus and Avahi of its own.

ippeveprinter (CUPS) announces itself by DNS-SD and does not start without Avahi, which needs a
D-Bus. Both run here for the tests alone, on a socket in a temporary folder; nothing of the system's
is touched, and nothing is announced beyond the loopback interface.
"""

from __future__ import annotations

import os
import shutil
import signal
import socket
import subprocess
import time
from collections.abc import Callable, Sequence
from pathlib import Path

import pytest

HERE = Path(__file__).parent
START_S = 20.0
SIZES = ((10000, 6000), (6005, 4000), (5080, 2540), (10000, 15000))
"""Labels the tests print on, in hundredths of a millimetre."""


# Put before a command: it ends with the tests, also when they are killed.
WITH_US = ("setpriv", "--pdeathsig", "KILL")


class Daemon:
    """A process of our own that is surely gone after ``stop``."""

    def __init__(self, command: Sequence[str | Path], log: Path, **environment: str) -> None:
        self.log = log
        with log.open("wb") as out:
            self._process = subprocess.Popen(
                command,
                stdin=subprocess.DEVNULL,
                stdout=out,
                stderr=out,
                env={**os.environ, **environment},
                start_new_session=True,  # its children go with it
            )

    def words(self) -> str:
        return self.log.read_text(encoding="utf-8", errors="replace")

    def is_running(self) -> bool:
        return self._process.poll() is None

    def kill(self) -> None:
        """End it and its children at once, as a power cut would."""
        self._end(signal.SIGKILL)

    def stop(self) -> None:
        self._end(signal.SIGTERM)

    def freeze(self) -> None:
        os.kill(self._process.pid, signal.SIGSTOP)

    def thaw(self) -> None:
        os.kill(self._process.pid, signal.SIGCONT)

    def _end(self, how: signal.Signals) -> None:
        for signal_ in (signal.SIGCONT, how):
            self._signal(signal_)
        try:
            self._process.wait(5)
        except subprocess.TimeoutExpired:
            self._signal(signal.SIGKILL)
            self._process.wait(5)
        self._signal(signal.SIGKILL)  # children that outlived it

    def _signal(self, which: signal.Signals) -> None:
        try:
            os.killpg(self._process.pid, which)
        except ProcessLookupError:
            return


def wait_for(what: str, is_so: Callable[[], object], limit_s: float = START_S) -> None:
    """Wait until something is so; fail after a time."""
    until = time.monotonic() + limit_s
    while not is_so():
        if time.monotonic() > until:
            pytest.fail(f"waited {limit_s:g} s in vain: {what}")
        time.sleep(0.005)


class Announcer:
    """A message bus and Avahi, in a folder of their own."""

    def __init__(self, folder: Path, need_tool: Callable[[str], str]) -> None:
        bus = need_tool("dbus-daemon")
        avahi = _tool("avahi-daemon", need_tool)
        path = folder / "bus"
        self.address = f"unix:path={path}"
        settings = folder / "bus.conf"
        text = (HERE / "bus.conf").read_text(encoding="utf-8")
        settings.write_text(text.replace("@SOCKET@", str(path)), encoding="utf-8")
        self._daemons = [
            Daemon(
                [*WITH_US, bus, f"--config-file={settings}", "--nofork", "--nopidfile"],
                folder / "bus.log",
            )
        ]
        try:
            wait_for("message bus", path.exists)
            command = [
                avahi, "-f", str(HERE / "avahi.conf"),
                "--no-drop-root", "--no-chroot", "--no-rlimits",
            ]  # fmt: skip
            self._daemons.append(
                Daemon(
                    [*_own_run_folder(folder), *WITH_US, *command],
                    folder / "avahi.log",
                    DBUS_SYSTEM_BUS_ADDRESS=self.address,
                )
            )
            wait_for("Avahi", self._is_announcing)
        except BaseException:
            self.stop()
            raise

    def _is_announcing(self) -> bool:
        avahi = self._daemons[-1]
        if not avahi.is_running():
            # Where no folder of its own can be had, only root may, beside no other Avahi.
            last = avahi.words().strip().splitlines()[-1:]
            pytest.skip(f"needs an Avahi of its own, which does not start here: {last}")
        return "startup complete" in avahi.words()

    def stop(self) -> None:
        for daemon in reversed(self._daemons):
            daemon.stop()


def _own_run_folder(folder: Path) -> list[str]:
    """Return what to put before a command so that it sees an empty /run; nothing where that fails.

    Avahi keeps its number in /run, where a plain user may not write and only one Avahi may. It
    gives its folder there to the user avahi, who for a plain user's Avahi must be that user.
    """
    mounts = "mount -t tmpfs tmpfs /run"
    namespace = ["unshare", "-m"]
    if os.geteuid() != 0:
        namespace += ["-U", "--map-current-user", "--keep-caps"]
        user, group = os.geteuid(), os.getegid()
        (folder / "passwd").write_text(f"avahi:x:{user}:{group}::/:/bin/false\n", encoding="utf-8")
        (folder / "group").write_text(f"avahi:x:{group}:\n", encoding="utf-8")
        for name in ("passwd", "group"):
            mounts += f" && mount --bind {folder}/{name} /etc/{name}"
    try:
        trial = [*namespace, "sh", "-c", mounts]
        subprocess.run(trial, check=True, timeout=10, capture_output=True)
    except (OSError, subprocess.CalledProcessError):
        return []
    return [*namespace, "sh", "-c", f'{mounts} && exec "$@"', "sh"]


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


class TestPrinter:
    """One ippeveprinter, with what it printed.

    Args:
        folder: for its files.
        announcer: runs already.
        need_tool: finds commands, or skips.
        formats: documents it takes.
        dots_per_inch: its print head.
        raster_types: how it takes dots.
        keys: folder where it keeps the certificate that it makes for itself; None for no matter.
    """

    __test__ = False

    def __init__(
        self,
        folder: Path,
        announcer: Announcer,
        need_tool: Callable[[str], str],
        formats: Sequence[str] = ("application/pdf", "image/pwg-raster"),
        dots_per_inch: int = 203,
        raster_types: Sequence[str] = ("black_1",),
        keys: Path | None = None,
    ) -> None:
        self.out = folder
        self.port = free_port()
        self.address = f"ipp://localhost:{self.port}/ipp/print"
        self._command = [
            *WITH_US,
            _tool("ippeveprinter", need_tool), "-v", "-n", "localhost", "-p", str(self.port),
            "-d", str(folder / "spool"), "-a", str(folder / "abilities.conf"),
            "-c", str(HERE / "print.sh"), "-K", str(keys or folder), f"Labels {self.port}",
        ]  # fmt: skip
        self._environment = {
            "OUT": str(folder), "DBUS_SYSTEM_BUS_ADDRESS": announcer.address, "TMPDIR": str(folder),
        }  # fmt: skip
        (folder / "spool").mkdir()
        (folder / "abilities.conf").write_text(
            abilities(formats, dots_per_inch, raster_types), encoding="utf-8"
        )
        self._runs = 0
        self.start()

    def start(self) -> None:
        self._runs += 1
        log = self.out / f"printer-{self._runs}.log"
        self.daemon = Daemon(self._command, log, **self._environment)
        wait_for(f"printer on port {self.port}", self._answers)

    def _answers(self) -> bool:
        if not self.daemon.is_running():
            pytest.fail(f"the test printer does not run: {self.daemon.words()[-500:]}")
        try:
            socket.create_connection(("localhost", self.port), 1).close()
        except OSError:
            return False
        return True

    def printed(self) -> list[str]:
        """Return the names of the labels that came out, in order."""
        file = self.out / "printed"
        return file.read_text(encoding="utf-8").split() if file.exists() else []

    def page(self, name: str) -> bytes:
        return (self.out / f"{name}.page").read_bytes()

    def settings(self, name: str) -> dict[str, str]:
        lines = (self.out / f"{name}.settings").read_text(encoding="utf-8").splitlines()
        return dict(line.split("=", 1) for line in lines if "=" in line)

    def is_holding(self, name: str) -> bool:
        return (self.out / f"{name}.waiting").exists()

    def release(self) -> None:
        (self.out / "release").touch()

    def set_mood(self, mood: str) -> None:
        """Let every page from now on meet a fate that print.sh knows; empty for none."""
        (self.out / "mood").write_text(mood, encoding="utf-8")

    def requests(self, operation: str) -> int:
        """Return how many requests of a kind came in, by the printer's own log."""
        return sum(
            run.read_text(encoding="utf-8", errors="replace").count(f"{operation} successful-ok")
            for run in self.out.glob("printer-*.log")
        )


def _tool(name: str, need_tool: Callable[[str], str]) -> str:
    """Find a command that Debian keeps out of a plain user's path."""
    return shutil.which(name, path="/usr/sbin:/sbin") or need_tool(name)


def _size(width: int, height: int) -> str:
    return f"MEMBER integer x-dimension {width} MEMBER integer y-dimension {height}"


def abilities(formats: Sequence[str], dots_per_inch: int, raster_types: Sequence[str]) -> str:
    """Return the printer's attributes: any label from 20 × 20 to 110 × 300 mm, edge to edge.

    Its own office-paper profile would refuse a label's size.
    """

    def quoted(words: Sequence[str]) -> str:
        return ",".join(f'"{word}"' for word in words)

    margins = [f"media-{side}-margin" for side in ("bottom", "left", "right", "top")]
    members = [*margins, "media-size"]
    zeros = " ".join(f"MEMBER integer {margin} 0" for margin in margins)
    label = _size(10000, 6000)
    any_label = (
        "MEMBER rangeOfInteger x-dimension 2000-11000 MEMBER rangeOfInteger y-dimension 2000-30000"
    )
    sizes = (*(_size(*one) for one in SIZES), any_label)
    takes = ["copies", "media-col", "print-scaling", "ipp-attribute-fidelity", "job-name"]
    lines = [
        'ATTR keyword media-supported "custom_label_100x60mm","custom_min_20x20mm",'
        '"custom_max_110x300mm"',
        'ATTR keyword media-default "custom_label_100x60mm"',
        'ATTR keyword media-ready "custom_label_100x60mm"',
        *(f"ATTR integer {margin}-supported 0" for margin in margins),
        f"ATTR keyword media-col-supported {quoted(members)}",
        f"ATTR collection media-size-supported {', '.join(f'{{ {one} }}' for one in sizes)}",
        *(
            f"ATTR collection {name} {{ MEMBER collection media-size {{ {label} }} {zeros} }}"
            for name in ("media-col-default", "media-col-ready")
        ),
        # Newer printers of this kind look a size up among these and take no range for it.
        "ATTR collection media-col-database "
        + ",".join(f"{{ MEMBER collection media-size {{ {one} }} {zeros} }}" for one in sizes[:-1]),
        "ATTR rangeOfInteger copies-supported 1-99",
        "ATTR integer copies-default 1",
        'ATTR keyword print-scaling-supported "none","auto"',
        f"ATTR keyword job-creation-attributes-supported {quoted(takes)}",
        f"ATTR resolution printer-resolution-default {dots_per_inch}dpi",
        f"ATTR resolution printer-resolution-supported {dots_per_inch}dpi",
        f"ATTR resolution pwg-raster-document-resolution-supported {dots_per_inch}dpi",
        f"ATTR keyword pwg-raster-document-type-supported {quoted(raster_types)}",
        f"ATTR mimeMediaType document-format-supported {quoted(formats)}",
    ]
    return "\n".join(lines) + "\n"
