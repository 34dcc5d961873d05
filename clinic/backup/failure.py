"""Why a backup or a restore did not happen."""


class BackupFailed(Exception):
    """With a sentence for whoever runs the command."""
