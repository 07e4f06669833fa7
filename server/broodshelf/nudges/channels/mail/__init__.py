"""Mail: the operator's mail server takes a letter for a person's mailbox (RFC 5321, 5322)."""
