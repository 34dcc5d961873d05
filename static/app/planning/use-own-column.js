/** What the own results say of the options of a case, for the families that the surgeon switched on; null where none is. */
import { useAnswer } from './use-answer.js';
import { useOwnFamilies } from './use-own-families.js';
import { suggestionFor } from './own-doses.js';
import { isOn, switchesOf } from './own-families.js';
import { useObservable } from '../observable.js';
import { session } from '../session/session.js';
import { records } from '../store/store.js';

/** @typedef {{middle: number, low: number, high: number}} Expected what doses correct in these hands, with the interval of a single case */
/** @typedef {{option: string, family: string, promised_pd: number, does_pd: Expected | null, own_does_pd: Expected | null, doses: import('./own-doses.js').OwnDose[], statements: any[]}} Suggestion */
/** @typedef {{calibration: any, suggestion: Suggestion, operations: Map<string, import('../store/envelope.js').LedgerRecord>}} OwnOfOption */

/**
 * @param {any} ownCase the case as it is proposed for, or null while there is none
 * @returns {(option: string) => OwnOfOption | null} what is said of an option
 */
export function useOwnColumn(ownCase) {
  const surgeon = useObservable(session).user?.full_name ?? '';
  const switches = switchesOf(useObservable(records), surgeon).on;
  const wanted = switches.some(({ table }) => table === ownCase?.table);
  const { families, waiting } = useOwnFamilies(wanted);
  const mine = families.filter((own) => own.table === ownCase?.table && isOn(switches, own));
  const question = ownCase && wanted && waiting === 0 && mine.length > 0 ? { case: { ...ownCase, changes: [], combine: [] }, families: mine.map(({ family, cases }) => ({ family, cases })) } : null;
  const answer = /** @type {any} */ (useAnswer('suggest', question).answer);

  return (option) => {
    const suggestion = question && suggestionFor(/** @type {Suggestion[]} */ (answer?.suggestions ?? []), option);
    if (!suggestion) return null;
    const calibration = answer.calibrations.find((/** @type {any} */ { family }) => family === suggestion.family);
    return { calibration, suggestion, operations: mine.find(({ family }) => family === suggestion.family)?.done ?? new Map() };
  };
}
