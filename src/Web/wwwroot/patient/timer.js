// @ts-check
// The clock of an exercise: a plan of segments with absolute ends, and a clock that knows elapsed time only.
// Pure: the caller passes in the time, so a sleeping or throttled page can't lose or gain a second.

/** @typedef {import('./types.js').Dose} Dose */
/** @typedef {import('./types.js').Item} Item */
/** @typedef {'ready' | 'out' | 'hold' | 'back' | 'rest'} Phase */

/**
 * @typedef {object} Segment
 * @property {Phase} phase
 * @property {number} set from 1
 * @property {number} repetition from 1; in `ready` and `rest` the repetition that follows
 * @property {number} start milliseconds from the start of the plan
 * @property {number} end
 * @property {boolean} endsRepetition
 * @property {boolean} endsSet
 */

/** Seconds to get into position before a set. They are the last seconds of a rest. */
export const READY_SECONDS = 3;

/**
 * Repetitions a set may reach: the upper end when the dose is a range.
 * @param {Dose} dose
 */
export function mostRepetitions(dose) {
  return Math.max(1, dose.repetitions, dose.repetitionsTo ?? 0);
}

/**
 * The parts of one repetition that last longer than nothing. A dose without any tempo gets one second out.
 * @param {Dose} dose
 * @returns {{ phase: Phase, seconds: number }[]}
 */
function repetitionParts(dose) {
  /** @type {{ phase: Phase, seconds: number }[]} */
  const parts = [
    { phase: 'out', seconds: dose.outSeconds },
    { phase: 'hold', seconds: dose.holdSeconds },
    { phase: 'back', seconds: dose.backSeconds },
  ];
  const lasting = parts.filter((part) => part.seconds > 0);
  return lasting.length > 0 ? lasting : [{ phase: 'out', seconds: 1 }];
}

/**
 * All segments from the given set and repetition to the end of the last set.
 * @param {Dose} dose
 * @param {{ set: number, repetition: number }} [from]
 * @returns {Segment[]}
 */
export function buildPlan(dose, from = { set: 1, repetition: 1 }) {
  /** @type {Segment[]} */
  const plan = [];
  const parts = repetitionParts(dose);
  const last = mostRepetitions(dose);
  let clock = 0;
  /** @param {Phase} phase @param {number} seconds @param {number} set @param {number} repetition */
  const add = (phase, seconds, set, repetition) => {
    const end = clock + Math.round(seconds * 1000);
    plan.push({ phase, set, repetition, start: clock, end, endsRepetition: false, endsSet: false });
    clock = end;
  };
  for (let set = from.set; set <= dose.sets; set++) {
    const first = set === from.set ? Math.min(from.repetition, last) : 1;
    if (set > from.set && dose.restSeconds > READY_SECONDS) {
      add('rest', dose.restSeconds - READY_SECONDS, set, 1);
    }
    add('ready', READY_SECONDS, set, first);
    for (let repetition = first; repetition <= last; repetition++) {
      for (const part of parts) add(part.phase, part.seconds, set, repetition);
      plan[plan.length - 1].endsRepetition = true;
    }
    plan[plan.length - 1].endsSet = true;
  }
  return plan;
}

/** @param {Segment[]} plan */
export function planLength(plan) {
  return plan.length > 0 ? plan[plan.length - 1].end : 0;
}

/**
 * Where the plan stands after `elapsed` milliseconds; null when it is over.
 * @param {Segment[]} plan
 * @param {number} elapsed
 * @returns {{ segment: Segment, index: number, progress: number, left: number } | null}
 */
export function locate(plan, elapsed) {
  const index = plan.findIndex((segment) => elapsed < segment.end);
  if (index < 0) return null;
  const segment = plan[index];
  const into = Math.max(0, elapsed - segment.start);
  return { segment, index, progress: into / (segment.end - segment.start), left: segment.end - segment.start - into };
}

