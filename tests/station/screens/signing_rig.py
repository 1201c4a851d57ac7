"""A source of signatures whose PINs a test knows, and people to sign."""

from collections.abc import Mapping

from station.core.rights import Proof, Role, Signed
from station.screens.offer import Person

CREW = (
    Person("P01", "Ilse Varnholm", "packer"),
    Person("L01", "Brigid Onslane", "lead"),
    Person("L02", "Rashid Fennimoor", "lead"),
    Person("Q01", "Noor Halvard", "qa"),
    Person("M01", "Sunniva Pellinore", "manager"),
)
PINS = {"L01": "482913", "L02": "739164", "Q01": "615204"}
BADGES = {"BADGE-L02": "L02", "BADGE-Q01": "Q01"}


class PinSource:
    """Keeps who signed; its PINs are plain, for the screens never see more than yes and no."""

    def __init__(self) -> None:
        self.signed_on = ""
        self.proofs: list[str] = []
        self.asked: list[str] = []
        self.touches = 0
        self.roles: Mapping[str, Role] = {one.id: Role(one.role) for one in CREW}

    @property
    def open(self) -> bool:
        return bool(self.signed_on)

    def can_sign(self, who: str) -> bool:
        return who in PINS

    def covers(self, signer) -> bool:
        if signer.proof is Proof.NAME:
            return True
        return signer.proof is Proof.SIGNED_ON and signer.who == self.signed_on != ""

    def sign(self, who: str, pin: str, *, stays: bool = True) -> Signed:
        self.asked.append(who)
        if PINS.get(who) != pin:
            return Signed("", "this PIN is not right")
        return self._signed(who, stays)

    def sign_with_badge(self, badge: str, *, stays: bool = True) -> Signed:
        if badge not in BADGES:
            return Signed("", "this badge is not right")
        return self._signed(BADGES[badge], stays)

    def _signed(self, who: str, stays: bool) -> Signed:
        self.proofs.append(who)
        if stays:
            self.signed_on = who
        return Signed(who)

    def touch(self) -> None:
        self.touches += 1

    def sign_off(self) -> None:
        self.signed_on = ""
