/** Keeping a check that came to its end: once, whatever is touched meanwhile, and with its faults if it could not be kept. */
import { ask } from '../../engine/engine.js';
import { faultsIn } from '../../planning/use-answer.js';
import { localTime } from '../../store/envelope.js';
import { saveRecord } from '../../store/store.js';
import { useRef, useState } from '../../vendor/preact.js';

/** @param {string} signature its id */
export const draftOf = (signature) => `theatre-check/${signature}`;

/**
 * @param {object} props
 * @param {import('../../planning/kept-cards.js').Pieces} props.pieces
 * @param {import('../../store/envelope.js').LedgerRecord | null} props.after the passed check of the phase before
 * @param {(check: import('../../store/envelope.js').LedgerRecord) => void} props.onClosed
 */
export function useClosing({ pieces: { signature }, after, onClosed }) {
  const isClosing = useRef(false);
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  /** @param {object} round as the desk takes it */
  const close = async (round) => {
    if (isClosing.current) return;
    isClosing.current = true;
    setFaults([]);
    try {
      const closed_at = localTime(new Date());
      const body = await ask('close_check', { round, signature_id: signature.id, after: after?.id ?? null, closed_at });
      onClosed(await saveRecord('theatre_check', { patient: signature.patient, supersedes: [], body, draft: draftOf(signature.id) }));
    } catch (error) {
      setFaults(faultsIn(error));
    } finally {
      isClosing.current = false;
    }
  };
  return { close, faults };
}
