/** The way to files for other systems, and to old cases. */
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';

export function ExchangeLink() {
  if (!useRights().write('examination')) return null;
  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="exchange-link">
    <h2 id="exchange-link">Exchange</h2>
    <p class="soft">Records to and from other systems, and old cases from a notebook.</p>
    <div class="buttons"><a class="button" href="#/exchange">Exchange</a></div>
  </section>`;
}
