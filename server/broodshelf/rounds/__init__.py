"""From records to plans and occurrences, in the transaction that changed the records."""
