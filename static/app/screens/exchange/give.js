/** One patient's records, or all that this device has, as a FHIR file. It leaves the device in clear, so it is asked first. */
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { html, useState } from '../../vendor/preact.js';
import { FileReady } from './file-ready.js';
import { useExport } from './use-export.js';

/** @param {{which: readonly import('../../store/envelope.js').LedgerRecord[], patient?: any, what: string, withCards: boolean, back: string}} props */
export function Give({ which, patient, what, withCards, back }) {
  const [sure, setSure] = useState(false);
  const { made, progress, faults, make } = useExport();
  if (made.file) return html`<${FileReady} file=${made.file} remarks=${made.remarks} holds=${countWords(which.length)} back=${back} />`;

  const blocked = which.length === 0 ? 'There is nothing on this device to export yet.' : sure ? undefined : 'Confirm first that the file may leave this device.';
  const next = { label: progress ? `Making the file, ${progress}` : 'Make the file', act: () => make(which, withCards), blocked: progress ? undefined : blocked };
  return html`<${Frame} title="Export as FHIR" patient=${patient} back=${back} next=${next}>
    <div class="stack wide">
      <p>${what}: ${countWords(which.length)}, in the open format HL7 FHIR R4 that other systems read. It is made on this device, with or without a network.</p>
      <${FaultList} faults=${faults} title="No file was made." />
      <${Notice} level="caution">
        <p>The file names the patient${patient ? '' : 's'}, and it is not sealed. Once it has left this device, nobody can call it back.</p>
      <//>
      <label class="exchange-sure">
        <input type="checkbox" checked=${sure} onChange=${(/** @type {any} */ event) => setSure(event.currentTarget.checked)} />
        <span>I may give these records away, and I know who gets them</span>
      </label>
      <p class="small soft">${withCards ? 'Signed cards are in it as PDF pages. ' : 'Cards are in the export of a single patient; this one has none. '}Every record keeps its own id, so taking it in again makes nothing twice.</p>
      <p role="status" class="soft">${progress}</p>
    </div>
  <//>`;
}

/** @param {number} count */
const countWords = (count) => (count === 1 ? '1 record' : `${count} records`);
