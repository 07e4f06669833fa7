"""Test tubes with ants, drawn: seeded pictures whose bodies are known, for what counts on a picture.

No photograph of a real nest could be had here. Drawn are: bodies of three ellipses (head, thorax, gaster) with legs
and feelers, bent a little, of differing shade and size, alone and in crowds that touch and overlap; brood; glass with
long reflections; a cotton plug; a wet end; scratches; light that falls off; blur; noise; JPEG.
"""

from __future__ import annotations

import io
import math
import random
from dataclasses import dataclass

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

SUPER = 3
"""Everything is drawn so many times larger and then made small, so that edges are soft."""


@dataclass(frozen=True)
class Scene:
    """What is drawn. ``crowded``: the share of the ants that sit in heaps; ``body_px``: a worker's length."""

    ants: int
    seed: int
    body_px: float = 34.0
    brood: int = 0
    crowded: float = 0.5
    width_px: int = 1600
    height_px: int = 1000
    blur_px: float = 0.8
    noise: float = 0.02
    scratches: int = 4
    glare: int = 3
    dark_ground: bool = False
    pale_ants: bool = False
    bore_mm: float = 16.0
    jpeg_quality: int = 82


@dataclass(frozen=True)
class Rendered:
    """A drawn picture with what is in it: middles of workers and brood in px."""

    image: Image.Image
    ants: list[tuple[float, float]]
    brood: list[tuple[float, float]]
    body_px: float
    px_per_mm: float


def render(scene: Scene) -> Rendered:
    """Draw a scene."""
    rng = random.Random(scene.seed)
    w, h = scene.width_px * SUPER, scene.height_px * SUPER
    inside = (w * 0.04, h * 0.16, w * 0.96, h * 0.84)
    ground = 96 if scene.dark_ground else rng.randint(165, 215)
    image = Image.new("L", (w, h), ground + (0 if scene.dark_ground else 20))
    pen = ImageDraw.Draw(image)
    pen.rectangle(inside, fill=ground)
    cotton = _cotton(image, rng, inside)
    wet = inside[0] + 0.14 * (inside[2] - inside[0])
    pen.rectangle((inside[0], inside[1], wet, inside[3]), fill=ground - 14)
    nest = (wet, inside[1], cotton, inside[3])
    brood = _brood(pen, rng, nest, scene, ground)
    middles = _places(rng, nest, scene)
    for x, y in middles:
        _ant(pen, rng, x, y, scene.body_px * SUPER, pale=scene.pale_ants)
    _glass(pen, rng, inside, scene)
    pixels = _light(image, rng, scene)
    image = Image.fromarray(pixels).convert("RGB")
    kept = io.BytesIO()
    image.save(kept, "JPEG", quality=scene.jpeg_quality)
    small = [(x / SUPER, y / SUPER) for x, y in middles]
    px_per_mm = (inside[3] - inside[1]) / SUPER / scene.bore_mm
    return Rendered(
        Image.open(kept), small, [(x / SUPER, y / SUPER) for x, y in brood], scene.body_px, px_per_mm
    )


