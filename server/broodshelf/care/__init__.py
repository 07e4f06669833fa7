"""The care core: pure functions from what is known about a colony to what it needs, with reasons."""
