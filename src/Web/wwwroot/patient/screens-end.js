// @ts-check
// After the last exercise: effort, pain, own words, and what became of it all.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./session.js').Session} Session */

import { button, h, heading } from './dom.js';
import { callLink, missingLine, numberQuestion, painAdvice } from './parts.js';
import { answer } from './session.js';

/** Longest text of the person's own words; reasons for skipping are added to it. */
const WORDS_LIMIT = 600;

/** @param {App} app @param {Session} session @returns {Screen} */
export function endScreen(app, session) {
  const { words } = app;
  switch (session.step) {
    case 'effort':
      return ratingScreen(app, session, 'effort', words.effortTitle, '', words.effortLow, words.effortHigh);
    case 'painDuring':
      return ratingScreen(app, session, 'painDuring', words.duringTitle, words.duringHint, words.painLow, words.painHigh);
    case 'painAfter':
      return ratingScreen(app, session, 'painAfter', words.afterTitle, '', words.painLow, words.painHigh);
    default:
      return noteScreen(app, session);
  }
}

/**
 * @param {App} app
 * @param {Session} session
 * @param {'effort' | 'painDuring' | 'painAfter'} question
 * @param {string} title
 * @param {string} hint
 * @param {string} low
 * @param {string} high
 * @returns {Screen}
 */
function ratingScreen(app, session, question, title, hint, low, high) {
  const { words, program } = app;
  let chosen = session[question];
  const missing = missingLine();
  const advice = h('div', { 'aria-live': 'polite' });
  const advise = () => {
    const above = question !== 'effort' && chosen !== null && chosen > program.painCeiling;
    advice.replaceChildren(...(above ? [painAdvice(app)] : []));
  };
  advise();
  const next = button('primary', words.next, () => {
    if (chosen === null) missing.textContent = words.chooseFirst;
    else app.update(answer(session, question, chosen));
  });
  return {
    content: [
      numberQuestion({
        title,
        hint,
        low,
        high,
        chosen,
        onchoose: (value) => {
          chosen = value;
          missing.textContent = '';
          advise();
          advice.scrollIntoView({ block: 'nearest' });
        },
      }),
      advice,
      missing,
      h('div.actions', {}, button('plain', words.noAnswer, () => app.update(answer(session, question, null))), next),
    ],
  };
}

/** @param {App} app @param {Session} session @returns {Screen} */
function noteScreen(app, session) {
  const { words } = app;
  const box = h('textarea', {
    id: 'own-words',
    rows: 5,
    maxlength: WORDS_LIMIT,
    'aria-describedby': 'own-words-hint',
    oninput: () => app.record({ ...session, words: box.value }),
  });
  box.value = session.words;
  return {
    content: [
      heading(words.noteTitle),
      h('p.hint', { id: 'own-words-hint' }, words.noteHint),
      h('label', { for: 'own-words' }, words.noteLabel),
      box,
      h('div.actions', {}, button('primary big', words.save, () => void app.finish())),
    ],
  };
}

/** @param {App} app @returns {Screen} */
export function savingScreen(app) {
  return { content: [h('p.loading', { role: 'status' }, app.words.saving)] };
}

/** @param {App} app @returns {Screen} */
export function savedScreen(app) {
  const { words, finished } = app;
  if (finished === null) return { content: [heading(words.savedTitle)] };
  const fate = app.fate(finished.id);
  const said = {
    saved: [words.savedTitle, words.savedText],
    kept: [words.keptTitle, app.lasting() ? words.keptText : words.keptNotLasting],
    refused: [words.refusedTitle, words.refusedText],
  }[fate];
  const mark = { saved: '✓', kept: '…', refused: '!' }[fate];
  return {
    content: [
      h(`div.result.${fate}`, {}, h('span.mark', { 'aria-hidden': 'true' }, mark), heading(said[0])),
      h('p', {}, said[1]),
      fate === 'refused' ? callLink(app) : null,
      finished.sets > 0 ? h('p.lead', {}, words.savedWhat(finished.exercises, finished.sets)) : null,
      finished.advice ? painAdvice(app) : null,
      fate === 'saved' ? h('p.hint', {}, words.nextMorning) : null,
      h(
        'div.actions',
        {},
        fate === 'kept' ? button('primary', words.tryAgain, () => void app.sendAndShow()) : null,
        button('plain', words.toOverview, () => void app.open()),
      ),
    ],
  };
}
