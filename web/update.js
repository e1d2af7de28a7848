// The service worker's life: works offline after the first visit; a new version is offered, never
// forced.

/** @typedef {{ ready: () => void, idle: () => Promise<void> }} Told */

/** The one address the page's policy lets become a script. */
function workerAddress() {
  const address = './service_worker.js';
  const policy = /** @type {any} */ (window).trustedTypes?.createPolicy('two-clocks', {
    createScriptURL: () => address,
  });
  return policy?.createScriptURL(address) ?? address;
}

export class Update {
  /** @param {Told} told */
  constructor(told) {
    this.told = told;
    /** @type {ServiceWorkerRegistration | undefined} */
    this.registration = undefined;
    this.accepted = false;
  }

  async start() {
    if (!('serviceWorker' in navigator)) return;
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (this.accepted) location.reload();
    });
    try {
      const options = { updateViaCache: /** @type {const} */ ('none') };
      this.watch(await navigator.serviceWorker.register(workerAddress(), options));
    } catch {
      return; // not over https: the page works, but only with a signal
    }
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') this.look();
    });
  }

  /** @param {ServiceWorkerRegistration} registration */
  watch(registration) {
    this.registration = registration;
    const offer = () => {
      // Without a controller this is the first visit: there is nothing older to replace.
      if (registration.waiting !== null && navigator.serviceWorker.controller) this.told.ready();
    };
    offer();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', offer);
    });
  }

  look() {
    this.registration?.update().catch(() => {}); // no signal: next time
  }

  /** The person said yes: everything is saved first. */
  async accept() {
    this.accepted = true;
    await this.told.idle();
    this.registration?.waiting?.postMessage('start');
  }
}
