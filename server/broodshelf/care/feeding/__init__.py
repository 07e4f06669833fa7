"""What to offer: appetite, portions, prey, foods and where they come from."""
