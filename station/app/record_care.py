"""Cares for the record while the station runs: backups by themselves, and words when they fail.

A backup is made by a process of its own, so that its work never stands between a reading and the
screen. The thread here waits for the next one, starts the process and tells the line how it ended.
"""

from __future__ import annotations

import json
import subprocess
import sys
import threading
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from station.config.record_rules import BackupSettings
from station.core.backup_fact import failed_fact, made_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.ports import Clock
from station.line.state import Notice
from station.store.backup import backups_in, drop_oldest

_AGAIN = timedelta(minutes=15)
"""After a backup that failed, the next try."""
_LOOK_S = 0.1
_WAKE_S = 20.0


@dataclass(frozen=True, slots=True)
class _State:
    """How it stands with backups: when the newest was made, and why the last try failed."""

    newest: datetime | None
    why: str = ""


class RecordCare:
    """A duty that closes nothing and a thread that makes backups.

    Args:
        home: folder of the record.
        names: site and station.
        backup: how backups are made; None for none.
        unsigned: why heads of the journal are not signed; empty where they are, or nobody asks.
        clock: tells the time.
        enter: hands facts to the line.
    """

    name = ""
    """No seal: a run may go on without."""

    def __init__(
        self,
        home: Path,
        names: tuple[str, str],
        backup: BackupSettings | None,
        unsigned: str,
        clock: Clock,
        enter: Callable[[tuple[Fact, ...], str], None],
    ) -> None:
        self._home, self._names, self._backup = home, names, backup
        self._unsigned, self._clock, self._enter = unsigned, clock, enter
        self._stop = threading.Event()
        self._thread: threading.Thread | None = None
        self._tried: datetime | None = None
        self._state = _State(None if backup is None else self._newest(backup))

    # --- on the line's thread -----------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """A run changes nothing."""

    def packed(self, record: PackRecord) -> None:
        """A bag changes nothing."""

    def noted(self, record: FactRecord) -> None:
        """A fact changes nothing."""

    def closing(self, now: datetime) -> str:
        """Nothing is closed by it."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """A backup that failed or is old, or heads that are not signed."""
        words = self._backup_words(now) or self._unsigned
        return Notice(words, now) if words else None

    def words(self, now: datetime) -> str:
        """How it stands with backups, for whoever services the station; any thread."""
        if self._backup is None:
            return "none are made by the station: give [backup] in station.toml"
        newest = self._state.newest
        last = "none yet" if newest is None else f"the newest of {newest:%Y-%m-%d %H:%M} UTC"
        said = f"every {self._backup.every_hours} h to {self._backup.folder}, {last}"
        return f"{said}; {self._state.why}" if self._state.why else said

    # --- the thread ---------------------------------------------------------------------------

    def start(self) -> None:
        """Begin to make backups, the first one now where one is due."""
        if self._backup is not None:
            self._thread = threading.Thread(target=self._work, name="backups", daemon=True)
            self._thread.start()

    def stop(self) -> None:
        """End a backup that is being made, and the thread."""
        self._stop.set()
        if self._thread is not None:
            self._thread.join()

    def _work(self) -> None:
        assert self._backup is not None, "the thread is started for backups only"
        while not self._stop.is_set():
            if self._is_time(self._backup, self._clock.now().utc):
                self._make(self._backup)
            self._stop.wait(_WAKE_S)

    def _is_time(self, backup: BackupSettings, now: datetime) -> bool:
        if self._tried is not None and self._state.why:
            return now - self._tried >= _AGAIN
        newest = self._state.newest
        return newest is None or now - newest >= timedelta(hours=backup.every_hours)

    def _make(self, backup: BackupSettings) -> None:
        at = self._clock.now()
        first = not self._state.why
        self._tried = at.utc
        code, out, err = self._run(backup.folder)
        if self._stop.is_set():
            return
        try:
            if code == 0:
                done = json.loads(out)
                fact = made_fact(
                    new_uid(at),
                    Path(done["file"]).name,
                    done["head_seq"],
                    done["head"],
                    same_disk=done["same_disk"],
                )
                self._state = _State(at.utc)
                drop_oldest(backup.folder, *self._names, backup.keep)
                self._enter((fact,), "station")
                return
            fault = json.loads(err)["error"]
            why = ": ".join(part for part in (fault["title"], fault["detail"]) if part)
        except (ValueError, KeyError, TypeError):
            why = f"the process that makes backups ended with {code}"
        self._state = _State(self._state.newest, why)
        if first:  # one entry for a row of failures
            self._enter((failed_fact(new_uid(at), str(backup.folder), why),), "station")

    def _run(self, folder: Path) -> tuple[int, str, str]:
        """Make one backup in a process; returns its exit code and what it said."""
        command = (
            *(sys.executable, "-m", "station.app.main", "backup", "--gently", "--json"),
            *("--home", str(self._home), "--to", str(folder)),
        )
        with subprocess.Popen(
            command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, encoding="utf-8"
        ) as process:
            while True:
                try:
                    out, err = process.communicate(timeout=_LOOK_S)
                except subprocess.TimeoutExpired:
                    if self._stop.is_set():
                        process.terminate()
                    continue
                return process.returncode, out, err

    def _newest(self, backup: BackupSettings) -> datetime | None:
        found = backups_in(backup.folder, *self._names)
        return found[-1].at if found else None

    def _backup_words(self, now: datetime) -> str:
        if self._backup is None:
            return ""
        state, most = self._state, timedelta(hours=2 * self._backup.every_hours)
        if state.why:
            return f"NO BACKUP: {state.why}"
        if state.newest is not None and now - state.newest > most:
            hours = (now - state.newest) / timedelta(hours=1)
            return f"the newest backup is {hours:.0f} hours old"
        return ""
