"""An invented shelf with four months of history, to look around in."""
