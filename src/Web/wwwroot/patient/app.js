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
import { dropRefused, flush, put, read, refusedEntries, waiting } from './outbox.js';
import { frameScreen } from './parts.js';
import { screenFor } from './screens.js';
import * as sessions from './session.js';
import { keepAwake } from './signals.js';
import { keysFor, readJson, uuid, writeJson } from './store.js';

/** @typedef {ReturnType<typeof import('./store.js').layeredStorage>} Store */

/** How long an opened program counts as today's. */
const FRESH_MILLISECONDS = 30 * 60 * 1000;

export class App {
  /** @type {View} */
  view = 'loading';
  /** @type {Problem} */
  problem = { kind: 'gone' };
  /** Set once the link is open; screens that need it are shown only then. @type {Program} */
  program = /** @type {any} */ (null);
  /** @type {Session | null} */
  session = null;
  /** @type {{ id: string, exercises: number, sets: number, advice: boolean } | null} */
  finished = null;
  /** @type {string[]} lines to tell on the overview */
  notices = [];

  #openedAt = 0;
  /** True while the browser's history holds an entry of ours, so that its Back button stays on the page. */
  #historyEntry = false;
  /** @type {Screen | null} */
  #screen = null;
  /** @type {Promise<unknown>} */
  #sending = Promise.resolve();

  /** @param {{ token: string, words: Words, root: HTMLElement, live: HTMLElement, store: Store }} given */
  constructor({ token, words, root, live, store }) {
    this.token = token;
    this.words = words;
    this.root = root;
    this.live = live;
    this.storage = store.storage;
    this.lasting = store.lasting;
    this.keys = keysFor(token);
    /** @type {Settings} */
    this.settings = { beeps: false, buzz: true, bigText: false, ...readJson(this.storage, this.keys.settings, {}) };
    this.#applySettings();
  }

  /** Opens the link, sends what waited, and shows where the person is. */
  async open() {
    if (this.token === '') return this.fail({ kind: 'noLink' });
    this.show('loading');
    const answer = await openProgram(this.token);
    if ('failure' in answer) {
      // Without a network today's program is still here; without the program there is nothing to show.
      if (answer.failure === 'offline' && this.program !== null) return this.show('overview');
      return this.fail({ ...answer, kind: answer.failure });
    }
    this.program = answer.program;
    this.#openedAt = Date.now();
    document.documentElement.lang = answer.program.language;
    this.#takeUpSession();
    await this.send();
    const { askMorning } = this.program;
    const ask = askMorning !== null && readJson(this.storage, this.keys.morning, '') !== askMorning.day;
    this.show(ask && this.session === null ? 'morning' : 'overview');
  }

  /** @param {Problem} problem */
  fail(problem) {
    this.problem = problem;
    this.show('problem');
  }

