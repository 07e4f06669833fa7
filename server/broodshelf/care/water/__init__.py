"""Water: how fast a reservoir empties, and whether it leaks."""
