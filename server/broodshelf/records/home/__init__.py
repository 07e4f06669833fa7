"""Where what is neither a row of a room nor a setting lies: one port, and a home behind it for each database."""
