/**
 * What has not reached the clinic. Pure decisions; the rows are `entries.js`'s and `exchange.js`'s.
 *
 * Each saved record has an entry until the clinic has it:
 *
 *     waiting     to be sent, in the order of saving
 *     attention   refused for good: kept with its reason until a person deals with it
 *     (no entry)  sent and accepted
 *
 * Order is kept per patient. A record behind one that needs attention waits only if it mentions that one (as its patient,
 * in `supersedes` or in its body); other patients are never held up. What another device made and handed over is carried
 * (`carrying.js`): it is sent the same way, but for what is stuck.
 */

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {'waiting' | 'attention'} State */
/**
 * @typedef {object} Entry
 * @property {string} id  of the record
 * @property {number} sequence  order of saving on this phone
 * @property {State} state
 * @property {string} since  ISO time of the save
 * @property {string} code  why it needs attention; empty while it waits
 * @property {string} text
 * @property {string} field
 * @property {import('./carrying.js').Carried | null} [carried]  where another device made it
 * @property {boolean} [offered]  the clinic once had it, and lacks it since a backup was restored
 */
/**
 * @typedef {object} Answer  the clinic's word on one record
 * @property {string} id
 * @property {'accepted' | 'duplicate' | 'rejected'} status
 * @property {number | null} [position]
 * @property {string | null} [received_at]
 * @property {string | null} [receipt]
 * @property {string | null} [code]
 * @property {string | null} [text]
 * @property {string | null} [field]
 * @property {boolean | null} [retryable]
 */
/**
 * @typedef {object} Verdict
 * @property {string} id
 * @property {string} made  when the record that was sent was made: a correction under the same id was made later
 * @property {'sent' | 'waiting' | 'attention'} to
 * @property {Answer | null} answer
 */

const MOST_LETTERS = 1_000_000;

/**
 * What has to wait, for its patient's turn or for what it mentions, makes wait what mentions it and the rest of its patient.
 *
 * @param {Entry[]} entries
 * @param {(id: string) => LedgerRecord | undefined} find
 * @param {object} [limits]
 * @param {Set<string>} [limits.held]  patients whose turn has to wait for the next round
 * @param {LedgerRecord[]} [limits.underWay]  sent and not answered yet
 * @param {number} [limits.most]
 * @returns {LedgerRecord[]}  the next to send, in order
 */
export function nextBatch(entries, find, { held = new Set(), underWay = [], most = Infinity } = {}) {
  const patients = new Set([...held, ...underWay.map(record => record.patient)]);
  const ahead = new Set(underWay.map(record => record.id));
  const refused = entries.filter(entry => entry.state === 'attention' || entry.carried?.stuck).map(entry => entry.id);
  const blocked = new Set(refused);
  /** @type {LedgerRecord[]} */
  const batch = [];
  let letters = 0;
  for (const entry of [...entries].sort((a, b) => a.sequence - b.sequence)) {
    const record = entry.state === 'waiting' && !entry.carried?.stuck ? find(entry.id) : undefined;
    if (!record || ahead.has(record.id)) continue;
    if (mentionsAny(record, blocked)) {
      blocked.add(record.id);
      continue;
    }
    if (patients.has(record.patient) || mentionsAny(record, ahead)) {
      patients.add(record.patient);
      ahead.add(record.id);
      continue;
    }
    letters += JSON.stringify(record).length;
    if (batch.length && (batch.length >= most || letters > MOST_LETTERS)) break;
    batch.push(record);
  }
  return batch;
}

/**
 * What becomes of each record of a batch, in its order. A record that the answer leaves out stays waiting, and so does one
 * that is refused only because something it mentions has not got through.
 *
 * @param {LedgerRecord[]} batch
 * @param {Answer[]} answers
 * @returns {Verdict[]}
 */
export function verdicts(batch, answers) {
  const byId = new Map(answers.map(answer => [answer.id, answer]));
  /** @type {Set<string>} */
  const notThrough = new Set();
  return batch.map(record => {
    const answer = byId.get(record.id) ?? null;
    const to = destination(answer, mentionsAny(record, notThrough));
    if (to !== 'sent') notThrough.add(record.id);
    return { id: record.id, made: record.recorded_at, to, answer };
  });
}

/**
 * A correction takes the place of a record that the clinic refused, under the same id: the clinic never had it, so nothing there
 * could be superseded, and what was made on it (the examinations of a new patient, say) still belongs to it.
 *
 * @param {LedgerRecord} record  just made, superseding `refused`
 * @param {LedgerRecord} refused
 * @returns {LedgerRecord}
 */
export function inPlaceOf(record, refused) {
  const others = [...refused.supersedes, ...record.supersedes].filter(id => id !== refused.id);
  return { ...record, id: refused.id, patient: refused.patient, supersedes: [...new Set(others)] };
}

/**
 * @param {LedgerRecord} record
 * @param {Set<string>} ids
 */
export function mentionsAny(record, ids) {
  if (!ids.size) return false;
  const { id, patient, supersedes, body } = record;
  return (patient !== id && ids.has(patient)) || speaksOf(supersedes, ids) || speaksOf(body, ids);
}

/**
 * @param {unknown} value
 * @param {Set<string>} ids
 * @returns {boolean}
 */
function speaksOf(value, ids) {
  if (typeof value === 'string') return ids.has(value);
  if (value === null || typeof value !== 'object') return false;
  return Object.values(value).some(each => speaksOf(each, ids));
}

/**
 * @param {Answer | null} answer
 * @param {boolean} behind
 * @returns {Verdict['to']}
 */
function destination(answer, behind) {
  switch (answer?.status) {
    case 'accepted':
    case 'duplicate':
      return 'sent';
    case 'rejected':
      return answer.retryable || behind ? 'waiting' : 'attention';
    default:
      return 'waiting';
  }
}
