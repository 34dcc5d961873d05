/** Making the file: under way, made, or why not. */
import { makeHandOver } from '../../handover/giving.js';
import { session } from '../../session/session.js';
import { device, ledger } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../parts/fault-list/fault-list.js').FaultFacts} FaultFacts */

/**
 * @returns {{file: File | null, count: number, busy: boolean, faults: FaultFacts[],
 *   make: (choice: import('../../handover/contents.js').Choice | {record: string}, words: string[]) => Promise<void>}}
 */
export function useFile() {
  const [made, setMade] = useState(/** @type {{file: File | null, count: number}} */ ({ file: null, count: 0 }));
  const [busy, setBusy] = useState(false);
  const [faults, setFaults] = useState(/** @type {FaultFacts[]} */ ([]));

  /** @type {(choice: import('../../handover/contents.js').Choice | {record: string}, words: string[]) => Promise<void>} */
  const make = async (choice, words) => {
    const open = ledger.get();
    const { user, clinic } = session.get();
    if (busy || !open || !user || !clinic) return;
    setBusy(true);
    setFaults([]);
    try {
      const { id, name: device_name } = await device.identity();
      const from = { ...user, role: clinic.role, device: id, device_name };
      const { bytes, name, count } = await makeHandOver({ ledger: open, from, choice, passphrase: words.join(' ') });
      setMade({ file: new File([/** @type {BlobPart} */ (bytes)], name, { type: 'application/octet-stream' }), count });
    } catch (/** @type {any} */ fault) {
      setFaults([{ code: fault.code ?? 'not_made', text: fault.text ?? 'The file could not be made. Nothing was changed.' }]);
    } finally {
      setBusy(false);
    }
  };
  return { ...made, busy, faults, make };
}
