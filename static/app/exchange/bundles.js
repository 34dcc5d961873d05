/**
 * Records to one FHIR Bundle, and a Bundle to what would be taken: patient by patient, for the desk reads no more at once.
 * What maps to what is the engine's business. Pure but for `ask`.
 */

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {(name: string, payload: object) => Promise<any>} Ask */
/** @typedef {(done: number, all: number) => void} Progress */
/** @typedef {{place: number, resource: string, fate: string, record_id: string, code: string, text: string, field: string, value: string, allowed: string}} Row */
/** @typedef {{id: string, kind: string, patient: string, supersedes: string[], digest: string, body: any}} Brought */

const RECORD = '/StructureDefinition/ledger-record';
const UUID = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {LedgerRecord[][]} by patient, or by the clinic's own thing; each after what it refers to
 */
export function byPatient(records) {
  /** @type {Map<string, LedgerRecord[]>} */
  const found = new Map();
  for (const record of [...records].sort(inLedgerOrder)) found.set(record.patient, [...(found.get(record.patient) ?? []), record]);
  return [...found.values()];
}

/** @param {LedgerRecord} one @param {LedgerRecord} other */
function inLedgerOrder(one, other) {
  const apart = (one.position ?? Infinity) - (other.position ?? Infinity);
  return apart || (one.id < other.id ? -1 : 1);
}

/** What the desk is told of a record: nothing of the feed. @param {LedgerRecord} record */
const plain = ({ id, kind, clinic, patient, author, device, recorded_at, supersedes, body, digest }) => ({ id, kind, clinic, patient, author, device, recorded_at, supersedes, body, digest });

/**
 * @param {object} of
 * @param {readonly LedgerRecord[]} of.records
 * @param {string} of.export_id
 * @param {string} of.exported_at
 * @param {Ask} of.ask
 * @param {(records: LedgerRecord[]) => Promise<{signature_id: string, pdf: string}[]>} of.cards the pages of one patient's cards
 * @param {Progress} of.onProgress
 * @returns {Promise<any>} the Bundle
 */
export async function makeBundle({ records, export_id, exported_at, ask, cards, onProgress }) {
  const groups = byPatient(records);
  /** @type {any} */
  let whole = null;
  const seen = new Set();
  for (const [done, group] of groups.entries()) {
    onProgress(done, groups.length);
    const part = await ask('fhir_export', { records: group.map(plain), cards: await cards(group), export_id, exported_at });
    const fresh = part.entry.filter((/** @type {any} */ { fullUrl }) => !seen.has(fullUrl) && seen.add(fullUrl));
    whole = whole ? { ...whole, entry: [...whole.entry, ...fresh] } : { ...part, entry: fresh };
  }
  return whole;
}

/**
 * @param {object} of
 * @param {any} of.bundle
 * @param {{clinic: string, full_name: string, may: string[]}} of.bringer
 * @param {readonly LedgerRecord[]} of.records what is here
 * @param {Ask} of.ask
 * @param {Progress} of.onProgress
 * @returns {Promise<{rows: Row[], records: Brought[]}>}
 */
export async function dryRun({ bundle, bringer, records, ask, onProgress }) {
  const groups = groupsOf(bundle);
  /** @type {Row[]} */
  const rows = [];
  /** @type {Brought[]} */
  const taken = [];
  for (const [done, entry] of groups.entries()) {
    onProgress(done, groups.length);
    const named = new Set(JSON.stringify(entry).match(UUID) ?? []);
    const here = [...records, ...taken].filter(({ id }) => named.has(id)).map(({ id, digest }) => ({ id, digest }));
    const part = await ask('fhir_import', { bundle: { resourceType: bundle?.resourceType, entry }, bringer: { ...bringer, held: here } });
    const before = rows.length;
    rows.push(...part.rows.map((/** @type {Row} */ row) => ({ ...row, place: row.place + before })));
    taken.push(...part.records);
  }
  return { rows, records: taken };
}

/** The entries, parted where the next patient's first record stands. @param {any} bundle @returns {any[]} */
function groupsOf(bundle) {
  const entries = bundle?.entry;
  if (!Array.isArray(entries)) return [entries ?? []];
  /** @type {any[][]} */
  const groups = [[]];
  let current = '';
  for (const entry of entries) {
    const patient = carriedPatient(entry?.resource);
    if (patient && current && patient !== current) groups.push([]);
    current = patient || current;
    groups[groups.length - 1].push(entry);
  }
  return groups;
}

/** @param {any} resource */
function carriedPatient(resource) {
  const extensions = Array.isArray(resource?.extension) ? resource.extension : [];
  const record = extensions.find((/** @type {any} */ each) => typeof each?.url === 'string' && each.url.endsWith(RECORD));
  const parts = Array.isArray(record?.extension) ? record.extension : [];
  return parts.find((/** @type {any} */ each) => each?.url === 'patient')?.valueString ?? '';
}

/** @param {Row[]} rows @returns {{fate: string, count: number}[]} */
export function counted(rows) {
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const { fate } of rows) counts.set(fate, (counts.get(fate) ?? 0) + 1);
  return [...counts].map(([fate, count]) => ({ fate, count }));
}
