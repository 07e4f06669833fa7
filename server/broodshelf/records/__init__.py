"""What a household keeps: kinds of records, their tables, merging and history."""
