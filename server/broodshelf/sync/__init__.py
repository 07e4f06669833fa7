"""One round trip between a phone and the server: push, pull, epochs and clock skew."""
