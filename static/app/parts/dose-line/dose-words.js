/** What stands beside a dose, in words: the table's figure with its adjustment, and where the muscle comes to lie. */
import { mmWords } from '../../words/figures.js';

/**
 * "table 5.5 mm", "table 6.0 mm, less 0.5 mm"; empty where the operation has no figure.
 * @param {{table_mm: number | null, adjustment_mm?: number}} dose
 */
export function tableWords({ table_mm, adjustment_mm = 0 }) {
  if (table_mm === null) return '';
  const table = `table ${mmWords(table_mm)}`;
  if (adjustment_mm === 0) return table;
  return `${table}, ${adjustment_mm < 0 ? 'less' : 'plus'} ${mmWords(Math.abs(adjustment_mm))}`;
}

/**
 * "11.0 mm from the limbus (caliper 10.6 mm)"; in the engine's words where no figure says it.
 * @param {{limbus_mm: number | null, caliper_mm?: number | null, attachment_words?: string}} dose
 */
export function limbusWords({ limbus_mm, caliper_mm = null, attachment_words = '' }) {
  if (limbus_mm === null) return attachment_words;
  const limbus = `${mmWords(limbus_mm)} from the limbus${caliper_mm === null ? '' : ` (caliper ${mmWords(caliper_mm)})`}`;
  return attachment_words ? `${limbus}, ${attachment_words}` : limbus;
}

/**
 * "tendon moved up by half a tendon width (5.0 mm)", or empty.
 * @param {{offset?: import('../../words/anatomy.js').Offset | null}} dose
 */
export function offsetWords({ offset = null }) {
  if (!offset) return '';
  return `tendon moved ${offset.direction} by ${offset.width === 'half tendon' ? 'half a' : 'a full'} tendon width (${mmWords(offset.mm)})`;
}

/**
 * "table 6.0 mm, less 0.5 mm: 5.5 mm"; empty where nothing was adjusted or the surgeon's own figure stands.
 * @param {{mm: number | null, table_mm: number | null, adjustment_mm?: number, changed?: boolean}} dose
 */
export function adjustedWords({ mm, table_mm, adjustment_mm = 0, changed = false }) {
  if (mm === null || adjustment_mm === 0 || changed) return '';
  return `${tableWords({ table_mm, adjustment_mm })}: ${mmWords(mm)}`;
}

/**
 * "adjustable suture possible, 2.0 mm left for later"; empty where nothing is known.
 * @param {{adjustable?: boolean, room_mm?: number | null}} dose
 */
export const roomWords = ({ adjustable = false, room_mm = null }) =>
  [...(adjustable ? ['adjustable suture possible'] : []), ...(room_mm === null ? [] : [`${mmWords(room_mm)} left for later`])].join(', ');
