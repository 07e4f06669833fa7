"""Push: a phone's push service takes an encrypted message (RFC 8030, 8188, 8291, 8292)."""
