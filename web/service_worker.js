// Keeps a whole version of the page on the device: all files or none, each by the hash of its
// content.
import { addRoute, cleanupOutdatedCaches, precache } from 'workbox-precaching';

const worker = /** @type {any} */ (self);

precache(FILES);
addRoute({ ignoreURLParametersMatching: [/./], cleanURLs: false });
cleanupOutdatedCaches();

// Only when a person has accepted the new version; until then the old one goes on working.
worker.addEventListener('message', (/** @type {MessageEvent} */ event) => {
  if (event.data === 'start') worker.skipWaiting();
});
