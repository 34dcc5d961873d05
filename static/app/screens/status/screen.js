/** Where everything is: saved here, sent, in need of attention; what the browser promises; how the app is installed. */
import { useObservable } from '../../observable.js';
import { Frame } from '../../parts/frame/frame.js';
import { records, outbox } from '../../store/store.js';
import { syncNow, syncState } from '../../sync/sync.js';
import { back } from '../../shell/router.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { Attention } from './attention.js';
import { ByFile } from './by-file.js';
import { Installed } from './installed.js';
import { Protection } from './protection.js';
import { Sending } from './sending.js';
import { Waiting } from './waiting.js';

export default function Status() {
  const sync = useObservable(syncState);
  const all = useObservable(records);
  const entries = useObservable(outbox);
  const next = { label: sync.busy ? say('Talking with the clinic') : say('Send and fetch now'), act: syncNow };
  return html`<${Frame} title=${say('Where your work is')} back=${back} next=${next}>
    <div class="stack wide">
      <${Attention} records=${all} entries=${entries} />
      <${Sending} sync=${sync} total=${all.length} />
      <${Waiting} records=${all} entries=${entries} />
      <${ByFile} />
      <${Protection} />
      <${Installed} />
    </div>
  <//>`;
}
