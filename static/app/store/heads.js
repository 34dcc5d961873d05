/**
 * What is current, of an append-only ledger. Pure: records in, records out; the index is kept for as long as the same
 * array is asked about.
 *
 *     find(records, id)                     the record or undefined
 *     heads(records, kind, patient?)        current versions: not superseded, not retracted; newest first
 *     things(records, kind, patient?)       the same by thing: [{heads, conflict}]; two heads of one thing are a conflict
 *     history(records, id)                  every version of that thing, each after those that it supersedes
 *     retractionOf(records, id)             the retraction that takes a record back, or null
 *
 * A retracted version is not current, and what it superseded does not come back by itself: an older figure must not
 * return without a person having said so.
 */

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{heads: LedgerRecord[], conflict: boolean}} Thing */

/**
 * @typedef {object} Index
 * @property {Map<string, LedgerRecord>} byId
 * @property {Map<string, string[]>} supersededBy
 * @property {Map<string, LedgerRecord>} retractions  by the id that is taken back
 * @property {Map<string, Kind>} byKind
 */
/** @typedef {{all: LedgerRecord[], of: Map<string, LedgerRecord[]>}} Kind  `of`: by patient */

/** @type {WeakMap<readonly LedgerRecord[], Index>} */
const indexes = new WeakMap();

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} id
 */
export function find(records, id) {
  return indexOf(records).byId.get(id);
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} kind
 * @param {string} [patient]
 * @returns {LedgerRecord[]}
 */
export function heads(records, kind, patient) {
  const { byKind, supersededBy, retractions } = indexOf(records);
  const found = byKind.get(kind);
  return ((patient ? found?.of.get(patient) : found?.all) ?? [])
    .filter(record => !supersededBy.has(record.id) && !retractions.has(record.id))
    .sort((a, b) => (a.id < b.id ? 1 : -1));
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} kind
 * @param {string} [patient]
 * @returns {Thing[]}
 */
export function things(records, kind, patient) {
  const current = heads(records, kind, patient);
  const isCurrent = new Set(current);
  /** @type {Set<LedgerRecord>} */
  const placed = new Set();
  /** @type {Thing[]} */
  const found = [];
  for (const head of current) {
    if (placed.has(head)) continue;
    const together = history(records, head.id).filter(record => isCurrent.has(record)).reverse();
    together.forEach(record => placed.add(record));
    found.push({ heads: together, conflict: together.length > 1 });
  }
  return found;
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} id
 * @returns {LedgerRecord[]}
 */
export function history(records, id) {
  const { byId, supersededBy } = indexOf(records);
  /** @type {Map<string, LedgerRecord>} */
  const family = new Map();
  const toVisit = [id];
  while (toVisit.length) {
    const record = byId.get(/** @type {string} */ (toVisit.pop()));
    if (!record || family.has(record.id)) continue;
    family.set(record.id, record);
    toVisit.push(...record.supersedes, ...(supersededBy.get(record.id) ?? []));
  }
  return inOrder(family);
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} id
 * @returns {LedgerRecord | null}
 */
export function retractionOf(records, id) {
  return indexOf(records).retractions.get(id) ?? null;
}

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {Index}
 */
function indexOf(records) {
  const kept = indexes.get(records);
  if (kept) return kept;
  /** @type {Index} */
  const index = { byId: new Map(), supersededBy: new Map(), retractions: new Map(), byKind: new Map() };
  for (const record of records) {
    index.byId.set(record.id, record);
    const { all, of } = kindOf(index, record.kind);
    all.push(record);
    append(of, record.patient, record);
    for (const older of record.supersedes) append(index.supersededBy, older, record.id);
  }
  index.retractions = effective(index.byKind.get('retraction')?.all ?? [], index.supersededBy);
  indexes.set(records, index);
  return index;
}

/**
 * @param {Index} index
 * @param {string} name
 * @returns {Kind}  a new one where there was none
 */
function kindOf({ byKind }, name) {
  const known = byKind.get(name) ?? { all: [], of: new Map() };
  byKind.set(name, known);
  return known;
}

/**
 * Retractions in force. One that was itself retracted or superseded is not.
 *
 * @param {LedgerRecord[]} all
 * @param {Map<string, string[]>} supersededBy
 */
function effective(all, supersededBy) {
  /** @type {Map<string, LedgerRecord[]>} */
  const by = new Map();
  for (const retraction of all) append(by, retraction.body.record_id, retraction);
  /** @type {(retraction: LedgerRecord, seen: Set<string>) => boolean} */
  const stands = (retraction, seen) =>
    !supersededBy.has(retraction.id) &&
    !(by.get(retraction.id) ?? []).some(later => !seen.has(later.id) && stands(later, new Set([...seen, later.id])));
  /** @type {Map<string, LedgerRecord>} */
  const inForce = new Map();
  for (const [id, retractions] of by) {
    const standing = retractions.find(retraction => stands(retraction, new Set([retraction.id])));
    if (standing) inForce.set(id, standing);
  }
  return inForce;
}

/**
 * @param {Map<string, LedgerRecord>} family
 * @returns {LedgerRecord[]}  each after those it supersedes; among equals by id, which two devices agree on
 */
function inOrder(family) {
  /** @type {LedgerRecord[]} */
  const ordered = [];
  const waiting = [...family.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  /** @type {Set<string>} */
  const done = new Set();
  while (waiting.length) {
    const ready = waiting.findIndex(record => record.supersedes.every(id => done.has(id) || !family.has(id)));
    const [next] = waiting.splice(Math.max(ready, 0), 1);
    done.add(next.id);
    ordered.push(next);
  }
  return ordered;
}

/**
 * @template V
 * @param {Map<string, V[]>} map
 * @param {string} key
 * @param {V} value
 */
function append(map, key, value) {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
