/** The card as a PDF, made on this device with or without a network: open, keep, share or print it. */
import { ask } from '../../engine/engine.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { cardKeys } from '../../planning/card-keys.js';
import { cardQuestion } from '../../planning/kept-cards.js';
import { faultsIn } from '../../planning/use-answer.js';
import { records } from '../../store/store.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { pdfFile } from './pdf-file.js';

/** @param {{pieces: import('../../planning/kept-cards.js').Pieces, checkWord: string, onClose: () => void}} props */
export function CardPdf({ pieces, checkWord, onClose }) {
  const [file, setFile] = useState(/** @type {File | null} */ (null));
  const [url, setUrl] = useState('');
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  useEffect(() => {
    let isWanted = true;
    const [key] = cardKeys();
    ask('card_pdf', { ...cardQuestion(records.get(), pieces), ...(key && { card_key: key }) }).then(
      ({ pdf }) => isWanted && setFile(pdfFile(pdf, checkWord)),
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

  return html`<${Sheet} open=${true} title="Card as PDF" onClose=${onClose}>
    <div class="card-pdf stack">
      <${FaultList} faults=${faults} title="No PDF was made." />
      ${url
        ? html`<p>Made on this device, with the same content as on the server.</p>
            <a class="button main" href=${url} target="_blank" rel="noopener">Open or print</a>
            <a class="button" href=${url} download=${file?.name}>Keep a copy</a>
            ${share && html`<button type="button" class="button" onClick=${share}>Share</button>`}`
        : faults.length === 0 && html`<p role="status">Drawing the page. The first one takes a few seconds.</p>`}
      <button type="button" class="button" onClick=${() => print()}>Print this screen instead</button>
    </div>
  <//>`;
}
