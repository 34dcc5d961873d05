/** A file that was made here: save it or hand it on. */
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { html, useState } from '../../vendor/preact.js';
import { keep, sharing } from '../hand-over/saving.js';
import { sizeWords } from '../status/size-words.js';

/** @param {{file: File, holds: string, remarks: string[], back: string}} props */
export function FileReady({ file, holds, remarks, back }) {
  const [given, setGiven] = useState('');
  const save = () => {
    keep(file);
    setGiven(`Saved as ${file.name}, where this browser keeps its downloads.`);
  };
  const share = sharing(file);
  const shareIt = async () => {
    if (await share?.()) setGiven('Handed on.');
  };
  const next = share ? { label: 'Share the file', act: shareIt } : { label: 'Save the file', act: save };
  return html`<${Frame} title="The file is ready" back=${back} next=${next} also=${share ? { label: 'Save it', act: save } : undefined}>
    <div class="stack wide">
      <dl class="facts">
        <div class="fact"><dt>File</dt><dd class="exchange-name">${file.name}</dd></div>
        <div class="fact"><dt>Holds</dt><dd>${holds}, ${sizeWords(file.size)}, not sealed</dd></div>
      </dl>
      ${remarks.map((remark) => html`<${Notice} key=${remark} level="caution"><p>${remark}</p><//>`)}
      <${Notice} level="caution"><p>Whoever has this file can read who the patients are. Give it by a way that your clinic allows, and remove it where it is needed no more.</p><//>
      <p role="status">${given}</p>
    </div>
  <//>`;
}