/**
 * Segments that ended after `from` and not later than `to`.
 * @param {Segment[]} plan
 * @param {number} from
 * @param {number} to
 */
export function endedBetween(plan, from, to) {
  return plan.filter((segment) => segment.end > from && segment.end <= to);
}

/**
 * Seconds to show for the current place. A rest counts down to the first repetition, getting ready included.
 * @param {{ segment: Segment, left: number }} place
 */
export function secondsShown(place) {
  const extra = place.segment.phase === 'rest' ? READY_SECONDS * 1000 : 0;
  return Math.max(1, Math.ceil((place.left + extra) / 1000 - 1e-6));
}

/**
 * Start of the first segment at or after `index` that gets the person ready; the plan's end when there is none.
 * @param {Segment[]} plan
 * @param {number} index
 */
export function startOfReady(plan, index) {
  const ready = plan.find((segment, i) => i >= index && segment.phase === 'ready');
  return ready ? ready.start : planLength(plan);
}

/**
 * End of the set that segment `index` belongs to.
 * @param {Segment[]} plan
 * @param {number} index
 */
export function endOfSet(plan, index) {
  const last = plan.find((segment, i) => i >= index && segment.endsSet);
  return last ? last.end : planLength(plan);
}

/**
 * Cues to sound between two moments: the start of each phase, and each second of getting ready.
 * @param {Segment[]} plan
 * @param {number} from exclusive
 * @param {number} to inclusive
 * @returns {(Phase | 'end')[]}
 */
export function cuesBetween(plan, from, to) {
  /** @type {(Phase | 'end')[]} */
  const cues = [];
  for (const segment of plan) {
    const step = segment.phase === 'ready' ? 1000 : segment.end - segment.start;
    for (let at = segment.start; at < segment.end; at += step) {
      if (at > from && at <= to) cues.push(segment.phase);
    }
  }
  const end = planLength(plan);
  if (end > from && end <= to) cues.push('end');
  return cues;
}

/** @typedef {{ base: number, startedAt: number | null }} Clock elapsed before, and when it was last started */

/** @returns {Clock} */
export function stoppedClock() {
  return { base: 0, startedAt: null };
}

/** @param {Clock} clock @param {number} now */
export function elapsedAt(clock, now) {
  return clock.startedAt === null ? clock.base : clock.base + (now - clock.startedAt);
}

/** @param {Clock} clock @param {number} now @returns {Clock} */
export function resume(clock, now) {
  return clock.startedAt === null ? { base: clock.base, startedAt: now } : clock;
}

/** @param {Clock} clock @param {number} now @returns {Clock} */
export function pause(clock, now) {
  return { base: elapsedAt(clock, now), startedAt: null };
}

/** @param {Clock} clock @param {number} now @param {number} elapsed @returns {Clock} */
export function jumpTo(clock, now, elapsed) {
  return { base: elapsed, startedAt: clock.startedAt === null ? null : now };
}

/** @param {Dose} dose */
export function secondsPerSet(dose) {
  const one = repetitionParts(dose).reduce((sum, part) => sum + part.seconds, 0);
  return one * Math.max(1, dose.repetitions) + dose.restSeconds;
}

/**
 * Minutes still to go: the program's minutes times the share of timed work not yet done.
 * @param {number} minutes
 * @param {Item[]} items
 * @param {number} index current item
 * @param {number} setsDone sets done of the current item
 */
export function minutesLeft(minutes, items, index, setsDone) {
  const work = items.map((item) => item.dose.sets * secondsPerSet(item.dose));
  const all = work.reduce((sum, seconds) => sum + seconds, 0);
  const ahead = work.slice(index).reduce((sum, seconds) => sum + seconds, 0);
  const done = items[index] ? setsDone * secondsPerSet(items[index].dose) : 0;
  return all > 0 ? Math.max(1, Math.ceil((minutes * (ahead - done)) / all)) : minutes;
}
