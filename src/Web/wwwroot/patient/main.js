// @ts-check
// Starts the page. The link's token is the part after '#'; it never leaves the phone except in request bodies.

import { App } from './app.js';
import { layeredStorage } from './store.js';
import { words } from './words-en.js';

const root = /** @type {HTMLElement} */ (document.getElementById('page'));
const live = /** @type {HTMLElement} */ (document.getElementById('say'));
const app = new App({
  token: location.hash.slice(1),
  words,
  root,
  live,
  store: layeredStorage(() => window.localStorage),
});

// Another link pasted into the same tab is another person's program: start afresh.
window.addEventListener('hashchange', () => location.reload());
window.addEventListener('popstate', () => app.leaveByBrowser());
window.addEventListener('online', () => void app.online());
document.addEventListener('visibilitychange', () => app.visibility(document.visibilityState === 'visible'));

void app.open();
