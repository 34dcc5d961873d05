/** Who is to be seen, from what the engine says of every operation. Values in, values out. */

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{name: string, from_on: string, to_on: string, state: string, days_over: number, words: string}} Visit */
/** @typedef {{overdue: string[], due: string[], operations: {id: string, next: Visit | null, visits: Visit[]}[], statements: any[]}} Attendance */
/** @typedef {{id: string, visit: string | null, seen_on: string | null, warnings: any[], notices: any[]}} Watched */
/** @typedef {import('../../planning/following.js').Followed} Followed */
/** @typedef {{followed: Followed, patient: LedgerRecord, next: Visit | null, watched: Watched | undefined}} Row */
/** @typedef {{urgent: Row[], overdue: Row[], due: Row[], coming: Row[]}} Rows */

/**
 * Whom a warning stands for comes before all others and once only; then by the engine's own order, those to come by their day.
 * @param {object} from
 * @param {Followed[]} from.followed
 * @param {(patient: string) => LedgerRecord | undefined} from.patientOf
 * @param {Attendance} from.attendance
 * @param {Watched[]} from.watched
 * @returns {Rows}
 */
export function rowsOf({ followed, patientOf, attendance, watched }) {
  const byId = new Map(followed.map((each) => [each.operation.id, each]));
  const told = new Map(watched.map((each) => [each.id, each]));
  const next = new Map(attendance.operations.map((each) => [each.id, each.next]));
  /** @param {string} id @returns {Row[]} */
  const row = (id) => {
    const one = byId.get(id);
    const patient = one && patientOf(one.operation.patient);
    return one && patient ? [{ followed: one, patient, next: next.get(id) ?? null, watched: told.get(id) }] : [];
  };
  const urgent = watched.filter(({ warnings }) => warnings.length > 0).map(({ id }) => id);
  const isUrgent = new Set(urgent);
  const others = (/** @type {string[]} */ ids) => ids.filter((id) => !isUrgent.has(id)).flatMap(row);
  const ahead = attendance.operations.filter((each) => each.next?.state === 'ahead').sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : 1));
  return { urgent: urgent.flatMap(row), overdue: others(attendance.overdue), due: others(attendance.due), coming: others(ahead.map(({ id }) => id)) };
}

/** @param {{id: string, next: Visit | null}} operation */
const dayOf = ({ id, next }) => `${next?.from_on} ${id}`;
