// @ts-check
// The page as a whole: what is open, what is stored, which screen shows. Screens get this object and nothing else.

/** @typedef {import('./types.js').Program} Program */
/** @typedef {import('./types.js').OutboxEntry} OutboxEntry */
/** @typedef {import('./types.js').MorningLog} MorningLog */
/** @typedef {import('./session.js').Session} Session */
/** @typedef {import('./words-en.js').Words} Words */
/** @typedef {{ beeps: boolean, buzz: boolean, bigText: boolean }} Settings */
/** @typedef {'loading' | 'problem' | 'morning' | 'overview' | 'session' | 'saving' | 'saved'} View */
/** @typedef {{ kind: 'gone' | 'busy' | 'offline' | 'trouble' | 'noLink', title?: string, detail?: string }} Problem */
/** @typedef {{ content: import('./dom.js').Child[], dispose?: () => void, hold?: () => void, visibility?: (visible: boolean) => void }} Screen */

import { openProgram, sendEntry } from './api.js';
import { flush, put, read, waiting } from './outbox.js';
import { frameScreen } from './parts.js';
import { endScreen, savedScreen, savingScreen } from './screens-end.js';
import { exerciseScreen, hurtScreen, reportScreen, skipScreen } from './screens-exercise.js';
import { loadingScreen, morningScreen, overviewScreen, problemScreen } from './screens-start.js';
import { timerScreen } from './screen-timer.js';
import * as sessions from './session.js';
import { keepAwake } from './signals.js';
import { keysFor, readJson, uuid, writeJson } from './store.js';

/** @typedef {{ token: string, words: Words, root: HTMLElement, live: HTMLElement, store: ReturnType<typeof import('./store.js').layeredStorage> }} Parts */
/** @typedef {ReturnType<typeof createApp>} App */

