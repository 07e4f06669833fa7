"""The little statistics that growth needs, in plain Python: a line, a damped Gauss-Newton, Student's quantile."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

from ...model.quantities import within

Model = Callable[[Sequence[float], float], tuple[float, tuple[float, ...]]]
"""From parameters and x to the value and its slopes by each parameter."""

_T_80: Final = (3.0777, 1.8856, 1.6377, 1.5332, 1.4759, 1.4398, 1.4149, 1.3968, 1.3830, 1.3722)
"""Student's t for a two-sided 80 % interval, 1 to 10 degrees of freedom (standard table)."""
_Z_80: Final = 1.28155


@dataclass(frozen=True, slots=True)
class Line:
    """A fitted line; ``slope_unit`` and ``intercept_unit`` times the residual spread are the standard errors."""

    slope: float
    intercept: float
    squares: float
    slope_unit: float
    intercept_unit: float


@dataclass(frozen=True, slots=True)
class Fit:
    """A fitted curve with its sum of squares and the normal matrix (slopes times slopes, summed)."""

    parameters: tuple[float, ...]
    squares: float
    normal: tuple[tuple[float, ...], ...]

    def unit_of(self, slopes: Sequence[float]) -> float:
        """Return what, times the residual spread, is the standard error of a quantity with these slopes."""
        weights = _solve(self.normal, slopes)
        return math.inf if weights is None else math.sqrt(max(0.0, _dot(slopes, weights)))


def _dot(a: Sequence[float], b: Sequence[float]) -> float:
    return math.fsum(x * y for x, y in zip(a, b, strict=True))


def fit_line(xs: Sequence[float], ys: Sequence[float]) -> Line:
    """Return the least-squares line y = intercept + slope x. All x equal raises ``OutOfRange``."""
    n = len(xs)
    mean_x, mean_y = math.fsum(xs) / n, math.fsum(ys) / n
    sxx = within("spread of x", math.fsum((x - mean_x) ** 2 for x in xs), "", 1e-12, 1e18)
    slope = _dot([x - mean_x for x in xs], [y - mean_y for y in ys]) / sxx
    intercept = mean_y - slope * mean_x
    squares = math.fsum((y - intercept - slope * x) ** 2 for x, y in zip(xs, ys, strict=True))
    return Line(slope, intercept, squares, 1 / math.sqrt(sxx), math.sqrt(1 / n + mean_x**2 / sxx))


def student_t_80(freedom: int) -> float:
    """Return Student's t of a two-sided 80 % interval; beyond 10 degrees by Cornish-Fisher, right to 0.001."""
    if freedom <= len(_T_80):
        return _T_80[max(1, freedom) - 1]
    z = _Z_80
    return z + (z**3 + z) / (4 * freedom) + (5 * z**5 + 16 * z**3 + 3 * z) / (96 * freedom**2)


def gauss_newton(
    model: Model, start: Sequence[float], xs: Sequence[float], ys: Sequence[float], *, steps: int = 60
) -> Fit | None:
    """Fit a curve by Gauss-Newton with Marquardt's damping; None where it does not settle."""
    parameters = tuple(start)
    squares, normal, gradient = _normal(model, parameters, xs, ys)
    damping = 1e-3
    for _ in range(steps):
        damped = [
            [cell * (1 + damping if i == j else 1) for j, cell in enumerate(row)]
            for i, row in enumerate(normal)
        ]
        step = _solve(damped, gradient)
        if step is None:
            return None
        tried = tuple(p + s for p, s in zip(parameters, step, strict=True))
        new_squares, new_normal, new_gradient = _normal(model, tried, xs, ys)
        if math.isfinite(new_squares) and new_squares <= squares:
            settled = squares - new_squares <= 1e-9 * (1e-12 + squares)
            parameters, squares, normal, gradient = tried, new_squares, new_normal, new_gradient
            damping = max(1e-9, damping / 10)
            if settled:
                return Fit(parameters, squares, tuple(map(tuple, normal)))
        else:
            damping *= 10
            if damping > 1e12:
                return Fit(parameters, squares, tuple(map(tuple, normal)))
    return None


def _normal(
    model: Model, parameters: Sequence[float], xs: Sequence[float], ys: Sequence[float]
) -> tuple[float, list[list[float]], list[float]]:
    size = len(parameters)
    normal = [[0.0] * size for _ in range(size)]
    gradient = [0.0] * size
    squares = 0.0
    for x, y in zip(xs, ys, strict=True):
        value, slopes = model(parameters, x)
        off = y - value
        squares += off * off
        for i in range(size):
            gradient[i] += slopes[i] * off
            for j in range(size):
                normal[i][j] += slopes[i] * slopes[j]
    return squares, normal, gradient


def _solve(matrix: Sequence[Sequence[float]], right: Sequence[float]) -> list[float] | None:
    """Solve a small linear system by elimination with pivots; None where it has no single answer."""
    rows = [[*row, value] for row, value in zip(matrix, right, strict=True)]
    size = len(rows)
    for i in range(size):
        pivot = max(range(i, size), key=lambda r: abs(rows[r][i]))
        rows[i], rows[pivot] = rows[pivot], rows[i]
        if abs(rows[i][i]) < 1e-14:
            return None
        for r in range(i + 1, size):
            share = rows[r][i] / rows[i][i]
            rows[r] = [a - share * b for a, b in zip(rows[r], rows[i], strict=True)]
    answer = [0.0] * size
    for i in reversed(range(size)):
        known = math.fsum(rows[i][j] * answer[j] for j in range(i + 1, size))
        answer[i] = (rows[i][size] - known) / rows[i][i]
    return answer
