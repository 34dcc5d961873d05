/** What can be handed over, with its size. Pure. */
import { toGive } from '../../handover/contents.js';

/**
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} records
 * @param {readonly import('../../store/outbox.js').Entry[]} entries
 * @returns {{value: import('../../handover/contents.js').Choice, words: string, hint: string, count: number}[]}
 */
export function choicesOf(records, entries) {
  const unsent = toGive(records, entries, 'unsent').length;
  return [
    {
      value: 'unsent',
      words: 'What the clinic has not got yet',
      hint: unsent ? `${entries.length} unsent; ${counted(unsent)} with what belongs to their patients` : 'nothing waits here',
      count: unsent,
    },
    { value: 'all', words: 'Everything on this device', hint: counted(records.length), count: records.length },
  ];
}

/** @param {number} count */
export function counted(count) {
  return count === 1 ? '1 record' : `${count} records`;
}
