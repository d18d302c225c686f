// @ts-check
// One exercise under way: get ready, out, hold, back, rest, next set. Time comes from the clock, never from counting.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./session.js').Session} Session */
/** @typedef {import('./timer.js').Segment} Segment */
/** @typedef {import('./run.js').Place} Place */

import { button, h, heading } from './dom.js';
import { makeFace } from './face.js';
import { placeAt } from './motion.js';
import { sideLine, stillWanted } from './parts.js';
import { makePicture } from './picture.js';
import { Run } from './run.js';
import { at, hurt, nextRepetition, repetitionDone, setDone } from './session.js';
import { signal } from './signals.js';
import { buildPlan } from './timer.js';

/** @param {App} app @param {Session} session @returns {Screen} */
export function timerScreen(app, session) {
  return new TimerScreen(app, session);
}

class TimerScreen {
  #request = 0;

  /** @param {App} app @param {Session} session */
  constructor(app, session) {
    const { words } = app;
    this.app = app;
    this.item = app.program.items[session.index];
    this.run = new Run(buildPlan(this.item.dose, nextRepetition(session)), performance.now());
    this.picture = makePicture(this.item.picture, words.pictureBroken);
    this.still = stillWanted();
    this.face = makeFace(app, session.index);
    this.pauseButton = button('plain', words.pause, () => this.#toggle());
    this.skipRest = button('primary', words.skipRest, () => this.#afterJump(this.run.skipRest(performance.now())));
    this.enough = button('primary', words.setEnough, () => this.#endSetEarly());
    this.stopHere = button('plain', words.stopHere, () => app.update(at(this.#session, 'report')));
    this.hurts = button('danger', words.itHurts, () => app.update(hurt(this.#session)));
    this.#paint(this.run.here(performance.now()));
    this.#ask();
  }

  get content() {
    const { app, item, picture, face } = this;
    return [
      h('div.run', {}, h('div.run-picture', {}, heading(item.title), sideLine(app, item), picture.element), face.element),
      h(
        'div.actions.run-actions',
        {},
        h('div.extra', {}, this.skipRest, this.enough, this.stopHere),
        this.pauseButton,
        this.hurts,
      ),
    ];
  }

  dispose() {
    cancelAnimationFrame(this.#request);
  }

  /** @param {string} [why] */
  hold(why = this.app.words.paused) {
    if (!this.run.running) return;
    this.run.pause(performance.now());
    this.dispose();
    this.face.pause(why);
    this.pauseButton.textContent = this.app.words.resume;
    this.#paint(this.run.here(performance.now()));
  }

  /** A set stops when the screen goes dark; a rest runs on, but the next set waits for the person. @param {boolean} visible */
  visibility(visible) {
    const now = performance.now();
    if (!visible) {
      if (this.run.here(now).segment.phase !== 'rest') this.hold(this.app.words.pausedDark);
      return;
    }
    const cue = this.run.comeBack(now);
    if (cue !== null) signal(cue, this.app.settings);
  }

  /** The session as recorded last. @returns {Session} */
  get #session() {
    return /** @type {Session} */ (this.app.session);
  }

  #ask() {
    this.#request = requestAnimationFrame(() => this.#step());
  }

  #step() {
    const { cue, ended, place } = this.run.advance(performance.now());
    if (cue !== null) signal(cue, this.app.settings);
    for (const segment of ended) {
      if (segment.endsRepetition) this.app.record(repetitionDone(this.#session));
      if (segment.endsSet) this.#recordSet(segment);
    }
    if (place === null) {
      this.app.update(at(this.#session, 'report'));
      return;
    }
    this.#paint(place);
    this.#ask();
  }

  #toggle() {
    if (this.run.running) {
      this.hold();
      return;
    }
    this.run.resume(performance.now());
    this.face.pause('');
    this.pauseButton.textContent = this.app.words.pause;
    this.#ask();
  }

  #endSetEarly() {
    const now = performance.now();
    this.#recordSet(this.run.here(now).segment);
    this.#afterJump(this.run.endSet(now));
  }

  /** @param {import('./timer.js').Phase | 'end'} cue */
  #afterJump(cue) {
    signal(cue, this.app.settings);
    if (!this.run.running) this.#toggle();
  }

  /** @param {Segment} segment any of the set that is over */
  #recordSet({ set }) {
    const { words } = this.app;
    const { sets, restSeconds } = this.item.dose;
    this.app.record(setDone(this.#session));
    this.app.say(set < sets ? words.sayRest(set, sets, restSeconds) : words.sayLastSet);
  }

  /** @param {Place} place */
  #paint({ segment, index, progress, left }) {
    const { phase, repetition } = segment;
    const working = phase !== 'rest' && phase !== 'ready';
    this.picture.show(placeAt(phase, progress, this.still));
    this.face.paint({ segment, index, progress, left });
    this.skipRest.hidden = phase !== 'rest';
    this.enough.hidden = !(working && repetition > this.item.dose.repetitions);
    this.stopHere.hidden = this.run.running || phase === 'rest' || !this.enough.hidden;
  }
}
