/** A notebook of old cases: its file read and judged by the engine, then saved whole. */
import { ask } from '../../engine/engine.js';
import { faultsIn } from '../../planning/use-answer.js';
import { session } from '../../session/session.js';
import { heads } from '../../store/heads.js';
import { records, saveRecord } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {{row: number, column: string, code: string, text: string, value: string, allowed: string}} RowFault */
/** @typedef {{rows: number, already: number[], faults: RowFault[], notebook: any | null}} Reading */

const LARGEST = 1_000_000;
const LONGEST_TITLE = 120;

export function useNotebook() {
  const [read, setRead] = useState(/** @type {{name: string, reading: Reading} | null} */ (null));
  const [busy, setBusy] = useState('');
  const [told, setTold] = useState('');
  const [faults, setFaults] = useState(/** @type {any[]} */ ([]));

  /** @param {string} words @param {() => Promise<void>} work */
  const during = async (words, work) => {
    setBusy(words);
    setFaults([]);
    setTold('');
    try {
      await work();
    } catch (error) {
      setFaults(faultsIn(error));
    } finally {
      setBusy('');
    }
  };

  /** @param {File} file */
  const open = (file) =>
    during('Reading the rows.', async () => {
      setRead(null);
      if (file.size > LARGEST) throw { code: 'too_long', text: `The file has ${file.size} bytes; at most ${LARGEST} are read. Part it.` };
      const surgeon_name = session.get().user?.full_name ?? '';
      const held = heads(records.get(), 'notebook').map(({ body }) => body);
      const title = file.name.trim().slice(-LONGEST_TITLE) || 'notebook';
      setRead({ name: file.name, reading: await ask('read_notebook', { text: await file.text(), title, surgeon_name, held }) });
    });

  const carryOver = () =>
    during('Saving.', async () => {
      const notebook = read?.reading.notebook;
      await saveRecord('notebook', { supersedes: [], body: notebook });
      setRead(null);
      setTold(`${notebook.cases.length === 1 ? '1 case is' : `${notebook.cases.length} cases are`} carried over.`);
    });

  const template = async () => {
    try {
      const { text } = await ask('notebook_template', {});
      return new File([text], 'old-cases.csv', { type: 'text/csv' });
    } catch (error) {
      setFaults(faultsIn(error));
      return null;
    }
  };

  return { read, busy, told, faults, open, carryOver, template };
}
