/** Making a FHIR file of what is on this device: under way, made, or why not. */
import { ask } from '../../engine/engine.js';
import { makeBundle } from '../../exchange/bundles.js';
import { cardQuestion } from '../../planning/kept-cards.js';
import { piecesOf } from '../../planning/standing.js';
import { faultsIn } from '../../planning/use-answer.js';
import { localTime } from '../../store/envelope.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { uuid7 } from '../../store/uuid7.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{file: File | null, remarks: string[]}} Made */

/** @returns {{made: Made, progress: string, faults: any[], make: (which: readonly LedgerRecord[], withCards: boolean) => Promise<void>}} */
export function useExport() {
  const [made, setMade] = useState(/** @type {Made} */ ({ file: null, remarks: [] }));
  const [progress, setProgress] = useState('');
  const [faults, setFaults] = useState(/** @type {any[]} */ ([]));

  /** @type {(which: readonly LedgerRecord[], withCards: boolean) => Promise<void>} */
  const make = async (which, withCards) => {
    if (progress) return;
    setFaults([]);
    setProgress('Starting.');
    /** @type {string[]} */
    const remarks = [];
    try {
      const now = new Date();
      const bundle = await makeBundle({
        records: which,
        export_id: uuid7(),
        exported_at: localTime(now),
        ask,
        cards: withCards ? (group) => pages(group, remarks) : async () => [],
        onProgress: (done, all) => setProgress(`${done + 1} of ${all}`),
      });
      const name = `records-${localTime(now).slice(0, 16).replace(/[T:]/g, '-')}.fhir.json`;
      setMade({ file: new File([JSON.stringify(bundle)], name, { type: 'application/fhir+json' }), remarks });
    } catch (error) {
      setFaults(faultsIn(error));
    } finally {
      setProgress('');
    }
  };
  return { made, progress, faults, make };
}

/**
 * The pages of the cards that stand; one that the engine refuses is said to be missing.
 * @param {LedgerRecord[]} group
 * @param {string[]} remarks
 */
async function pages(group, remarks) {
  const found = [];
  for (const signature of heads(group, 'signature')) {
    const pieces = piecesOf(records.get(), signature);
    if (!pieces) continue;
    try {
      const { pdf } = await ask('card_pdf', cardQuestion(records.get(), pieces));
      found.push({ signature_id: signature.id, pdf });
    } catch (error) {
      remarks.push(`The card with the check word ${signature.body.check_word} is not in the file: ${faultsIn(error)[0].text}`);
    }
  }
  return found;
}
