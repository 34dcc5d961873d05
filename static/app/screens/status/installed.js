/** Whether the app opens without a network, and whether it stands on the home screen. */
import { useObservable } from '../../observable.js';
import { updateState } from '../../shell/update.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { marked, said, say } from '../../words/say.js';

const OFFLINE_WORDS = {
  unknown: marked('Not known yet whether the app opens without a network.'),
  fetching: marked('Still fetching what the app needs without a network. Stay connected for a moment.'),
  ready: marked('The app opens and calculates without a network.'),
  incomplete: marked('Not everything that is needed without a network has arrived. It is tried again by itself while there is one.'),
  impossible: marked('This browser cannot open the app without a network. Use another browser for outreach.'),
};

export function Installed() {
  const installed = useInstalled();
  const { offline } = useObservable(updateState);
  return html`<section class="stack tight" aria-labelledby="installed">
    <h2 id="installed">${say('Without a network')}</h2>
    <p role="status">${said(OFFLINE_WORDS[offline])}</p>
    ${installed
      ? html`<p>${say('It is installed on this device.')}</p>`
      : html`<p>${say('It is not installed; it runs in a browser tab. On the home screen the browser keeps its data more surely: use the browser’s menu, “Add to home screen” or “Install”.')}</p>`}
  </section>`;
}

function useInstalled() {
  const [installed, setInstalled] = useState(isInstalled);
  useEffect(() => {
    const query = matchMedia('(display-mode: standalone)');
    const look = () => setInstalled(isInstalled());
    query.addEventListener('change', look);
    return () => query.removeEventListener('change', look);
  }, []);
  return installed;
}

/** Safari on iOS tells it on the navigator alone. */
function isInstalled() {
  return matchMedia('(display-mode: standalone)').matches || /** @type {any} */ (navigator).standalone === true;
}
