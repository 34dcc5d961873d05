/** The way to what the surgeon's own results say of the tables. */
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';

export function OwnResultsLink() {
  if (!useRights().write('own_results')) return null;
  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="own-results">
    <h2 id="own-results">Your own results</h2>
    <p class="soft">What your operations did against what the table promised. Nothing of it is shown with the options until you switch it on.</p>
    <div class="buttons"><a class="button" href="#/own-results">Own results</a></div>
  </section>`;
}
