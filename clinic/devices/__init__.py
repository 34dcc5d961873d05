"""The phones and tablets that people sign in from, so that each can be seen, named and revoked."""
