"""Broodshelf: care for a shelf of ant colonies, offline at the shelf, with a small server of your own."""

__version__ = "0.2.0"
