/** A file of the operations without identifiers: what it protects against first, then the file. */
import { exportQuestion } from '../../auditing/exporting.js';
import { drawShifts } from '../../auditing/shifts.js';
import { ask } from '../../engine/engine.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Notices } from '../../parts/notice/notice.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { faultsIn } from '../../planning/use-answer.js';
import { html, useEffect, useState } from '../../vendor/preact.js';

/** @typedef {{csv: string, rows: number, left_out: number, notices: any[]}} Exported */

/** @param {{counted: import('../../auditing/use-results.js').Counted[], onClose: () => void}} props */
export function ExportSheet({ counted, onClose }) {
  const [made, setMade] = useState(/** @type {Exported | null} */ (null));
  const [url, setUrl] = useState('');
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  useEffect(() => {
    let isWanted = true;
    ask('audit_export', exportQuestion(counted, drawShifts)).then(
      (exported) => isWanted && setMade(exported),
      (error) => isWanted && setFaults(faultsIn(error)),
    );
    return () => {
      isWanted = false;
    };
  }, []);

  useEffect(() => {
    if (!made) return undefined;
    const address = URL.createObjectURL(new Blob([made.csv], { type: 'text/csv' }));
    setUrl(address);
    return () => URL.revokeObjectURL(address);
  }, [made]);

  return html`<${Sheet} open=${true} title="CSV without names" onClose=${onClose}>
    <div class="stack">
      <${FaultList} faults=${faults} title="No file was made." />
      ${!made && faults.length === 0 && html`<p role="status">Making the file on this device.</p>`}
      ${made &&
      html`<p>${made.rows} row${made.rows === 1 ? '' : 's'}, made on this device; ${made.left_out} left out.</p>
        <${Notices} notices=${made.notices} />
        ${url && html`<a class="button main" href=${url} download="results.csv">Keep the file</a>`}`}
    </div>
  <//>`;
}
