"""The colony itself: species, stages, brood, growth, rest and climate."""
