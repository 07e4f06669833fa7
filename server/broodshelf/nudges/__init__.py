"""Who hears what when: the occurrence queue, nudges and their delivery."""
