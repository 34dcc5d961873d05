/** Both eyes in one of the two views; which one is remembered on this device and always written above the picture. */
import { Choice } from '../../parts/choice/choice.js';
import { Picture } from '../../parts/picture/picture.js';
import { html, useState } from '../../vendor/preact.js';

const KEY = 'theatre view';

/** @param {{pictures: import('../../parts/picture/picture.js').PictureFacts[]}} props */
export function CardPictures({ pictures }) {
  const [view, setView] = useState(localStorage.getItem(KEY) ?? '');
  const [first] = pictures;
  if (!first) return null;
  const shown = pictures.find((picture) => picture.view === view) ?? first;
  /** @param {string} chosen */
  const turn = (chosen) => {
    localStorage.setItem(KEY, chosen);
    setView(chosen);
  };
  return html`<figure class="card-picture">
    <figcaption class="card-picture-title">${shown.title}</figcaption>
    <${Picture} picture=${shown} />
    <div class="card-picture-views">
      <${Choice}
        legend="How the picture is seen"
        quiet
        name="card-view"
        options=${pictures.map(({ view: value, title }) => ({ value, words: title }))}
        value=${shown.view}
        onChange=${turn}
      />
    </div>
  </figure>`;
}
