/** The list as the clinic has it. It is asked for each time: what is kept of it would be out of date just when it matters. */
import { server } from '../../session/session.js';
import { device } from '../../store/store.js';
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

  /** @param {'GET' | 'PATCH' | 'DELETE'} method @param {string} path @param {unknown} [body] */
  const ask = async (method, path, body) => {
    setBusy(true);
    try {
      const told = (await server.call(method, path, { body })).devices;
      setDevices(told);
      setFault(null);
      return told;
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
    /** @param {OwnDevice} device @param {string} name */
    async rename({ id }, name) {
      const told = await ask('PATCH', `/api/v1/devices/${id}`, { name });
      // The one in hand says its name itself where it signs in anew, and in what it hands over.
      const own = told?.find((/** @type {OwnDevice} */ each) => each.this);
      if (own && own.id === id) await device.set('device', { id, name: own.name });
    },
    /** @param {OwnDevice} which */
    async revoke(which) {
      await ask('DELETE', `/api/v1/devices/${which.id}`);
      // The one in hand learns of it at once: it sends what waits and is emptied.
      if (which.this) await syncNow();
    },
  };
}
