// @ts-check
// Shapes shared by the modules of the patient page. Nothing here runs: the page never loads this file.

/** @typedef {'left' | 'right'} Side */
/** @typedef {'done' | 'tooEasy' | 'tooHard' | 'hurt' | 'skipped'} Report */
/** @typedef {'better' | 'same' | 'worse'} Compared */

/**
 * @typedef {object} Dose
 * @property {number} sets
 * @property {number} repetitions
 * @property {number | null} repetitionsTo upper end of the range, when there is one
 * @property {number} outSeconds
 * @property {number} holdSeconds
 * @property {number} backSeconds
 * @property {number} restSeconds
 * @property {number | null} weightKg
 * @property {string} text the dose as one line for the patient
 */

/** @typedef {{ viewBox: string, alt: string, frames: string[] }} Picture */

/**
 * @typedef {object} Item one exercise on one side
 * @property {string} exerciseId
 * @property {string} title
 * @property {Side | null} side
 * @property {string | null} sideLine
 * @property {string[]} setUp
 * @property {string[]} steps
 * @property {string} feel
 * @property {string[]} watch
 * @property {string} easier
 * @property {string} harder
 * @property {string[]} needs things, each with what a home has in its place
 * @property {string[]} stop signs to stop this exercise
 * @property {string | null} shortSpace what to do where there is little room
 * @property {string | null} note
 * @property {string} repetitionWord
 * @property {Dose} dose
 * @property {Picture} picture
 */

/**
 * @typedef {object} Card an explanation
 * @property {string} title
 * @property {string[]} text
 * @property {Picture[]} pictures the alternative text is the caption
 * @property {string[]} help
 */

/**
 * @typedef {object} Program what the server answers when the link is opened
 * @property {number} programVersion
 * @property {{ name: string, phone: string }} clinic
 * @property {string} language
 * @property {string} today
 * @property {number} daysPerWeek
 * @property {number} doneThisWeek
 * @property {number} minutes
 * @property {number} painCeiling
 * @property {{ day: string } | null} askMorning
 * @property {string | null} note
 * @property {Item[]} items
 * @property {Card[]} cards explanations that go with the program
 * @property {string[]} stopSigns
 * @property {string} about
 */

/**
 * @typedef {object} ExerciseLog
 * @property {string} exerciseId
 * @property {Side | null} side
 * @property {number} setsDone
 * @property {number} repetitionsDone
 * @property {Report} report
 */

/**
 * @typedef {object} SessionLog what the server stores for one session
 * @property {string} id
 * @property {string} day
 * @property {ExerciseLog[]} exercises
 * @property {number | null} effort
 * @property {number | null} painDuring
 * @property {number | null} painAfter
 * @property {string | null} note
 */

/** @typedef {{ id: string, day: string, pain: number, compared: Compared }} MorningLog */

/**
 * @typedef {object} OutboxEntry one log waiting to be sent; its body never changes once it is here
 * @property {'session' | 'morning'} kind
 * @property {SessionLog | MorningLog} body
 * @property {number} [refused] status of an answer that sending again can't mend
 */

/** @typedef {{ getItem(key: string): string | null, setItem(key: string, value: string): void, removeItem(key: string): void }} KeyValue */

export {};
