"""Species, foods, vessels and cautions: data with sources, read from the TOML files beside this one."""
