/** An adjustment in the making, kept as a draft, and the record body that is made of it. Values in, values out. */

/** @typedef {{horizontal_pd: number | null, vertical_pd: number | null}} Figures */
/** @typedef {{way: 'loosen' | 'tighten' | null, mm: number | null, limbus_mm: number | null}} Moved */
/** @typedef {{adjusted_at: string | null, before: Record<string, Figures>, after: Record<string, Figures>, moved: Record<string, Moved>, note: string}} Adjusting */

export const RANGES = /** @type {const} */ (['distance', 'near']);

/** @type {Adjusting} */
export const NOTHING_SAID = { adjusted_at: null, before: {}, after: {}, moved: {}, note: '' };

/** @type {Moved} */
export const NOT_MOVED = { way: null, mm: null, limbus_mm: null };

/** What can be adjusted. @param {any} operation body @returns {any[]} */
export const adjustableOf = (operation) => operation.muscles.filter((/** @type {any} */ { adjustable, done }) => adjustable && done);

/** @param {{eye: string, muscle: string}} place */
export const keyOf = ({ eye, muscle }) => `${eye} ${muscle}`;

/** Whether any suture is said to have been moved. @param {Adjusting} adjusting */
export const isMoved = ({ moved }) => Object.values(moved).some(({ way }) => way !== null);

/**
 * What still keeps it from being asked about, or nothing.
 * @param {Adjusting} adjusting
 * @returns {string | undefined}
 */
export function lacking({ adjusted_at, before, moved }) {
  if (!adjusted_at) return 'When was it adjusted?';
  if (alignments(before).length === 0) return 'What was the deviation before?';
  if (Object.values(moved).some(({ way, mm }) => way !== null && mm === null)) return 'By how many millimetres was it moved?';
  return undefined;
}

/**
 * @param {Adjusting} adjusting
 * @param {{id: string, digest: string, body: any}} operation
 * @param {string} surgeon_name
 */
export const bodyOf = ({ adjusted_at, before, after, moved, note }, operation, surgeon_name) => ({
  schema: 1,
  operation_id: operation.id,
  operation_digest: operation.digest,
  adjusted_at,
  surgeon_name,
  before: alignments(before),
  moved: adjustableOf(operation.body)
    .map(({ eye, muscle }) => ({ eye, muscle, ...(moved[keyOf({ eye, muscle })] ?? NOT_MOVED) }))
    .filter(({ way }) => way !== null),
  after: alignments(after),
  note: note.trim(),
});

/** @param {Record<string, Figures>} figures */
const alignments = (figures) =>
  RANGES.filter((range) => figures[range] && (figures[range].horizontal_pd !== null || figures[range].vertical_pd !== null)).map((range) => ({ range, ...figures[range] }));
