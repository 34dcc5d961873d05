/** The checks in theatre of one signed card, as the records tell them. Pure: records in, facts out. */

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {'sign in' | 'time out' | 'sign out'} Phase */
/** @typedef {{phase: Phase, words: string, passed: LedgerRecord | null, stops: LedgerRecord[], after: LedgerRecord | null, isNext: boolean}} PhaseState `after`: the passed check of the phase before */

/** @type {{phase: Phase, words: string, when: string}[]} */
export const PHASES = [
  { phase: 'sign in', words: 'Sign in', when: 'before the anaesthetic begins' },
  { phase: 'time out', words: 'Time out', when: 'before the first incision' },
  { phase: 'sign out', words: 'Sign out', when: 'before the patient leaves the room' },
];

/**
 * Every check of a card, the oldest first.
 * @param {readonly LedgerRecord[]} records
 * @param {string} signature its id
 */
export const checksOf = (records, signature) =>
  records.filter(({ kind, body }) => kind === 'theatre_check' && body.signature_id === signature).sort((a, b) => (a.id < b.id ? -1 : 1));

/**
 * The three phases of a card: passed or not, what stopped them, and which one is to be gone through next.
 * @param {readonly LedgerRecord[]} records
 * @param {string} signature its id
 * @returns {PhaseState[]}
 */
export function phasesOf(records, signature) {
  const checks = checksOf(records, signature);
  /** @type {LedgerRecord | null} */
  let after = null;
  let isReached = true;
  return PHASES.map(({ phase, words }) => {
    const own = checks.filter(({ body }) => body.phase === phase);
    const passed = own.filter(({ body }) => body.outcome === 'passed').at(-1) ?? null;
    const state = { phase, words, passed, stops: own.filter(({ body }) => body.outcome === 'stopped'), after, isNext: isReached && passed === null };
    isReached = isReached && passed !== null;
    after = passed;
    return state;
  });
}

/** The phase to go through next, or undefined when all three are passed. @param {PhaseState[]} phases */
export const nextPhase = (phases) => phases.find(({ isNext }) => isNext);

/**
 * What a plan's standing is called in a check.
 * @param {import('./standing.js').Standing} standing
 */
export const cardState = ({ retraction, successors }) => (retraction ? 'taken back' : successors.length > 0 ? 'replaced' : 'current');
