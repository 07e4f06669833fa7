"""What came of a message, written down and counted."""
