// @ts-check
// Every word the page itself says, in English. Another language is another module of this shape.
// Short sentences, one action each, digits for numbers, sixth-grade reading level (a test measures it).

/** @typedef {import('./types.js').Dose} Dose */
/** @typedef {import('./timer.js').Phase} Phase */

/** What to call while moving out and back, by the exercise's own word for one repetition. @type {Record<string, [string, string]>} */
const TEMPO = {
  lift: ['Lift', 'Lower'],
  raise: ['Raise', 'Lower'],
  bridge: ['Lift', 'Lower'],
  squat: ['Down', 'Up'],
  lunge: ['Down', 'Up'],
  sit: ['Sit', 'Stand'],
  stand: ['Stand', 'Sit'],
  step: ['Step', 'Step back'],
  reach: ['Reach', 'Come back'],
  kick: ['Straighten', 'Bend'],
  bend: ['Bend', 'Straighten'],
  press: ['Press', 'Let go'],
  push: ['Push', 'Come back'],
  pull: ['Pull', 'Let go'],
  squeeze: ['Squeeze', 'Let go'],
  roll: ['Roll', 'Roll back'],
  stretch: ['Ease in', 'Ease out'],
};

/** @param {string} word */
function plural(word) {
  return /(s|x|z|ch|sh)$/.test(word) ? `${word}es` : `${word}s`;
}

/** @param {number} n @param {string} one @param {string} [many] */
function count(n, one, many = plural(one)) {
  return `${n} ${n === 1 ? one : many}`;
}

