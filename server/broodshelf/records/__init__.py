"""What a household keeps: the tables of its records, their schemas, merging and history."""
