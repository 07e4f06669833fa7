"""From a colony and an instant to gauges and tasks."""
