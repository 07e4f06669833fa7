"""The ways out of this server: push to a phone, mail to a mailbox, and what the two share."""