/** @param {Parts} parts */
export function createApp({ token, words, root, live, store }) {
  const { storage, lasting } = store;
  const keys = keysFor(token);
  /** @type {Screen | null} */
  let screen = null;
  let outsideEntry = false;
  /** @type {Promise<unknown>} */
  let sending = Promise.resolve();

  const app = {
    words,
    lasting,
    /** @type {View} */
    view: 'loading',
    /** @type {Problem} */
    problem: { kind: 'gone' },
    /** Set once the link is open; screens that need it are shown only then. @type {Program} */
    program: /** @type {any} */ (null),
    /** @type {Session | null} */
    session: null,
    /** @type {{ id: string, exercises: number, sets: number, advice: boolean } | null} */
    finished: null,
    /** @type {string[]} lines to tell on the overview */
    notices: [],
    /** @type {Settings} */
    settings: { beeps: false, buzz: true, bigText: false, ...readJson(storage, keys.settings, {}) },

    /** Opens the link, sends what waited, and shows where the person is. */
    async open() {
      document.documentElement.classList.toggle('big-text', app.settings.bigText);
      if (token === '') return app.fail({ kind: 'noLink' });
      app.show('loading');
      const answer = await openProgram(token);
      if ('failure' in answer) return app.fail({ ...answer, kind: answer.failure });
      app.program = answer.program;
      document.documentElement.lang = answer.program.language;
      app.takeUpSession();
      await app.send();
      const { askMorning } = app.program;
      const ask = askMorning !== null && readJson(storage, keys.morning, '') !== askMorning.day;
      app.show(ask && app.session === null ? 'morning' : 'overview');
    },

    /** @param {Problem} problem */
    fail(problem) {
      app.problem = problem;
      app.show('problem');
    },

    /** Goes on with today's session; one left unfinished on another day is kept for the clinic as far as it went. */
    takeUpSession() {
      const stored = readJson(storage, keys.session, /** @type {Session | null} */ (null));
      app.session = null;
      if (stored === null) return;
      if (sessions.fits(stored, app.program)) {
        app.session = sessions.afterReload(stored);
        return;
      }
      if (sessions.anythingDone(stored)) {
        put(storage, keys.outbox, { kind: 'session', body: sessions.toLog(stored) });
        app.notices = [words.earlierSaved(words.date(stored.day))];
      }
      storage.removeItem(keys.session);
    },

    begin() {
      app.session ??= sessions.startSession(app.program, app.newId());
      app.update(app.session);
    },

    newId: () => uuid((bytes) => crypto.getRandomValues(bytes)),

    /** Stores the session without drawing anew. @param {Session} session */
    record(session) {
      app.session = session;
      writeJson(storage, keys.session, session);
    },

    /** @param {Session} session */
    update(session) {
      app.record(session);
      app.show('session');
    },

    back() {
      if (app.view === 'session' && app.session !== null) {
        const before = sessions.back(app.session);
        if (before === null) app.show('overview');
        else app.update(before);
      } else {
        app.show('overview');
      }
    },

    async finish() {
      const { session } = app;
      if (session === null) return;
      const titles = app.program.items.map((item) => (item.sideLine ? `${item.title} (${item.sideLine})` : item.title));
      const done = session.results.filter((result) => result.repetitionsDone > 0);
      app.finished = {
        id: session.id,
        exercises: done.length,
        sets: done.reduce((sum, result) => sum + result.setsDone, 0),
        advice: sessions.painAbove(session, app.program.painCeiling),
      };
      put(storage, keys.outbox, { kind: 'session', body: sessions.toLog(session, titles) });
      storage.removeItem(keys.session);
      app.session = null;
      writeJson(storage, keys.finished, app.program.today);
      await app.sendAndShow();
    },

    async sendAndShow() {
      app.show('saving');
      await app.send();
      app.show('saved');
    },

    /** @param {MorningLog} morning */
    answerMorning(morning) {
      put(storage, keys.outbox, { kind: 'morning', body: morning });
      writeJson(storage, keys.morning, morning.day);
      if (morning.compared === 'worse' || morning.pain > app.program.painCeiling) app.notices = [words.morningWorse];
      app.show('overview');
      void app.send();
    },

    /** Sends what waits, one round at a time. */
    send() {
      const round = sending.then(() => flush(storage, keys.outbox, (entry) => sendEntry(token, entry)));
      sending = round.catch(() => undefined);
      return round;
    },

    /** @param {string} id @returns {'saved' | 'kept' | 'refused'} */
    fate(id) {
      const entry = read(storage, keys.outbox).find((e) => e.body.id === id);
      if (entry === undefined) return 'saved';
      return entry.refused === undefined ? 'kept' : 'refused';
    },

    waitingSessions: () => waiting(storage, keys.outbox).filter((entry) => entry.kind === 'session').length,
    finishedToday: () => readJson(storage, keys.finished, '') === app.program.today,

    /** True the first time an exercise is shown on this phone. @param {string} exerciseId */
    firstTime(exerciseId) {
      /** @type {string[]} */
      const seen = readJson(storage, keys.seen, []);
      if (seen.includes(exerciseId)) return false;
      writeJson(storage, keys.seen, [...seen, exerciseId]);
      return true;
    },

    /** @param {Partial<Settings>} change */
    set(change) {
      app.settings = { ...app.settings, ...change };
      writeJson(storage, keys.settings, app.settings);
      document.documentElement.classList.toggle('big-text', app.settings.bigText);
    },

    async online() {
      if (app.view === 'problem' && app.problem.kind === 'offline') return app.open();
      if (token === '') return;
      await app.send();
      if (app.view === 'saved' || app.view === 'overview') app.show(app.view);
    },

    /** @param {boolean} visible */
    visibility: (visible) => screen?.visibility?.(visible),

    /** Stills whatever moves or counts, while a dialog is open. */
    hold: () => screen?.hold?.(),

    leaveByBrowser() {
      outsideEntry = false;
      if (app.view === 'session') app.back();
    },

    /** Says a line to screen readers. @param {string} line */
    say(line) {
      live.textContent = line;
    },

    /** @param {View} view */
    show(view) {
      screen?.dispose?.();
      app.view = view;
      app.say('');
      keepAwake(view === 'session');
      if (view === 'session' && !outsideEntry) {
        // The phone's own Back button then goes one step back instead of leaving a half-done session.
        history.pushState(null, '');
        outsideEntry = true;
      }
      screen = screenFor(app);
      root.replaceChildren(...frameScreen(app, screen.content));
      const title = root.querySelector('h1');
      document.title = title ? `${title.textContent} – ${words.pageTitle}` : words.pageTitle;
      window.scrollTo(0, 0);
      title?.focus({ preventScroll: true });
    },
  };
  return app;
}

/** @param {App} app @returns {Screen} */
function screenFor(app) {
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
