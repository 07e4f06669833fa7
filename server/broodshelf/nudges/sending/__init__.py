"""What waits goes out: the queue, the lanes of each host, what was taken."""
