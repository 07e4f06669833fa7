"""HTTP only: blueprints, headers, the problem body and the app shell."""
