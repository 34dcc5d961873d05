/** Theatre is dark by default, whatever the rest of the app is; light is one touch away and remembered on this device. */
import { applyTheme } from '../../shell/theme.js';
import { useLayoutEffect, useState } from '../../vendor/preact.js';

const KEY = 'theatre light';

/** @returns {[boolean, () => void]} whether the page is dark, and how to turn it */
export function useTheatreLight() {
  const [isDark, setDark] = useState(localStorage.getItem(KEY) !== 'light');
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = isDark ? 'dark' : 'light';
    return applyTheme;
  }, [isDark]);
  const turn = () => {
    localStorage.setItem(KEY, isDark ? 'light' : 'dark');
    setDark(!isDark);
  };
  return [isDark, turn];
}
