import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../src/Web/wwwroot/patient/words-en.js';

/** Every text of the page, functions called with ordinary values. */
function texts() {
  const dose = { sets: 3, repetitions: 10, repetitionsTo: 12 };
  const made = [
    words.stopPain(3), words.call('555 0100'), words.morningFor('Wednesday'), words.overview(3, 14), words.week(2, 4),
    words.waiting(2), words.earlierSaved('Tuesday'), words.place(1, 3), words.minutesLeft(9), words.startSet(1, 3),
    words.goOnSet(2), words.ofRepetitions(dose, 'lift'), words.setOf(1, 3), words.setsDone(0, 3), words.sayRest(1, 3, 60), words.savedWhat(3, 7),
  ];
  return [...Object.values(words).flat().filter((value) => typeof value === 'string'), ...made];
}

function syllables(word) {
  const plain = word.toLowerCase().replace(/[^a-z]/g, '').replace(/(?:[^laeiouy]es|[^aeiouydt]ed|[^l]e)$/, (end) => end[0]);
  return Math.max(1, (plain.match(/[aeiouy]+/g) ?? []).length);
}

test('the page reads at sixth grade or below', () => {
  // Flesch-Kincaid grade (Kincaid et al. 1975): 0.39 words/sentence + 11.8 syllables/word - 15.59.
  const sentences = texts().join('. ').split(/[.?!:]+\s/).map((text) => text.match(/[A-Za-z’']+/g) ?? []).filter((w) => w.length > 0);
  const all = sentences.flat();
  const grade = (0.39 * all.length) / sentences.length + (11.8 * all.reduce((sum, w) => sum + syllables(w), 0)) / all.length - 15.59;
  assert.ok(grade <= 6, `grade ${grade.toFixed(1)}`);
  for (const sentence of sentences) assert.ok(sentence.length <= 15, sentence.join(' '));
});

test('one is one, and more are many', () => {
  assert.equal(words.overview(1, 1), '1 exercise, about 1 minute');
  assert.equal(words.overview(3, 14), '3 exercises, about 14 minutes');
  assert.equal(words.ofRepetitions({ repetitions: 1, repetitionsTo: null }, 'stretch'), 'of 1 stretch');
  assert.equal(words.ofRepetitions({ repetitions: 8, repetitionsTo: null }, 'reach'), 'of 8 reaches');
  assert.equal(words.ofRepetitions({ repetitions: 10, repetitionsTo: 12 }, 'lift'), 'of 10 to 12 lifts');
});

test('the tempo has a word for every phase of every exercise', () => {
  for (const phase of ['ready', 'out', 'hold', 'back', 'rest']) {
    for (const word of ['lift', 'stretch', 'some new movement', 'constructor']) {
      assert.equal(typeof words.phase(phase, word), 'string', `${phase} ${word}`);
    }
  }
  assert.equal(words.phase('back', 'lift'), 'Lower');
});

test('a date is the day the server named, in any time zone', () => {
  assert.equal(words.date('2026-11-25'), 'Wednesday, November 25');
});
