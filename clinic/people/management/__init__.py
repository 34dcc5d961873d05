"""Commands for whoever looks after the accounts."""
