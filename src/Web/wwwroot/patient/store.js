// @ts-check
// What this phone keeps. Keys hold a fingerprint of the link, never the link itself and never a name.

/** @typedef {import('./types.js').KeyValue} KeyValue */

/**
 * 64-bit FNV-1a fingerprint of a text, as 16 hex digits. Only a label for storage, no protection: the token can't be
 * told from it because the token is longer than the fingerprint.
 * @param {string} text
 */
export function fingerprint(text) {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, '0');
}

/**
 * A version 4 UUID. The browser's own maker is missing on plain-http clinic networks, so the bytes are set here.
 * @param {(bytes: Uint8Array) => Uint8Array} fill fills with random bytes
 */
export function uuid(fill) {
  const bytes = fill(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

/**
 * Storage that falls back to memory when the phone's own can't be written to (private mode, switched off, full).
 * `lasting()` tells whether everything so far would outlive the page.
 * @param {() => KeyValue} open
 * @returns {{ storage: KeyValue, lasting: () => boolean }}
 */
export function layeredStorage(open) {
  /** @type {Map<string, string>} */
  const memory = new Map();
  /** @type {KeyValue | null} */
  let phone = null;
  try {
    phone = open();
    phone.setItem('ma.probe', '1');
    phone.removeItem('ma.probe');
  } catch {
    phone = null;
  }
  let failed = phone === null;
  /** @param {string} key @param {string} value */
  const keep = (key, value) => {
    try {
      if (phone === null) throw new Error('no storage');
      phone.setItem(key, value);
      memory.delete(key);
    } catch {
      failed = true;
      memory.set(key, value);
    }
  };
  return {
    lasting: () => !failed,
    storage: {
      getItem: (key) => memory.get(key) ?? phone?.getItem(key) ?? null,
      setItem: keep,
      removeItem: (key) => {
        memory.delete(key);
        phone?.removeItem(key);
      },
    },
  };
}

/** @param {string} token */
export function keysFor(token) {
  const link = fingerprint(token);
  return {
    outbox: `ma.${link}.outbox`,
    /** day of the last finished session */
    finished: `ma.${link}.finished`,
    /** exercises whose steps were shown once */
    seen: `ma.${link}.seen`,
    /** the session under way, whichever program version it belongs to */
    session: `ma.${link}.session`,
    /** day whose morning question was answered or put aside */
    morning: `ma.${link}.morning`,
    /** switches of this phone, the same for every link */
    settings: 'ma.settings',
  };
}

/**
 * @template T
 * @param {KeyValue} storage
 * @param {string} key
 * @param {T} otherwise
 * @returns {T}
 */
export function readJson(storage, key, otherwise) {
  try {
    const text = storage.getItem(key);
    return text === null ? otherwise : JSON.parse(text);
  } catch {
    return otherwise;
  }
}

/** @param {KeyValue} storage @param {string} key @param {unknown} value */
export function writeJson(storage, key, value) {
  storage.setItem(key, JSON.stringify(value));
}
