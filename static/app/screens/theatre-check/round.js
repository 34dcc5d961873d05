/**
 * A check under way, kept as a draft at every touch: who goes through it, what was entered so far, and what is being entered.
 * The engine says what is asked next; nothing here compares anything.
 */

/** @typedef {import('../../planning/theatre-checks.js').Phase} Phase */
/** @typedef {{name: string, role: string}} Member */
/** @typedef {Record<string, any>} Held what is being entered at the present step */
/** @typedef {{phase: Phase, local: any[], first: Member | null, second: Member | null, entries: any[], held: Held}} Under */

/**
 * @param {Phase} phase
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} items the clinic's own, which stay as they are until the check ends
 * @returns {Under}
 */
export const begun = (phase, items) => ({
  phase,
  local: [...items].sort((a, b) => (a.id < b.id ? -1 : 1)).map(({ id, body }) => ({ record_id: id, item: body })),
  first: null,
  second: null,
  entries: [],
  held: {},
});

/** @param {Under} under @param {Held} held @returns {Under} */
export const holding = (under, held) => ({ ...under, held });

/** @param {Under} under @param {'first' | 'second'} which @returns {Under} */
export const named = (under, which) => ({ ...under, [which]: { name: tidy(under.held.name), role: under.held.role }, held: {} });

/** The second person is asked again, with what was typed. @param {Under} under @returns {Under} */
export const askSecondAgain = (under) => ({ ...under, second: null, held: { ...under.second } });

/** @param {Under} under @param {{id: string}} step @returns {Under} */
export const entered = (under, step) => ({ ...under, entries: [...under.entries, { step: step.id, ...kept(under.held) }], held: {} });

/**
 * The surgeon goes on after the last answer, with a reason.
 * @param {Under} under
 * @returns {Under}
 */
export function goneOn(under) {
  const last = under.entries[under.entries.length - 1];
  const going_on = { surgeon: tidy(under.held.surgeon), reason: tidy(under.held.reason) };
  return { ...under, entries: [...under.entries.slice(0, -1), { ...last, going_on }], held: {} };
}

/**
 * What the desk is asked with.
 * @param {Under} under
 * @param {import('../../planning/kept-cards.js').Pieces} pieces
 * @param {string} card
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} also newer records of the patient, and those of other entries
 */
export const roundOf = ({ phase, local, first, second, entries }, { patient, plan, signature }, card, also) => ({
  patient: patient.body,
  plan: plan.body,
  signature: signature.body,
  also: also.map(({ id, body }) => ({ record_id: id, patient: body })),
  card,
  phase,
  first,
  second,
  local,
  entries,
});

/** @param {string} [text] */
const tidy = (text = '') => text.trim().replace(/\s+/g, ' ');

/** @param {Held} held */
const kept = (held) => Object.fromEntries(Object.entries(held).map(([name, value]) => [name, typeof value === 'string' ? tidy(value) : value]));
