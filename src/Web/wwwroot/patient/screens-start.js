// @ts-check
// Before the first exercise: waiting, trouble, the morning question, today at a glance.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./types.js').Compared} Compared */

import { button, h, heading, list } from './dom.js';
import { missingLine, numberQuestion, sideLine, therapistNote } from './parts.js';
import { makePicture } from './picture.js';
import { canBuzz, signal, unlockSound } from './signals.js';

/** @param {App} app @returns {Screen} */
export function loadingScreen(app) {
  return { content: [h('p.loading', { role: 'status' }, app.words.loading)] };
}

/** @param {App} app @returns {Screen} */
export function problemScreen(app) {
  const { words, problem } = app;
  const said = {
    noLink: [words.noLinkTitle, words.noLinkText],
    gone: [problem.title ?? words.goneTitle, problem.detail ?? words.gone],
    busy: [words.busyTitle, words.busyText],
    offline: [words.offlineTitle, words.offlineText],
    trouble: [words.troubleTitle, words.troubleText],
  }[problem.kind];
  const again = problem.kind !== 'gone' && problem.kind !== 'noLink';
  return {
    content: [
      heading(said[0]),
      h('p', {}, said[1]),
      again ? h('div.actions', {}, button('primary', words.tryAgain, () => void app.open())) : null,
    ],
  };
}

/** @param {App} app @returns {Screen} */
export function morningScreen(app) {
  const { words } = app;
  const day = /** @type {{ day: string }} */ (app.program.askMorning).day;
  /** @type {number | null} */
  let pain = null;
  const missing = missingLine();
  const later = button('plain', words.notNow, () => app.show('overview'));
  const question = h('div.question', {});

  const askCompared = () => {
    /** @type {[Compared, string][]} */
    const choices = [['better', words.better], ['same', words.same], ['worse', words.worse]];
    const title = heading(words.comparedTitle);
    question.replaceChildren(
      title,
      h(
        'div.choices',
        {},
        ...choices.map(([compared, label]) =>
          button('choice', label, () => app.answerMorning({ id: app.newId(), day, pain: /** @type {number} */ (pain), compared })),
        ),
      ),
      h('div.actions', {}, later),
    );
    title.focus();
  };
  const next = button('primary', words.next, () => {
    if (pain === null) missing.textContent = words.chooseFirst;
    else askCompared();
  });
  question.append(
    numberQuestion({
      title: words.morningTitle,
      hint: words.morningFor(words.date(day)),
      low: words.painLow,
      high: words.painHigh,
      chosen: null,
      onchoose: (value) => {
        pain = value;
        missing.textContent = '';
      },
    }),
    missing,
    h('div.actions', {}, later, next),
  );
  return { content: [question] };
}

/** @param {App} app @returns {Screen} */
export function overviewScreen(app) {
  const { words, program, session } = app;
  const { items, daysPerWeek, doneThisWeek } = program;
  const kept = app.waitingSessions();
  const notices = app.notices.map((line) => h('p.notice', {}, line));
  const weekDone = doneThisWeek >= daysPerWeek;
  const startText = session !== null ? words.goOn : app.finishedToday() ? words.againToday : words.start;
  return {
    content: [
      h('p.day', {}, words.date(program.today)),
      heading(words.today),
      h('p.lead', {}, items.length > 0 ? words.overview(items.length, program.minutes) : words.noItems),
      week(app),
      ...notices,
      kept > 0 ? keptNotice(app, kept) : null,
      refusedNotice(app),
      session !== null ? h('p.notice', {}, words.halfDone) : null,
      session === null && app.finishedToday() ? h('p.notice.good', {}, words.finishedToday) : null,
      session === null && weekDone ? h('p.notice.good', {}, words.weekDone) : null,
      program.note ? therapistNote(app, program.note) : null,
      h(
        'ol.program',
        {},
        ...items.map((item, i) =>
          h(
            'li',
            {},
            h('span.order', { 'aria-hidden': 'true' }, String(i + 1)),
            h('div', {}, h('h2', {}, item.title), sideLine(app, item), h('p.dose', {}, item.dose.text)),
          ),
        ),
      ),
      cards(app),
      settings(app),
      h('p.about', {}, program.about),
      items.length > 0 ? h('div.actions', {}, button('primary big', startText, () => app.begin())) : null,
    ],
  };
}

/** What the therapist gave along to read; a program kept from before has none. @param {App} app */
function cards(app) {
  const given = app.program.cards ?? [];
  if (given.length === 0) return null;
  return h(
    'section.cards',
    {},
    h('h2', {}, app.words.goodToKnow),
    ...given.map((card) =>
      h(
        'details.card',
        {},
        h('summary', {}, card.title),
        ...card.pictures.flatMap((picture) => [makePicture(picture, app.words.pictureBroken).element, h('p.caption', {}, picture.alt)]),
        ...card.text.map((line) => h('p', {}, line)),
        h('h3', {}, app.words.whatHelps),
        list(card.help),
      ),
    ),
  );
}

/** Days done this week, in words and as filled marks. @param {App} app */
function week(app) {
  const { daysPerWeek, doneThisWeek } = app.program;
  const marks = Array.from({ length: daysPerWeek }, (_, i) => h(i < doneThisWeek ? 'i.done' : 'i', {}));
  return h('p.week', {}, h('span.marks', { 'aria-hidden': 'true' }, ...marks), app.words.week(doneThisWeek, daysPerWeek));
}

/** @param {App} app @param {number} kept */
function keptNotice(app, kept) {
  const { words } = app;
  return h(
    'div.notice.kept',
    {},
    h('p', {}, h('b', {}, words.waiting(kept)), ' ', words.waitingHow),
    button('plain', words.sendNow, () => void app.send().then(() => app.show('overview'))),
  );
}

/** @param {App} app */
function refusedNotice(app) {
  const { words } = app;
  const days = app.refusedDays();
  if (days.length === 0) return null;
  return h(
    'div.warn',
    {},
    h('h2', {}, words.refusedTitle),
    h('p', {}, `${days.join('; ')}. ${words.refusedText}`),
    button('plain', words.refusedTold, () => app.forgetRefused()),
  );
}

/** @param {App} app */
function settings(app) {
  const { words } = app;
  /** @param {keyof import('./app.js').Settings} name @param {string} label @param {() => void} [then] */
  const toggle = (name, label, then) => {
    const box = h('input', {
      type: 'checkbox',
      role: 'switch',
      checked: app.settings[name],
      onchange: () => {
        app.set({ [name]: box.checked });
        if (box.checked) then?.();
      },
    });
    return h('label.switch', {}, h('span', {}, label), box);
  };
  return h(
    'details.more',
    {},
    h('summary', {}, words.settings),
    toggle('beeps', words.beeps, () => {
      unlockSound();
      signal('out', app.settings);
    }),
    canBuzz() ? toggle('buzz', words.buzz, () => signal('rest', { beeps: false, buzz: true })) : null,
    toggle('bigText', words.bigText),
  );
}
