"""Commands for administrators."""
