/** Ways for a file to leave this device. */

/** @param {File} file */
export function keep(file) {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  // The browser reads it after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/**
 * @param {File} file
 * @returns {(() => Promise<boolean>) | null}  true when it was handed on; null where this browser shares no such file
 */
export function sharing(file) {
  if (!navigator.canShare?.({ files: [file] })) return null;
  return () => navigator.share({ files: [file] }).then(() => true, () => false);
}
