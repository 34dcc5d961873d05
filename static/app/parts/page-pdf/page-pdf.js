/** A page that the engine draws on this device, with or without a network: open, keep, share or print it. */
import { ask } from '../../engine/engine.js';
import { faultsIn } from '../../planning/use-answer.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { FaultList } from '../fault-list/fault-list.js';
import { Sheet } from '../sheet/sheet.js';

/** @param {{ask: string, payload: object, title: string, name: string, onClose: () => void}} props `name` of the file says nothing of a patient */
export function PagePdf({ ask: question, payload, title, name, onClose }) {
  const [file, setFile] = useState(/** @type {File | null} */ (null));
  const [url, setUrl] = useState('');
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  useEffect(() => {
    let isWanted = true;
    ask(question, payload).then(
      ({ pdf }) => isWanted && setFile(fileOf(pdf, name)),
      (error) => isWanted && setFaults(faultsIn(error)),
    );
    return () => {
      isWanted = false;
    };
  }, []);

  useEffect(() => {
    if (!file) return undefined;
    const made = URL.createObjectURL(file);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);

  const share = file && navigator.canShare?.({ files: [file] }) ? () => navigator.share({ files: [file] }).catch(() => {}) : null;

  return html`<${Sheet} open=${true} title=${title} onClose=${onClose}>
    <div class="page-pdf stack">
      <${FaultList} faults=${faults} title="No page was drawn." />
      ${url
        ? html`<p>Drawn on this device.</p>
            <a class="button main" href=${url} target="_blank" rel="noopener">Open or print</a>
            <a class="button" href=${url} download=${file?.name}>Keep a copy</a>
            ${share && html`<button type="button" class="button" onClick=${share}>Share</button>`}`
        : faults.length === 0 && html`<p role="status">Drawing the page. The first one takes a few seconds.</p>`}
    </div>
  <//>`;
}

/**
 * @param {string} base64
 * @param {string} name
 */
function fileOf(base64, name) {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return new File([bytes], `${name}.pdf`, { type: 'application/pdf' });
}
