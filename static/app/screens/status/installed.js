/** Whether the app stands on the home screen, and how to put it there. */
import { html, useEffect, useState } from '../../vendor/preact.js';

export function Installed() {
  const installed = useInstalled();
  return html`<section class="stack tight" aria-labelledby="installed">
    <h2 id="installed">On the home screen</h2>
    ${installed
      ? html`<p>The app is installed on this device.</p>`
      : html`<p>
          Not installed; it runs in a browser tab. On the home screen it opens like any app and the browser keeps its data more surely. Use the browser’s menu,
          <em>Add to home screen</em> or <em>Install</em>.
        </p>`}
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
  return matchMedia('(display-mode: standalone)').matches || navigator.standalone === true;
}
