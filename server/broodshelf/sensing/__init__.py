"""What sensors say of a place: their tokens, what they send over HTTP and MQTT, and how long which of it is kept."""
