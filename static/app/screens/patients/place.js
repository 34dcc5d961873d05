/** Keeps how far the list was scrolled, so that coming back to it finds the same rows; beside a detail its own row is in sight. */
import { useEffect, useRef } from '../../vendor/preact.js';

/** By what scrolls: the page, or the column beside a detail. */
const kept = { page: 0, column: 0 };

/** @returns {{current: HTMLElement | null}} to be put on the list */
export function useKeptPlace() {
  const list = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => {
    const column = list.current?.closest('.frame-beside');
    const key = column ? 'column' : 'page';
    const scroller = column ?? document.documentElement;
    scroller.scrollTop = kept[key];
    if (column) showCurrent(column);
    const keep = () => {
      kept[key] = scroller.scrollTop;
    };
    const source = column ?? window;
    source.addEventListener('scroll', keep, { passive: true });
    return () => source.removeEventListener('scroll', keep);
  }, []);
  return list;
}

/** Scrolls the column alone; `scrollIntoView` would move the page with it. @param {Element} column */
function showCurrent(column) {
  const row = column.querySelector('[aria-current]')?.getBoundingClientRect();
  const box = column.getBoundingClientRect();
  if (row && row.bottom > box.bottom) column.scrollTop += row.bottom - box.bottom;
  if (row && row.top < box.top) column.scrollTop -= box.top - row.top;
}
