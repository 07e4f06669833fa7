"""Households, persons, devices, pairing and passes, and who may do what."""
