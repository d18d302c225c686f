// @ts-check
// Which screen shows for where the person is.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./session.js').Session} Session */

import { endScreen, savedScreen, savingScreen } from './screens-end.js';
import { exerciseScreen, hurtScreen, reportScreen, skipScreen } from './screens-exercise.js';
import { loadingScreen, morningScreen, overviewScreen, problemScreen } from './screens-start.js';
import { timerScreen } from './screen-timer.js';

/** @param {App} app @returns {Screen} */
export function screenFor(app) {
  switch (app.view) {
    case 'loading':
      return loadingScreen(app);
    case 'problem':
      return problemScreen(app);
    case 'morning':
      return morningScreen(app);
    case 'saving':
      return savingScreen(app);
    case 'saved':
      return savedScreen(app);
    default:
      return app.view === 'session' && app.session !== null ? sessionScreen(app, app.session) : overviewScreen(app);
  }
}

/** @param {App} app @param {Session} session @returns {Screen} */
function sessionScreen(app, session) {
  switch (session.step) {
    case 'exercise':
      return exerciseScreen(app, session);
    case 'timer':
      return timerScreen(app, session);
    case 'report':
      return reportScreen(app, session);
    case 'hurt':
      return hurtScreen(app, session);
    case 'skip':
      return skipScreen(app, session);
    default:
      return endScreen(app, session);
  }
}
