"""``broodshelf doctor``: look at a server without changing it, and say in words what would go wrong."""

from __future__ import annotations

from .examination import examine
from .findings import Finding

__all__ = ["Finding", "examine"]
