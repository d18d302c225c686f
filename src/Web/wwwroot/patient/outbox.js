// @ts-check
// Logs that wait for the network. An entry stays until the server has said it has it; sending twice does no harm,
// because each log carries its own id. Knows no page: storage and sending are passed in.

/** @typedef {import('./types.js').OutboxEntry} OutboxEntry */
/** @typedef {import('./types.js').KeyValue} KeyValue */

/**
 * @typedef {object} Answer of the server
 * @property {'saved' | 'refused' | 'unreachable'} outcome
 * @property {number} status 0 when there was no answer at all
 */

/**
 * What an answer means for an entry: 2xx it is kept there; other 4xx can't be mended by sending again; the rest may.
 * @param {number} status
 * @returns {Answer}
 */
export function judge(status) {
  if (status >= 200 && status < 300) return { outcome: 'saved', status };
  const later = status === 0 || status === 408 || status === 425 || status === 429 || status >= 500 || status < 400;
  return { outcome: later ? 'unreachable' : 'refused', status };
}

/**
 * @param {KeyValue} storage
 * @param {string} key
 * @returns {OutboxEntry[]}
 */
export function read(storage, key) {
  try {
    const value = JSON.parse(storage.getItem(key) ?? '[]');
    return Array.isArray(value) ? value.filter(isEntry) : [];
  } catch {
    return [];
  }
}

/** @param {any} value @returns {value is OutboxEntry} */
function isEntry(value) {
  return (value?.kind === 'session' || value?.kind === 'morning') && typeof value?.body?.id === 'string';
}

/** @param {KeyValue} storage @param {string} key @param {OutboxEntry[]} entries */
function write(storage, key, entries) {
  if (entries.length === 0) storage.removeItem(key);
  else storage.setItem(key, JSON.stringify(entries));
}

/**
 * Adds an entry unless one with its id is there already.
 * @param {KeyValue} storage
 * @param {string} key
 * @param {OutboxEntry} entry
 */
export function put(storage, key, entry) {
  const entries = read(storage, key);
  if (!entries.some((e) => e.body.id === entry.body.id)) write(storage, key, [...entries, entry]);
}

/** Entries that are worth sending. @param {KeyValue} storage @param {string} key */
export function waiting(storage, key) {
  return read(storage, key).filter((entry) => entry.refused === undefined);
}

/** Entries the server will never take. @param {KeyValue} storage @param {string} key */
export function refusedEntries(storage, key) {
  return read(storage, key).filter((entry) => entry.refused !== undefined);
}

/** Forgets the refused entries, once the person has been told. @param {KeyValue} storage @param {string} key */
export function dropRefused(storage, key) {
  write(storage, key, waiting(storage, key));
}

/**
 * Sends the waiting entries, oldest first, and stops at the first one that finds no network.
 * Storage is read again after each answer, so a second open page loses nothing.
 * @param {KeyValue} storage
 * @param {string} key
 * @param {(entry: OutboxEntry) => Promise<Answer>} send
 * @returns {Promise<{ saved: string[], refused: string[], left: number }>} ids, and how many still wait
 */
export async function flush(storage, key, send) {
  /** @type {string[]} */
  const saved = [];
  /** @type {string[]} */
  const refused = [];
  for (const entry of waiting(storage, key)) {
    const { outcome, status } = await send(entry);
    if (outcome === 'unreachable') break;
    const entries = read(storage, key);
    if (outcome === 'saved') {
      saved.push(entry.body.id);
      write(storage, key, entries.filter((e) => e.body.id !== entry.body.id));
    } else {
      refused.push(entry.body.id);
      write(storage, key, entries.map((e) => (e.body.id === entry.body.id ? { ...e, refused: status } : e)));
    }
  }
  return { saved, refused, left: waiting(storage, key).length };
}