export const words = {
  code: 'en',
  pageTitle: 'Home exercises',

  /** @param {string} day such as 2026-11-25 */
  date: (day) =>
    new Intl.DateTimeFormat('en-US', { weekday: 'long', month: 'long', day: 'numeric', timeZone: 'UTC' }).format(
      new Date(`${day}T00:00:00Z`),
    ),

  loading: 'Getting your exercises …',
  back: 'Back',
  next: 'Next',
  close: 'Close',
  tryAgain: 'Try again',

  noLinkTitle: 'This link is not whole',
  noLinkText: 'Scan the code on your sheet again. Or tap the link your clinic sent you.',
  gone: 'This link does not work. Ask your clinic for a new one.',
  goneTitle: 'We can’t open this',
  busyTitle: 'Too many tries',
  busyText: 'Wait a few minutes. Then try again.',
  offlineTitle: 'No connection',
  offlineText: 'We can’t reach your clinic right now. Check your signal. Then try again.',
  troubleTitle: 'Something broke on our side',
  troubleText: 'It is not your fault. Please try again in a few minutes.',

  stopButton: 'When to stop',
  stopTitle: 'Stop and call us if',
  /** @param {number} ceiling */
  stopPain: (ceiling) => `Pain up to ${ceiling} out of 10 is OK. Stop when it goes above ${ceiling}.`,
  stopEmergency: 'If you feel in danger, call your emergency number first.',
  /** @param {string} phone */
  call: (phone) => `Call ${phone}`,

  morningTitle: 'How is your pain this morning?',
  /** @param {string} day */
  morningFor: (day) => `${day}. This is about how you felt when you got up.`,
  comparedTitle: 'Better or worse than yesterday?',
  better: 'Better',
  same: 'About the same',
  worse: 'Worse',
  notNow: 'Not now',
  morningWorse: 'That helps us. Go easy today. Use the easier way if an exercise hurts.',

  today: 'Today',
  /** @param {number} n @param {number} minutes */
  overview: (n, minutes) => `${count(n, 'exercise')}, about ${count(minutes, 'minute')}`,
  /** @param {number} done @param {number} goal */
  week: (done, goal) => `${done} of ${count(goal, 'day')} done this week`,
  weekDone: 'Your days for this week are done. Well done. Rest is good too.',
  start: 'Start',
  goOn: 'Go on',
  againToday: 'Do it again',
  finishedToday: 'Today’s session is done.',
  halfDone: 'You are part way through. It is all still here.',
  fromTherapist: 'From your therapist',
  settings: 'Sound and text size',
  beeps: 'Beeps',
  buzz: 'Buzz',
  bigText: 'Bigger text',
  /** @param {number} n */
  waiting: (n) => `${count(n, 'session')} kept on this phone, not sent yet.`,
  waitingHow: 'Open this page again when you have a signal.',
  sendNow: 'Send now',
  /** @param {string} day */
  earlierSaved: (day) => `You did part of a session on ${day}. We kept it for your clinic.`,
  noItems: 'No exercises are set right now. Ask your clinic.',

  /** @param {number} i @param {number} n */
  place: (i, n) => `${i} of ${n}`,
  /** @param {number} n */
  minutesLeft: (n) => `${n} min left`,
  left: 'Left',
  right: 'Right',
  leftLetter: 'L',
  rightLetter: 'R',
  how: 'How to do it',
  setUp: 'Set up',
  steps: 'Then',
  feel: 'What you feel',
  watch: 'Watch for',
  easier: 'Too hard?',
  harder: 'Too easy?',
  /** @param {number} set @param {number} sets */
  startSet: (set, sets) => (sets === 1 ? 'Start' : `Start set ${set} of ${sets}`),
  /** @param {number} set */
  goOnSet: (set) => `Go on with set ${set}`,
  allSets: 'All sets done',
  skipThis: 'Skip this one',
  enoughOfThis: 'That is enough',
  easierNow: 'The easier way',
  picturePause: 'Stop picture',
  picturePlay: 'Play picture',
  pictureEnd: 'Show the end',
  pictureStart: 'Show the start',
  pictureBroken: 'The picture could not be shown. Follow the steps.',

  /** @param {Phase} phase @param {string} word @returns {string} */
  phase: (phase, word) => {
    const [out, back] = Object.hasOwn(TEMPO, word) ? TEMPO[word] : ['Go', 'Come back'];
    return { ready: 'Get ready', out, hold: 'Hold', back, rest: 'Rest' }[phase];
  },
  /** @param {Dose} dose @param {string} word */
  ofRepetitions: (dose, word) => {
    const last = Math.max(dose.repetitions, dose.repetitionsTo ?? 0);
    const range = last > dose.repetitions ? `${dose.repetitions} to ${last}` : `${last}`;
    return `of ${range} ${last === 1 ? word : plural(word)}`;
  },
  /** @param {number} set @param {number} sets */
  setOf: (set, sets) => `Set ${set} of ${sets}`,
  /** @param {number} done @param {number} sets */
  setsDone: (done, sets) => `${done} of ${count(sets, 'set')} done`,
  seconds: 'seconds',
  upNext: 'Next',
  pause: 'Pause',
  resume: 'Go on',
  paused: 'Paused',
  pausedDark: 'Paused while the screen was off',
  itHurts: 'It hurts',
  skipRest: 'Skip the rest',
  setEnough: 'Enough for this set',
  stopHere: 'Stop this exercise here',
  /** @param {number} set @param {number} sets @param {number} seconds */
  sayRest: (set, sets, seconds) => `Set ${set} of ${sets} done. Rest ${count(seconds, 'second')}.`,
  sayLastSet: 'Last set done.',

  reportTitle: 'How was it?',
  reportDone: 'About right',
  tooEasy: 'Too easy',
  tooHard: 'Too hard',
  hurtMe: 'It hurt',

  hurtTitle: 'Stop. Let it settle.',
  hurtNoted: 'We noted it. Your therapist will see it.',
  hurtEasierTitle: 'Next time, or now if the pain is gone',
  hurtNext: 'Next exercise',
  hurtLast: 'Go to the last questions',
  hurtEasier: 'Try the easier way',
  stopToday: 'Stop for today',
  hurtCallTitle: 'Call us if',
  hurtCall: ['the pain does not go down when you rest', 'it is worse tomorrow morning'],

  skipTitle: 'Why skip it?',
  skipReasons: ['I have no time', 'I am too tired', 'I am not sure how', 'I lack the right place or gear', 'Some other reason'],
  skipHurts: 'It hurts',

  effortTitle: 'How hard was it today?',
  effortLow: '0 = no effort',
  effortHigh: '10 = as hard as can be',
  duringTitle: 'How bad was the pain at its worst?',
  duringHint: 'Think of the time while you did your exercises.',
  afterTitle: 'How is the pain now?',
  painLow: '0 = no pain',
  painHigh: '10 = worst pain',
  noAnswer: 'Leave this out',
  chooseFirst: 'Tap a number first.',
  chooseOneFirst: 'Tap one answer first.',

  adviceTitle: 'That is more pain than we want',
  advice: [
    'Stop for today.',
    'Do the easier way next time.',
    'Call us if it is still worse tomorrow morning.',
  ],

  needs: 'What you need',
  littleRoom: 'Little room',
  stopIf: 'Stop this move if',
  goodToKnow: 'Good to know',
  whatHelps: 'What helps',

  noteTitle: 'Anything to tell your therapist?',
  noteHint: 'You can leave this blank. Please do not write your name.',
  noteLabel: 'Your words',
  save: 'Save',
  saving: 'Saving …',

  savedTitle: 'Saved',
  savedText: 'Your clinic can see what you did today. You can close this page.',
  keptTitle: 'Kept on this phone, not sent yet',
  keptText: 'There is no connection right now. Open this page again when you have a signal. We will send it then.',
  keptNotLasting: 'There is no connection, and this phone can’t keep it. Leave this page open. Then try again.',
  refusedTitle: 'We could not save this',
  refusedText: 'Your clinic did not accept this session. Please call them and tell them what you did.',
  refusedTold: 'I have told them',
  /** @param {number} exercises @param {number} sets */
  savedWhat: (exercises, sets) => `${count(exercises, 'exercise')}, ${count(sets, 'set')}`,
  nextMorning: 'Tomorrow morning, open this page. It will ask how you feel.',
  toOverview: 'Back to today',
};

/** @typedef {typeof words} Words */
