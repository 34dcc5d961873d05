/** Whether there is room for a list beside a detail; follows the window as it is turned or enlarged. */
import { useEffect, useState } from '../../vendor/preact.js';

const ROOMY = '(min-width: 60rem)';

/** @returns {boolean} */
export function useRoomForTwo() {
  const [roomy, setRoomy] = useState(() => matchMedia(ROOMY).matches);
  useEffect(() => {
    const query = matchMedia(ROOMY);
    const follow = () => setRoomy(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return roomy;
}
