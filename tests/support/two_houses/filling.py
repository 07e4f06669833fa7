"""Everybody who was ever let in, and one of everything that an address can name, made by asking for it."""

from __future__ import annotations

import datetime as dt
import hashlib
import io
from typing import Any

from PIL import Image
from sqlalchemy import update
from tests.nudges.support import BrowserKeys
from tests.support.households import NOON_MS
from tests.support.two_houses.asking import Asking, Way
from tests.support.two_houses.visitors import House, Visitor

from broodshelf.model.gauges import DAY_MS
from broodshelf.people import mail
from broodshelf.people.households import make_claim_code
from broodshelf.people.tables import devices, feed_tokens
from broodshelf.records.database import writing
from broodshelf.records.ids import uuid7


class Filling(Asking):
    """Fills two households on the days of which they tell; ``visitors`` are everybody by role."""

    def __init__(self) -> None:
        super().__init__(at_ms("2026-04-05T12:00"))
        self.alpha, self.beta = House("Alpha"), House("Beta")
        self.visitors: dict[str, Visitor] = {}

    def fill(self) -> None:
        """Make everybody and everything, from the first claim to the present."""
        for house, prefix in ((self.alpha, ""), (self.beta, "other_")):
            self._claim(house, prefix)
        for house, prefix in ((self.alpha, ""), (self.beta, "other_")):
            self._log(house, self.visitors[f"{prefix}keeper"])
            self._open(house, prefix, "long_gone_stand_in", "long_gone_pass")
        self.now_ms = at_ms("2026-04-21T12:00")
        for house, prefix in ((self.alpha, ""), (self.beta, "other_")):
            for role, name in (
                ("stand_in", "pass"),
                ("early_stand_in", "early_pass"),
                ("former_stand_in", "ended_pass"),
                ("taken_back_stand_in", "revoked_pass"),
                ("removed_stand_in", "removed_pass"),
            ):
                self._open(house, prefix, role, name)
            self._log_as_stand_in(house, self.visitors[f"{prefix}stand_in"], "stand_in_feeding")
            self._log_as_stand_in(house, self.visitors[f"{prefix}former_stand_in"], "former_feeding")
        self.now_ms = NOON_MS
        for house, prefix in ((self.alpha, ""), (self.beta, "other_")):
            self._end_some(house, prefix)
            self._hand_out(house, self.visitors[f"{prefix}keeper"])
        alpha = self.alpha
        self.visitors["nobody"] = Visitor("nobody", alpha)
        self.visitors["unknown_cookie"] = Visitor("unknown_cookie", alpha, "A" * 43)
        keeper = self.visitors["keeper"]
        self.visitors["from_elsewhere"] = Visitor("keeper", alpha, keeper.cookie, keeper.me, True)
        with writing() as connection:
            connection.execute(update(devices).values(last_seen_ms=self.now_ms))
            idle = self.visitors["idle_keeper"].device_id
            long_ago = {"last_seen_ms": self.now_ms - 91 * DAY_MS, "created_ms": self.now_ms - 100 * DAY_MS}
            connection.execute(update(devices).where(devices.c.id == idle).values(**long_ago))

    def _visitor(self, house: House, name: str) -> Visitor:
        made = self.visitors[name] = Visitor(name, house)
        return made

    def _claim(self, house: House, prefix: str) -> None:
        with writing() as connection:
            code = make_claim_code(connection, self.now_ms)
        keeper = self._visitor(house, f"{prefix}keeper")
        asked = {
            "code": code, "device": self.new_device(), "person_name": f"{house.mark} keeper",
            "household_name": f"{house.mark} shelf", "zone": "UTC",
        }  # fmt: skip
        self.post(keeper, "/api/claim", asked)
        house.id = keeper.me["household_id"]
        house.things |= {
            "used_claim": code,
            "person": keeper.me["person_id"],
            "own_phone": keeper.device_id,
            "household": house.id,
        }
        for name in ("signed_out", "removed_keeper", "idle_keeper", "spare_keeper"):
            self._pair(house, keeper, self._visitor(house, f"{prefix}{name}"))

    def _pair(self, house: House, keeper: Visitor, new: Visitor) -> None:
        asked = self.post(new, "/api/pairings", {"device": self.new_device()})
        self.post(
            keeper, "/api/pairings/approve", {"code": asked["code"], "person_id": house.things["person"]}
        )
        secret = {"pairing_id": asked["pairing_id"], "collect_secret": asked["collect_secret"]}
        self.post(new, "/api/pairings/collect", secret)
        house.things["collected_pairing"] = secret

    def _log(self, house: House, keeper: Visitor) -> None:
        mark, things = house.mark, house.things
        ops = []

        def make(called: str, of: str, /, **values: Any) -> str:
            ops.append(self.op(keeper, of, values))
            things[called] = ops[-1]["id"]
            return str(ops[-1]["id"])

        for side in ("", "hidden_"):
            word = f"{mark} hidden" if side else mark
            vessel = make(f"{side}vessel", "vessel", name=word)
            place = make(f"{side}place", "place", name=word)
            colony = make(f"{side}colony", "colony", name=word, vessel_id=vessel, place_id=place)
            about: dict[str, Any] = {
                "colony_id": colony,
                "happened_at": self.happened(-0.5),
                "remark": word,
            }
            make(f"{side}rule", "rule", colony_id=colony, need="sugar", every_days=3)
            feeding = make(f"{side}feeding", "feeding", **about, need="sugar")
            make(f"{side}check", "check", **about, feeding_id=feeding, outcome="all")
            make(f"{side}water", "water", **about, action="read", reading="half")
            make(f"{side}fault", "fault", **about, fault="mites")
            make(f"{side}count", "count", **about, workers=20)
            make(f"{side}boost", "boost", **about, brood="pupae", number=3)
            make(f"{side}move", "move", **about, vessel_id=vessel, how="offered")
            make(f"{side}note", "note", **about, text=word)
            make(f"{side}later", "later", **about, need="sugar", until=self.happened(1))
            climate = {"place_id": place, "happened_at": about["happened_at"], "remark": word}
            make(f"{side}climate", "climate", **climate, temperature_c=24)
            for picture in ("photo", "unsent_photo", "deleted_photo"):
                body = _jpeg(f"{mark}{side}{picture}")
                digest = hashlib.sha256(body).hexdigest()
                house.jpegs[make(f"{side}{picture}", "photo", **about, sha256=digest)] = body
        make("lot", "lot", name=mark, food_code="honey", origin="bought_or_bred")
        make(
            "tasting", "tasting", name=f"{mark} hidden", colony_ids=[things["colony"]], food_codes=["honey"],
            started_on="2026-04-01",
        )  # fmt: skip
        make(
            "deleted_feeding",
            "feeding",
            colony_id=things["colony"],
            happened_at=self.happened(-1),
            need="sugar",
        )
        make("deleted_colony", "colony", name=f"{mark} hidden")
        for name, starts_on, ends_on in (
            ("pass", "2026-04-20", "2026-05-10"),
            ("early_pass", "2026-05-05", "2026-05-10"),
            ("ended_pass", "2026-04-20", "2026-04-28"),
            ("long_gone_pass", "2026-04-01", "2026-04-10"),
            ("revoked_pass", "2026-04-20", "2026-05-10"),
            ("removed_pass", "2026-04-20", "2026-05-10"),
            ("deleted_pass", "2026-04-20", "2026-05-10"),
        ):
            make(
                name, "pass", name=f"{mark} guest",
                colony_ids=[things["colony"]], starts_on=starts_on, ends_on=ends_on,
            )  # fmt: skip
        _all_applied(self.sync(keeper, *ops))
        for side in ("", "hidden_"):
            for picture in ("photo", "deleted_photo"):
                record_id = things[f"{side}{picture}"]
                sent = self.call(
                    keeper, "PUT", f"/api/photos/{record_id}", house.jpegs[record_id],
                    Way("image/jpeg"),
                )  # fmt: skip
                assert sent.status == 200, sent.text

    def _open(self, house: House, prefix: str, role: str, pass_name: str) -> None:
        keeper = self.visitors[f"{prefix}keeper"]
        made = self.post(keeper, f"/api/passes/{house.things[pass_name]}/link")
        guest = self._visitor(house, f"{prefix}{role}")
        self.post(guest, "/api/passes/open", {"code": made["code"], "device": self.new_device()})
        house.things[f"{pass_name}_code"] = made["code"]
        house.things[f"{pass_name}_secret"] = made["link"].rpartition("/")[2]
        house.things[f"{role}_phone"] = guest.device_id
        house.things[f"{role}_person"] = guest.me["person_id"]

    def _log_as_stand_in(self, house: House, guest: Visitor, name: str) -> None:
        values = {"colony_id": house.things["colony"], "happened_at": self.happened(), "need": "sugar"}
        made = self.op(guest, "feeding", values)
        _all_applied(self.sync(guest, made))
        house.things[name] = made["id"]

    def _end_some(self, house: House, prefix: str) -> None:
        keeper, things = self.visitors[f"{prefix}keeper"], house.things
        gone = [
            self.op(keeper, kind, {"gone": True}, things[name])
            for name, kind in (
                ("deleted_photo", "photo"),
                ("hidden_deleted_photo", "photo"),
                ("deleted_feeding", "feeding"),
                ("deleted_colony", "colony"),
                ("deleted_pass", "pass"),
            )
        ]
        _all_applied(self.sync(keeper, *gone))
        self.post(self.visitors[f"{prefix}signed_out"], "/api/logout")
        removed = self.visitors[f"{prefix}removed_keeper"].device_id
        things["removed_phone"] = removed
        for phone in (removed, things["removed_stand_in_phone"]):
            self.post(keeper, f"/api/devices/{phone}/revoke")
        self.post(keeper, f"/api/passes/{things['revoked_pass']}/revoke")

    def _hand_out(self, house: House, keeper: Visitor) -> None:
        """Everything that is known by a code or a secret: good, replaced, ended, taken back."""
        things, mark = house.things, house.mark
        things["replaced_pass_code"] = things["pass_code"]
        made = self.post(keeper, f"/api/passes/{things['pass']}/link")
        things["pass_code"], things["pass_secret"] = made["code"], made["link"].rpartition("/")[2]
        with writing() as connection:
            things["claim"] = make_claim_code(connection, self.now_ms)
            things["way_back"] = make_claim_code(connection, self.now_ms, house.id, things["person"])
            things["old_claim"] = make_claim_code(connection, self.now_ms - 25 * 3_600_000)
            things["mail_code"] = mail.ask(
                connection, house.id, things["person"], f"{mark.lower()}@example.org", self.now_ms
            )
        stranger = Visitor("stranger", house)
        waiting = self.post(stranger, "/api/pairings", {"device": self.new_device()})
        things["pairing_code"] = waiting["code"]
        things["waiting_pairing"] = {k: waiting[k] for k in ("pairing_id", "collect_secret")}
        approved = self.post(stranger, "/api/pairings", {"device": self.new_device()})
        self.post(
            keeper, "/api/pairings/approve", {"code": approved["code"], "person_name": f"{mark} second"}
        )
        things["approved_pairing_code"] = approved["code"]
        things["approved_pairing"] = {k: approved[k] for k in ("pairing_id", "collect_secret")}
        things["stolen_pairing"] = {**things["approved_pairing"], "collect_secret": "B" * 43}
        for name, pass_id in (
            ("replaced_feed", None),
            ("feed", None),
            ("pass_feed", things["pass"]),
            ("ended_feed", things["ended_pass"]),
            ("taken_back_feed", things["removed_pass"]),
            ("old_feed", things["early_pass"]),
            ("revoked_feed", things["long_gone_pass"]),
        ):
            url = self.post(keeper, "/api/feeds", {"pass_id": pass_id})["url"]
            things[name] = url.rpartition("/")[2].removesuffix(".ics")
        self.post(keeper, "/api/feeds/revoke", {"pass_id": things["long_gone_pass"]})
        self.post(keeper, f"/api/passes/{things['removed_pass']}/revoke")
        with writing() as connection:
            connection.execute(
                update(feed_tokens).where(feed_tokens.c.pass_id == things["early_pass"]).values(expires_ms=1)
            )
        for name in ("ended_sensor", "sensor"):
            made = self.post(keeper, "/api/sensors", {"place_id": things["place"], "name": f"{mark} {name}"})
            things[name], things[f"{name}_token"] = made["id"], made["token"]
        self.post(keeper, f"/api/sensors/{things['ended_sensor']}/end")
        key_id = self.app.extensions["broodshelf"].pusher.key.key_id
        for guest in (keeper, self.visitors["stand_in" if mark == "Alpha" else "other_stand_in"]):
            listens = {
                "endpoint": f"http://127.0.0.1:9/{uuid7(self.now_ms)}",
                "keys": BrowserKeys().as_json,
                "key_id": key_id,
            }
            answer = self.call(guest, "PUT", "/api/push/subscription", listens)
            assert answer.status == 200, answer.text
        things["subscription"] = listens
        things["delivery"] = self.post(keeper, "/api/push/test")["delivery_id"]


def _all_applied(answers: list[dict[str, Any]]) -> None:
    assert all(answer["verdict"] == "applied" for answer in answers), answers


def at_ms(when: str) -> int:
    return round(dt.datetime.fromisoformat(when).replace(tzinfo=dt.UTC).timestamp() * 1000)


def _jpeg(name: str) -> bytes:
    colour = tuple(hashlib.sha256(name.encode()).digest()[:3])
    out = io.BytesIO()
    Image.new("RGB", (48, 32), colour).save(out, "JPEG")
    return out.getvalue()
