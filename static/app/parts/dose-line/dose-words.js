/** What stands beside a dose, in words: the table's figure with its adjustment, and where the muscle comes to lie. */
import { mmWords } from '../../words/figures.js';

/**
 * "table 5.5 mm", "table 6.0 mm, less 0.5 mm".
 * @param {{table_mm: number, adjustment_mm?: number}} dose
 */
export function tableWords({ table_mm, adjustment_mm = 0 }) {
  const table = `table ${mmWords(table_mm)}`;
  if (adjustment_mm === 0) return table;
  return `${table}, ${adjustment_mm < 0 ? 'less' : 'plus'} ${mmWords(Math.abs(adjustment_mm))}`;
}

/**
 * "11.0 mm from the limbus (caliper 10.6 mm)".
 * @param {{limbus_mm: number, caliper_mm?: number | null}} dose
 */
export function limbusWords({ limbus_mm, caliper_mm = null }) {
  const limbus = `${mmWords(limbus_mm)} from the limbus`;
  return caliper_mm === null ? limbus : `${limbus} (caliper ${mmWords(caliper_mm)})`;
}