  /** Goes on with today's session; one left unfinished on another day is kept for the clinic as far as it went. */
  #takeUpSession() {
    const stored = readJson(this.storage, this.keys.session, /** @type {Session | null} */ (null));
    this.session = null;
    if (stored === null) return;
    if (sessions.fits(stored, this.program)) {
      this.session = sessions.afterReload(stored);
      return;
    }
    if (sessions.anythingDone(stored)) {
      put(this.storage, this.keys.outbox, { kind: 'session', body: sessions.toLog(stored) });
      this.notices = [this.words.earlierSaved(this.words.date(stored.day))];
    }
    this.storage.removeItem(this.keys.session);
  }

  begin() {
    this.update(this.session ?? sessions.startSession(this.program, this.newId()));
  }

  newId() {
    return uuid((bytes) => crypto.getRandomValues(bytes));
  }

  /** Stores the session without drawing anew. @param {Session} session */
  record(session) {
    this.session = session;
    writeJson(this.storage, this.keys.session, session);
  }

  /** @param {Session} session */
  update(session) {
    this.record(session);
    this.show('session');
  }

  back() {
    const before = this.view === 'session' && this.session !== null ? sessions.back(this.session) : null;
    if (before === null) this.show('overview');
    else this.update(before);
  }

  async finish() {
    const { session } = this;
    if (session === null) return;
    const titles = this.program.items.map((item) => (item.sideLine ? `${item.title} (${item.sideLine})` : item.title));
    const done = session.results.filter((result) => result.repetitionsDone > 0);
    this.finished = {
      id: session.id,
      exercises: done.length,
      sets: done.reduce((sum, result) => sum + result.setsDone, 0),
      advice: sessions.painAbove(session, this.program.painCeiling),
    };
    put(this.storage, this.keys.outbox, { kind: 'session', body: sessions.toLog(session, titles) });
    this.storage.removeItem(this.keys.session);
    this.session = null;
    writeJson(this.storage, this.keys.finished, this.program.today);
    await this.sendAndShow();
  }

  async sendAndShow() {
    this.show('saving');
    await this.send();
    this.show('saved');
  }

  /** @param {MorningLog} morning */
  answerMorning(morning) {
    put(this.storage, this.keys.outbox, { kind: 'morning', body: morning });
    writeJson(this.storage, this.keys.morning, morning.day);
    if (morning.compared === 'worse' || morning.pain > this.program.painCeiling) this.notices = [this.words.morningWorse];
    this.show('overview');
    void this.send();
  }

  /** Sends what waits, one round at a time. */
  send() {
    const round = this.#sending.then(() => flush(this.storage, this.keys.outbox, (entry) => sendEntry(this.token, entry)));
    this.#sending = round.catch(() => undefined);
    return round;
  }

  /** @param {string} id @returns {'saved' | 'kept' | 'refused'} */
  fate(id) {
    const entry = read(this.storage, this.keys.outbox).find((e) => e.body.id === id);
    if (entry === undefined) return 'saved';
    return entry.refused === undefined ? 'kept' : 'refused';
  }

  waitingSessions() {
    return waiting(this.storage, this.keys.outbox).filter((entry) => entry.kind === 'session').length;
  }

  /** Days of sessions the clinic did not take. */
  refusedDays() {
    return refusedEntries(this.storage, this.keys.outbox)
      .filter((entry) => entry.kind === 'session')
      .map((entry) => this.words.date(entry.body.day));
  }

  forgetRefused() {
    dropRefused(this.storage, this.keys.outbox);
    this.show('overview');
  }

  finishedToday() {
    return readJson(this.storage, this.keys.finished, '') === this.program.today;
  }

  /** True the first time an exercise is shown on this phone. @param {string} exerciseId */
  firstTime(exerciseId) {
    const seen = readJson(this.storage, this.keys.seen, /** @type {string[]} */ ([]));
    if (seen.includes(exerciseId)) return false;
    writeJson(this.storage, this.keys.seen, [...seen, exerciseId]);
    return true;
  }

  /** @param {Partial<Settings>} change */
  set(change) {
    this.settings = { ...this.settings, ...change };
    writeJson(this.storage, this.keys.settings, this.settings);
    this.#applySettings();
  }

  #applySettings() {
    document.documentElement.classList.toggle('big-text', this.settings.bigText);
  }

  async online() {
    if (this.view === 'problem' && this.problem.kind === 'offline') return this.open();
    if (this.program === null) return;
    await this.send();
    if (this.view === 'saved' || this.view === 'overview') this.show(this.view);
  }

  /** @param {boolean} visible */
  visibility(visible) {
    this.#screen?.visibility?.(visible);
    // A page left open overnight must not log today's work under yesterday.
    if (visible && this.view === 'overview' && Date.now() - this.#openedAt > FRESH_MILLISECONDS) void this.open();
  }

  /** Stills whatever moves or counts, while a dialog is open. */
  hold() {
    this.#screen?.hold?.();
  }

  leaveByBrowser() {
    this.#historyEntry = false;
    if (this.view === 'session') this.back();
  }

  /** Says a line to screen readers. @param {string} line */
  say(line) {
    this.live.textContent = line;
  }

  /** @param {View} view */
  show(view) {
    this.#screen?.dispose?.();
    this.view = view;
    this.say('');
    keepAwake(view === 'session');
    if (view === 'session' && !this.#historyEntry) {
      history.pushState(null, '');
      this.#historyEntry = true;
    }
    this.#screen = screenFor(this);
    this.root.replaceChildren(...frameScreen(this, this.#screen.content));
    const title = this.root.querySelector('h1');
    document.title = title ? `${title.textContent} – ${this.words.pageTitle}` : this.words.pageTitle;
    window.scrollTo(0, 0);
    title?.focus({ preventScroll: true });
  }
}
