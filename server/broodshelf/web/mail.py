"""Mail as a second channel: a keeper sets, confirms and takes away people's addresses."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify

from ..errors import BadRequest
from ..languages import told
from ..nudges.channels.channel import Channels
from ..nudges.channels.mail.mailboxes import forget_mailbox, listen_by_mail
from ..nudges.sending.at_once import send_code
from ..people import limits, mail
from ..people.actor import Actor
from ..people.language import language_of_person
from ..records.database import reading, writing
from . import bodies
from . import parts as p
from .guard import Given, open_to
from .journal import counting_wrong_codes

blueprint = Blueprint("mail", __name__, url_prefix="/api/mail")
MOST_CODES_A_MINUTE = 3


@blueprint.get("")
@open_to("keeper")
def show(actor: Actor) -> Response:
    """Say whether this server can send mail, and who gets it.

    → `{available, people: [{person_id, address, confirmed, asked_ms}]}`
    """
    with reading() as connection:
        people = mail.addresses(connection, actor.household_id)
    return jsonify(available=p.parts().pusher.channels.mail is not None, people=people)


@blueprint.put("/<person_id>")
@open_to("keeper", body=bodies.MAIL_ADDRESS)
def ask(actor: Actor, person_id: str, body: Given) -> Response:
    """Set a person's address and send a code there; nothing else is sent before it is confirmed.

    → `{outcome}`: a code is sent there (`sent`, or why not); 400 `mail_off` without a mail server
    """
    channels = _channels()
    now_ms = p.now_ms()
    with writing() as connection:
        limits.count_try(connection, "mail", actor.household_id, now_ms, MOST_CODES_A_MINUTE)
    with writing() as connection:
        code = mail.ask(connection, actor.household_id, person_id, body["address"], now_ms)
        forget_mailbox(connection, actor.household_id, person_id)
        language = language_of_person(connection, actor.household_id, person_id)
    public_url = p.parts().settings.public_url
    return jsonify(outcome=send_code(channels, body["address"], code, public_url, now_ms, language))


@blueprint.post("/<person_id>/confirm")
@open_to("keeper", body=bodies.CODE)
def confirm(actor: Actor, person_id: str, body: Given) -> Response:
    """Take the code that was sent; from now on the person's nudges go there, too.

    → `{}`; 400 `wrong_code`, 410 `code_ended` after an hour
    """
    now_ms = p.now_ms()
    p.count_try("mail-code")
    with counting_wrong_codes("mail"), writing() as connection:
        address = mail.confirm(connection, actor.household_id, person_id, body["code"], now_ms)
        listen_by_mail(connection, actor.household_id, person_id, address, now_ms)
    return jsonify({})


@blueprint.delete("/<person_id>")
@open_to("keeper", body=bodies.NOTHING)
def forget(actor: Actor, person_id: str) -> Response:
    """Forget a person's address and send no more mail.

    → `{}`
    """
    with writing() as connection:
        mail.forget(connection, actor.household_id, person_id, p.now_ms())
        forget_mailbox(connection, actor.household_id, person_id)
    return jsonify({})


def _channels() -> Channels:
    channels = p.parts().pusher.channels
    if channels.mail is None:
        raise BadRequest(told("problem-mail-off"), code="mail_off")
    return channels
