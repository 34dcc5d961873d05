/** The time, for parts that show an age: a component using it is drawn again every half minute. */
import { useEffect, useState } from '../../vendor/preact.js';

const STEP_MS = 30_000;

/** @returns {number} milliseconds since the epoch */
export function useNow() {
  const [now, setNow] = useState(Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), STEP_MS);
    return () => clearInterval(timer);
  }, []);
  return now;
}
