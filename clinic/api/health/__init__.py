"""Whether the server answers, for a proxy or a person who looks after it."""
