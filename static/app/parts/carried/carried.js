/** Says that some of what is shown was handed over by a file and is not with the clinic yet, and whose it is. */
import { useObservable } from '../../observable.js';
import { outbox } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { Notice } from '../notice/notice.js';
import { carriedWords } from './words.js';

/** @param {{records: readonly import('../../store/envelope.js').LedgerRecord[]}} props what is shown */
export function Carried({ records }) {
  const words = carriedWords(records, useObservable(outbox));
  return words ? html`<${Notice} level="caution"><p>${words}</p><//>` : null;
}
