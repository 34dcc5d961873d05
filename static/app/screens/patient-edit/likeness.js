/** Patients who may be the one that is being entered again. */

/** @typedef {{id: string, body: {full_name: string, born_on: string, hospital_number: string}}} Known */
/** @typedef {Known & {because: 'number' | 'name and birth date'}} Likeness */

/**
 * @param {{full_name: string, born_on: string, hospital_number: string}} typed
 * @param {Known[]} others every patient but the one that is edited
 * @returns {Likeness[]} the same number first
 */
export function likenesses(typed, others) {
  const number = plain(typed.hospital_number);
  const name = plain(typed.full_name);
  const sameNumber = others.filter(({ body }) => number && plain(body.hospital_number) === number);
  const samePerson = others.filter(
    (other) => name && !sameNumber.includes(other) && plain(other.body.full_name) === name && other.body.born_on === typed.born_on,
  );
  return [
    ...sameNumber.map((known) => ({ ...known, because: /** @type {const} */ ('number') })),
    ...samePerson.map((known) => ({ ...known, because: /** @type {const} */ ('name and birth date') })),
  ];
}

/** @param {string} text @returns {string} letters and digits only, without accents and case */
function plain(text) {
  return text.normalize('NFD').replace(/[^\p{L}\p{N}]/gu, '').toLowerCase();
}
