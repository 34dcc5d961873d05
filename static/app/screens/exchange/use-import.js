/** Taking records from a FHIR file: read, shown first, saved one after another, and taken back again if that was wrong. */
import { ask } from '../../engine/engine.js';
import { dryRun } from '../../exchange/bundles.js';
import { mayTakeBack, WRITERS } from '../../planning/rights.js';
import { faultsIn } from '../../planning/use-answer.js';
import { session } from '../../session/session.js';
import { records, saveRecord } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../exchange/bundles.js').Row} Row */
/** @typedef {import('../../exchange/bundles.js').Brought} Brought */
/** @typedef {{name: string, rows: Row[], records: Brought[]}} Read */

const LARGEST = 30_000_000;

export function useImport() {
  const [read, setRead] = useState(/** @type {Read | null} */ (null));
  const [saved, setSaved] = useState(/** @type {Brought[]} */ ([]));
  const [stage, setStage] = useState(/** @type {'choose' | 'shown' | 'saved' | 'undone'} */ ('choose'));
  const [progress, setProgress] = useState('');
  const [faults, setFaults] = useState(/** @type {any[]} */ ([]));

  /** @param {string} first @param {() => Promise<void>} work */
  const during = async (first, work) => {
    if (progress) return;
    setProgress(first);
    setFaults([]);
    try {
      await work();
    } catch (error) {
      setFaults(faultsIn(error));
    } finally {
      setProgress('');
    }
  };

  /** @param {File} file */
  const open = (file) =>
    during('Reading the file.', async () => {
      setRead(null);
      setStage('choose');
      if (file.size > LARGEST) throw tooLarge(file.size);
      const { user, clinic } = session.get();
      const role = clinic?.role ?? '';
      const bringer = { clinic: clinic?.id ?? '', full_name: user?.full_name ?? '', may: Object.keys(WRITERS).filter((kind) => WRITERS[kind].includes(role)) };
      const onProgress = (/** @type {number} */ done, /** @type {number} */ all) => setProgress(`Reading, ${done + 1} of ${all}`);
      const found = await dryRun({ bundle: parsed(await file.text()), bringer, records: records.get(), ask, onProgress });
      setRead({ name: file.name, ...found });
      setStage('shown');
    });

  const take = () =>
    during('Saving.', async () => {
      const all = read?.records ?? [];
      const here = new Set(records.get().map(({ id }) => id));
      const done = [...saved];
      for (const record of all.filter(({ id }) => !here.has(id))) {
        const { id, kind, patient, supersedes, body } = record;
        await saveRecord(kind, { id, patient, supersedes, body });
        done.push(record);
        setSaved([...done]);
        setProgress(`Saving, ${done.length} of ${all.length}`);
      }
      setStage('saved');
    });

  const undo = () =>
    during('Taking back.', async () => {
      const role = session.get().clinic?.role;
      const gone = new Set(records.get().filter(({ kind }) => kind === 'retraction').map(({ body }) => body.record_id));
      const left = saved.filter(({ id, kind }) => !gone.has(id) && isTakenBack(role, kind)).reverse();
      for (const [done, { id, patient }] of left.entries()) {
        await saveRecord('retraction', { patient, body: { schema: 1, record_id: id, reason: `Import of ${read?.name} undone`.slice(0, 400) } });
        setProgress(`Taking back, ${done + 1} of ${left.length}`);
      }
      setStage('undone');
    });

  return { read, saved, stage, progress, faults, open, take, undo };
}

/** A retraction stays, and so does a check in theatre. @param {string | undefined} role @param {string} kind */
const isTakenBack = (role, kind) => kind !== 'retraction' && kind !== 'theatre_check' && mayTakeBack(role, kind);

/** @param {string} text */
function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** @param {number} size */
const tooLarge = (size) => ({ code: 'too_long', text: `The file has ${size} bytes; at most ${LARGEST} are read at once. Export fewer patients at a time.` });
