/** One day's list, or a new one. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { today } from '../../parts/calendar/date.js';
import { listOf } from '../../preparing/lists.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { ListScreen } from './list-screen.js';

/** @returns {import('../../preparing/lists.js').OperatingList} */
const blank = () => ({ schema: 1, on: today(), team: '', place: '', starts_at: '08:00', entries: [] });

/** @param {{list?: string}} props the id of the list's first version; absent for a new one */
export default function ListRoute({ list: id }) {
  const all = useObservable(records);
  if (!id) return html`<${ListScreen} key="new" name="new" versions=${[]} blank=${blank()} />`;
  const found = listOf(all, id);
  if (!found) return html`<${Absent} what="This list" step=${{ label: 'To the lists', to: '/lists' }} />`;
  return html`<${ListScreen} key=${id} name=${id} versions=${found.versions} blank=${blank()} />`;
}
