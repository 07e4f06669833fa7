"""How a message looks in a mailbox: a letter with one line for each thing to do."""

from __future__ import annotations

import datetime as dt
import hashlib
from email.message import EmailMessage
from email.utils import format_datetime
from urllib.parse import urlsplit

from ....languages import say
from ....languages.tags import read_tag
from ..channel import Delivery


def render(delivery: Delivery, sender: str, address: str, now_ms: int) -> EmailMessage:
    """Return the letter. The ``Message-ID`` comes from the delivery: a repeat after a crash is the same mail again."""
    message = delivery.message
    letter = EmailMessage()
    letter["From"] = sender
    letter["To"] = address
    letter["Subject"] = " ".join(message.title.split())
    letter["Date"] = format_datetime(dt.datetime.fromtimestamp(now_ms // 1000, dt.UTC))
    name = hashlib.sha256(delivery.id.encode()).hexdigest()[:32]
    letter["Message-ID"] = f"<{name}@{urlsplit(message.url).hostname}>"
    letter["Auto-Submitted"] = "auto-generated"  # RFC 3834: no out-of-office answers
    letter.set_content("\n".join([*message.lines, "", message.url, "", say(message.language, "mail-foot")]))
    letter["Content-Language"] = read_tag(message.language).language  # RFC 3282
    return letter
