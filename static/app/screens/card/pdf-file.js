/** The engine's base64 as a file; its name carries the check word and nothing of the patient. */

/**
 * @param {string} base64
 * @param {string} checkWord "ABCD EFGH"
 */
export function pdfFile(base64, checkWord) {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return new File([bytes], `card-${checkWord.replace(' ', '-')}.pdf`, { type: 'application/pdf' });
}
