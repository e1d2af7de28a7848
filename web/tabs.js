// One tab writes, the others follow. The browser's lock says who; a channel carries what was
// written.

const name = 'two_clocks';

export class Tabs {
  /**
   * @param {LockManager | undefined} locks a browser without it trusts the store's own check
   * @param {BroadcastChannel | undefined} channel
   */
  constructor(locks, channel) {
    this.locks = locks;
    this.channel = channel;
  }

  /**
   * Tries to be the writer; if another tab is, waits for it to go.
   * @param {() => void} promoted the other tab went: this one may write from now on
   * @returns {Promise<boolean>} whether this tab may write at once
   */
  async claim(promoted) {
    const { locks } = this;
    if (locks === undefined) return true;
    const held = () => new Promise(() => {}); // for as long as the tab lives
    const at_once = await new Promise((resolve) => {
      void locks.request(name, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : held();
      });
    });
    if (!at_once) {
      void locks.request(name, () => {
        promoted();
        return held();
      });
    }
    return at_once;
  }

  /** @param {number} number @param {string} hash @param {Uint8Array} bytes */
  tell(number, hash, bytes) {
    this.channel?.postMessage({ number, hash, bytes });
  }

  /** @param {(number: number, hash: string, bytes: Uint8Array) => void} wrote */
  listen(wrote) {
    this.channel?.addEventListener('message', ({ data }) => {
      if (data?.bytes instanceof Uint8Array) wrote(data.number, data.hash, data.bytes);
    });
  }
}