def _places(
    rng: random.Random, nest: tuple[float, float, float, float], scene: Scene
) -> list[tuple[float, float]]:
    """Middles of ants: in heaps at no less than 0.4 of a body apart, the rest strewn at no less than 0.5."""
    body = scene.body_px * SUPER
    left, top, right, bottom = (nest[0] + body, nest[1] + body, nest[2] - body, nest[3] - body)
    heaps = [(rng.uniform(left, right), rng.uniform(top, bottom)) for _ in range(1 + scene.ants // 60)]
    made: list[tuple[float, float]] = []
    in_heaps = round(scene.crowded * scene.ants)
    spread = body * max(1.2, 0.62 * math.sqrt(in_heaps / len(heaps)))
    for _ in range(400_000):
        if len(made) == scene.ants:
            break
        crowd = len(made) < in_heaps
        if crowd:
            x, y = rng.choice(heaps)
            x, y = rng.gauss(x, spread), rng.gauss(y, spread)
        else:
            x, y = rng.uniform(left, right), rng.uniform(top, bottom)
        apart = (0.4 if crowd else 0.5) * body
        if (
            left <= x <= right
            and top <= y <= bottom
            and all(math.hypot(x - u, y - v) >= apart for u, v in made)
        ):
            made.append((x, y))
    if len(made) < scene.ants:
        raise ValueError(f"{scene.ants} ants do not fit; draw them smaller.")
    return made


def _ant(
    pen: ImageDraw.ImageDraw, rng: random.Random, x: float, y: float, body: float, *, pale: bool
) -> None:
    """Three ellipses in a row whose ends bend by up to 25°, six legs and two feelers."""
    body *= rng.uniform(0.88, 1.12)
    angle, bend = rng.uniform(0, math.tau), math.radians(rng.uniform(-25, 25))
    shade = rng.randint(18, 60)
    towards_ground = 1
    if pale:
        shade, towards_ground = 245 - shade, -1

    def along(t: float, turn: float = 0.0) -> tuple[float, float]:
        return x + t * body * math.cos(angle + turn), y + t * body * math.sin(angle + turn)

    thin = max(1, round(0.022 * body))
    for t in (-0.02, 0.07, 0.16):
        for side in (-1, 1):
            knee_angle = angle + side * math.radians(rng.uniform(55, 110))
            u, v = along(t)
            knee = (u + 0.26 * body * math.cos(knee_angle), v + 0.26 * body * math.sin(knee_angle))
            foot_angle = knee_angle + side * math.radians(rng.uniform(-10, 50))
            foot = (knee[0] + 0.2 * body * math.cos(foot_angle), knee[1] + 0.2 * body * math.sin(foot_angle))
            pen.line([(u, v), knee, foot], fill=shade + 35 * towards_ground, width=thin)
    for side in (-1, 1):
        tip = along(0.62, side * math.radians(rng.uniform(12, 28)))
        pen.line([along(0.42, bend / 2), tip], fill=shade + 40 * towards_ground, width=thin)
    for middle, turn, long, wide, lighter in (
        (-0.26, -bend, 0.24, 0.135, 0),
        (0.08, 0.0, 0.16, 0.075, 14),
        (0.36, bend, 0.13, 0.105, 6),
    ):
        _ellipse(
            pen, along(middle, turn), long * body, wide * body, angle + turn, shade + lighter * towards_ground
        )


def _ellipse(
    pen: ImageDraw.ImageDraw, middle: tuple[float, float], long: float, wide: float, angle: float, shade: int
) -> None:
    points = []
    for i in range(28):
        t = math.tau * i / 28
        u, v = long * math.cos(t), wide * math.sin(t)
        points.append(
            (
                middle[0] + u * math.cos(angle) - v * math.sin(angle),
                middle[1] + u * math.sin(angle) + v * math.cos(angle),
            )
        )
    pen.polygon(points, fill=shade)


def _brood(
    pen: ImageDraw.ImageDraw, rng: random.Random, nest: tuple[float, ...], scene: Scene, ground: int
) -> list[tuple[float, float]]:
    """Pale grains in a loose heap."""
    body = scene.body_px * SUPER
    x, y = (
        rng.uniform(nest[0] + 3 * body, nest[2] - 3 * body),
        rng.uniform(nest[1] + 3 * body, nest[3] - 3 * body),
    )
    made: list[tuple[float, float]] = []
    for _ in range(scene.brood * 200):
        if len(made) == scene.brood:
            break
        spread = body * max(0.8, 0.4 * math.sqrt(scene.brood))
        u, v = rng.gauss(x, spread), rng.gauss(y, spread)
        if all(math.hypot(u - a, v - b) > 0.55 * body for a, b in made):
            made.append((u, v))
            shade = min(250, ground + rng.randint(70, 110)) if scene.dark_ground else min(250, ground + 35)
            _ellipse(pen, (u, v), 0.3 * body, 0.15 * body, rng.uniform(0, math.pi), shade)
    return made


def _cotton(image: Image.Image, rng: random.Random, inside: tuple[float, ...]) -> float:
    """Draw a white plug with threads and shadows at the right end; return where it begins."""
    begin = inside[2] - 0.12 * (inside[2] - inside[0])
    pen = ImageDraw.Draw(image)
    pen.rectangle((begin, inside[1], inside[2], inside[3]), fill=236)
    for _ in range(160):
        x, y = rng.uniform(begin, inside[2]), rng.uniform(inside[1], inside[3])
        u, v = x + rng.gauss(0, 60 * SUPER / 3), y + rng.gauss(0, 60 * SUPER / 3)
        pen.line([(x, y), (max(begin, u), v)], fill=rng.randint(196, 252), width=rng.randint(1, 2 * SUPER))
    return begin


def _glass(pen: ImageDraw.ImageDraw, rng: random.Random, inside: tuple[float, ...], scene: Scene) -> None:
    """Walls, reflections along the tube, scratches."""
    left, top, right, bottom = inside
    for y in (top, bottom):
        pen.line([(left, y), (right, y)], fill=92, width=3 * SUPER)
    for _ in range(scene.glare):
        y, x = rng.uniform(top, bottom), rng.uniform(left, right)
        long = rng.uniform(0.15, 0.6) * (right - left)
        pen.line(
            [(x, y), (min(right, x + long), y + rng.uniform(-6, 6))],
            fill=252,
            width=rng.randint(2, 6) * SUPER,
        )
    for _ in range(scene.scratches):
        x, y, angle = rng.uniform(left, right), rng.uniform(top, bottom), rng.uniform(-0.5, 0.5)
        long = rng.uniform(2, 8) * scene.body_px * SUPER
        end = (x + long * math.cos(angle), y + long * math.sin(angle))
        pen.line([(x, y), end], fill=rng.randint(95, 140), width=max(1, round(0.05 * scene.body_px * SUPER)))


def _light(image: Image.Image, rng: random.Random, scene: Scene) -> np.ndarray:
    """Make it small, let the light fall off to one side, blur it and add noise."""
    small = image.resize((scene.width_px, scene.height_px), Image.Resampling.BOX)
    small = small.filter(ImageFilter.GaussianBlur(scene.blur_px))
    pixels = np.asarray(small, dtype=np.float64) / 255
    across = np.linspace(-1, 1, scene.width_px)[None, :] * rng.uniform(-0.12, 0.12)
    down = np.linspace(-1, 1, scene.height_px)[:, None] * rng.uniform(-0.12, 0.12)
    noise = np.random.default_rng(scene.seed).normal(0, scene.noise, pixels.shape)
    return np.asarray(np.clip(pixels * (1 + across + down) + noise, 0, 1) * 255, dtype=np.uint8)
