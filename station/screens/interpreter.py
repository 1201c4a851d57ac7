"""Whose language the screens speak: the packer's while they pack, and each one's own behind it.

The packer's screen speaks to who is on the scale: the person the run names, or the packer who
signed on since. A lead may choose another language for it, which holds until the next run or the
next packer who signs on. Every other page speaks to who is signed on.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from station.core.languages import Language
from station.core.rights import Role
from station.screens.offer import Person
from station.screens.tongue import speak


class Interpreter:
    """Keeps who listens, and switches the language when that is somebody else.

    Args:
        people: everybody, with their languages.
        own: language of the station, for whoever has none.
    """

    def __init__(self, people: Sequence[Person], own: Language) -> None:
        self._people: Mapping[str, Person] = {one.id: one for one in people}
        self._own = own
        self._run = ""
        self._packer = ""
        self._signed_on = ""
        self._chosen: Language | None = None

    @property
    def at_the_scale(self) -> Language:
        """What the packer's screen speaks."""
        return self._chosen or self._of(self._packer)

    @property
    def chosen(self) -> Language | None:
        """What a lead chose for it; None while it follows the packer."""
        return self._chosen

    def follow(self, run: str, operator: str) -> bool:
        """A run, by its id, has this person on the scale; empty words mean that none is open.

        Returns:
            Whether it is another run than before, so that somebody else may listen now.
        """
        if run == self._run:
            return False
        self._run, self._packer, self._chosen = run, operator, None
        return True

    def choose(self, language: Language | None) -> None:
        """Speak this at the scale, or the packer's own again."""
        self._chosen = language

    def listen(self, signed_on: str, *, at_scale: bool) -> None:
        """Speak to who looks now.

        Args:
            signed_on: id of who is signed on; empty where nobody is.
            at_scale: the packer's screen is in front.
        """
        if signed_on != self._signed_on:
            self._signed_on = signed_on
            person = self._people.get(signed_on)
            if person is not None and person.role == Role.PACKER:
                self._packer, self._chosen = signed_on, None
        speak(self._of(signed_on) if signed_on and not at_scale else self.at_the_scale)

    def _of(self, who: str) -> Language:
        person = self._people.get(who)
        return self._own if person is None or person.language is None else person.language
