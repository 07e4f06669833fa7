"""A push service on loopback that a real Firefox listens to and our sender posts to (RFC 8030).

The browser's side is the WebSocket protocol that Firefox speaks with its push service; the server's side is an
ordinary POST. ``with BrowserPush() as service``: ``service.port``; ``service.taken`` lists what was posted.
"""

from __future__ import annotations

import asyncio
import base64
import json
import uuid
from dataclasses import dataclass, field
from typing import Any

from aiohttp import WSMsgType, web
from tests.support.looping import Looping


@dataclass
class Channel:
    """One subscription: whose it is and what waits for it."""

    uaid: str
    queue: list[dict[str, Any]] = field(default_factory=list)


class BrowserPush(Looping):
    """The service, in a thread with its own event loop."""

    def __init__(self) -> None:
        super().__init__()
        self.taken: list[dict[str, str]] = []
        self._sockets: dict[str, web.WebSocketResponse] = {}
        self._channels: dict[str, Channel] = {}

    def _run(self) -> None:
        asyncio.set_event_loop(self._loop)
        app = web.Application()
        app.add_routes([web.get("/", self._listen), web.post("/push/{channel}", self._post)])
        runner = web.AppRunner(app)
        self._loop.run_until_complete(runner.setup())
        site = web.TCPSite(runner, "127.0.0.1", 0)
        self._loop.run_until_complete(site.start())
        self.port = runner.addresses[0][1]
        self._ready.set()
        self._loop.run_forever()
        for socket in list(self._sockets.values()):
            self._loop.run_until_complete(socket.close())
        self._loop.run_until_complete(runner.cleanup())
        self._loop.close()

    async def _listen(self, request: web.Request) -> web.WebSocketResponse:
        socket = web.WebSocketResponse(protocols=("push-notification",))
        await socket.prepare(request)
        uaid = ""
        async for frame in socket:
            if frame.type != WSMsgType.TEXT:
                continue
            message = json.loads(frame.data)
            kind = message.get("messageType")
            if kind is None:
                await socket.send_str("{}")
            elif kind == "hello":
                uaid = message.get("uaid") or uuid.uuid4().hex
                self._sockets[uaid] = socket
                answer = {
                    "messageType": "hello",
                    "uaid": uaid,
                    "status": 200,
                    "use_webpush": True,
                    "broadcasts": {},
                }
                await socket.send_json(answer)
                for channel in self._channels.values():
                    if channel.uaid == uaid:
                        for waiting in channel.queue:
                            await socket.send_json(waiting)
            elif kind == "register":
                name = message["channelID"]
                self._channels[name] = Channel(uaid)
                endpoint = f"http://127.0.0.1:{self.port}/push/{name}"
                await socket.send_json(
                    {"messageType": "register", "channelID": name, "status": 200, "pushEndpoint": endpoint}
                )
            elif kind == "unregister":
                self._channels.pop(message["channelID"], None)
                await socket.send_json({**message, "status": 200})
            elif kind == "ack":
                for update in message["updates"]:
                    channel = self._channels.get(update["channelID"])
                    if channel:
                        channel.queue = [m for m in channel.queue if m["version"] != update["version"]]
        self._sockets.pop(uaid, None)
        return socket

    async def _post(self, request: web.Request) -> web.Response:
        name = request.match_info["channel"]
        channel = self._channels.get(name)
        body = await request.read()
        self.taken.append(dict(request.headers))
        if channel is None:
            return web.Response(status=410)
        if "TTL" not in request.headers:
            return web.Response(status=400)
        message = {
            "messageType": "notification",
            "channelID": name,
            "version": uuid.uuid4().hex,
            "data": base64.urlsafe_b64encode(body).rstrip(b"=").decode(),
            "headers": {"encoding": request.headers.get("Content-Encoding", "")},
        }
        channel.queue.append(message)
        socket = self._sockets.get(channel.uaid)
        if socket is not None:
            await socket.send_json(message)
        return web.Response(status=201)
