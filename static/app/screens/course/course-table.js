/** The same figures as the pictures show, as a table. */
import { html } from '../../vendor/preact.js';
import { columnsOf, rowsOf } from './lines.js';

/** @param {{course: import('./lines.js').Course}} props */
export function CourseTable({ course }) {
  return html`<div class="course-frame" role="region" aria-label="Figures of the course" tabindex="0">
    <table class="course-table">
      <caption class="unseen">Alignment before and after the operation</caption>
      <thead><tr><th scope="col">When</th>${columnsOf(course).map(({ title }) => html`<th scope="col" key=${title}>${title}</th>`)}</tr></thead>
      <tbody>
        ${rowsOf(course).map(
          ({ at, day, cells }) => html`<tr key=${`${at} ${day}`}>
            <th scope="row">${at}${day && html`<span class="course-aside">${day}</span>`}</th>
            ${cells.map((cell, index) => html`<td key=${index}><strong>${cell.words}</strong>${cell.aside && html`<span class="course-aside">${cell.aside}</span>`}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
