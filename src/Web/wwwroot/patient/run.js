// @ts-check
// A run through the plan of one exercise: clock and plan together, told the time by the caller. Pure but for its state.

/** @typedef {import('./timer.js').Segment} Segment */
/** @typedef {import('./timer.js').Phase} Phase */
/** @typedef {NonNullable<ReturnType<typeof locate>>} Place */

import {
  cuesBetween, elapsedAt, endOfSet, endedBetween, jumpTo, locate, pause, planLength, resume, startOfReady, stoppedClock,
} from './timer.js';

export class Run {
  /** @param {Segment[]} plan @param {number} now */
  constructor(plan, now) {
    this.plan = plan;
    this.clock = resume(stoppedClock(), now);
    /** Everything up to here has been told. */
    this.told = -1;
  }

  get running() {
    return this.clock.startedAt !== null;
  }

  /**
   * What happened since the last call: the newest cue, the segments that ended, and the place now (null at the end).
   * @param {number} now
   * @returns {{ cue: Phase | 'end' | null, ended: Segment[], place: Place | null }}
   */
  advance(now) {
    const elapsed = elapsedAt(this.clock, now);
    const cues = cuesBetween(this.plan, this.told, elapsed);
    const ended = endedBetween(this.plan, this.told, elapsed);
    this.told = elapsed;
    return { cue: cues[cues.length - 1] ?? null, ended, place: locate(this.plan, elapsed) };
  }

  /** The place now; the plan's last moment counts as part of its last segment. @param {number} now @returns {Place} */
  here(now) {
    const elapsed = Math.min(elapsedAt(this.clock, now), planLength(this.plan) - 1);
    return /** @type {Place} */ (locate(this.plan, elapsed));
  }

  /** @param {number} now */
  pause(now) {
    this.clock = pause(this.clock, now);
  }

  /** @param {number} now */
  resume(now) {
    this.clock = resume(this.clock, now);
  }

  /** Straight to getting ready for the next set. @param {number} now @returns {Phase | 'end'} what to cue */
  skipRest(now) {
    return this.#jump(now, startOfReady(this.plan, this.here(now).index));
  }

  /** Ends the set early; its repetitions so far count, the one under way does not. @param {number} now @returns {Phase | 'end'} */
  endSet(now) {
    return this.#jump(now, endOfSet(this.plan, this.here(now).index));
  }

  /**
   * Back in sight after a time out of sight: a rest that ran out meanwhile waits at getting ready.
   * @param {number} now
   * @returns {Phase | 'end' | null} what to cue
   */
  comeBack(now) {
    const index = locate(this.plan, Math.max(0, this.told))?.index;
    if (!this.running || index === undefined || this.plan[index].phase !== 'rest') return null;
    const ready = startOfReady(this.plan, index);
    return elapsedAt(this.clock, now) > ready ? this.#jump(now, ready) : null;
  }

  /** @param {number} now @param {number} elapsed @returns {Phase | 'end'} */
  #jump(now, elapsed) {
    this.clock = jumpTo(this.clock, now, elapsed);
    this.told = elapsed;
    return locate(this.plan, elapsed)?.segment.phase ?? 'end';
  }
}
