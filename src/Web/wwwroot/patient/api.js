// @ts-check
// Talking to the clinic. The link's token travels in request bodies only, never in an address.

/** @typedef {import('./types.js').Program} Program */
/** @typedef {import('./types.js').OutboxEntry} OutboxEntry */

import { judge } from './outbox.js';

const PATIENCE = 15000;

/**
 * @param {string} path
 * @param {object} body
 * @returns {Promise<Response | null>} null when there was no answer
 */
async function post(path, body) {
  const giveUp = new AbortController();
  const timer = setTimeout(() => giveUp.abort(), PATIENCE);
  try {
    return await fetch(path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'X-Requested-With': 'momentarm' },
      body: JSON.stringify(body),
      cache: 'no-store',
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      signal: giveUp.signal,
    });
  } catch {
    return null;
  } finally {
    clearTimeout(timer);
  }
}

/** @typedef {{ program: Program } | { failure: 'gone' | 'busy' | 'offline' | 'trouble', title?: string, detail?: string }} Opened */

/**
 * @param {string} token
 * @returns {Promise<Opened>}
 */
export async function openProgram(token) {
  const response = await post('/api/patient/open', { token });
  if (response === null) return { failure: 'offline' };
  /** @type {any} */
  const answer = await response.json().catch(() => null);
  if (response.ok && answer !== null) return { program: answer };
  if (response.status === 429) return { failure: 'busy' };
  if (response.status === 404 || response.status === 400) {
    return { failure: 'gone', title: answer?.title, detail: answer?.detail };
  }
  return { failure: 'trouble' };
}

/**
 * @param {string} token
 * @param {OutboxEntry} entry
 */
export async function sendEntry(token, entry) {
  const response = await post(`/api/patient/${entry.kind}`, { token, [entry.kind]: entry.body });
  return judge(response === null ? 0 : response.status);
}
