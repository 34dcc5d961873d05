/** The list as the clinic has it. It is asked for each time: what is kept of it would be out of date just when it matters. */
import { server } from '../../session/session.js';
import { syncNow } from '../../sync/sync.js';
import { useEffect, useState } from '../../vendor/preact.js';

/**
 * @typedef {object} OwnDevice
 * @property {string} id
 * @property {string} name
 * @property {string} registered_at
 * @property {string} last_seen_at
 * @property {string | null} revoked_at
 * @property {string | null} closed_at
 * @property {boolean} this
 */

export function useDevices() {
  const [devices, setDevices] = useState(/** @type {OwnDevice[] | null} */ (null));
  const [fault, setFault] = useState(/** @type {import('../../fault.js').Fault | null} */ (null));
  const [busy, setBusy] = useState(false);

  /** @param {'GET' | 'DELETE'} method @param {string} path */
  const ask = async (method, path) => {
    setBusy(true);
    try {
      setDevices((await server.call(method, path)).devices);
      setFault(null);
    } catch (/** @type {any} */ error) {
      setFault(error);
    } finally {
      setBusy(false);
    }
  };
  const load = () => ask('GET', '/api/v1/devices');

  useEffect(() => {
    load();
    addEventListener('online', load);
    return () => removeEventListener('online', load);
  }, []);

  return {
    devices,
    fault,
    busy,
    load,
    /** @param {OwnDevice} device */
    async revoke(device) {
      await ask('DELETE', `/api/v1/devices/${device.id}`);
      // The one in hand learns of it at once: it sends what waits and is emptied.
      if (device.this) await syncNow();
    },
  };
}
