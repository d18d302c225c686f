// @ts-check
// Keys of the working hypotheses: one key answers a test or question and goes on. What it means and whether it is saved is
// the server's work; this file only presses what is on the page and moves the focus.

/** @param {string} key @param {boolean} test @returns {string | null} */
function valueOf(key, test) {
  if (test) {
    if (key === "+" || key === "=") return "positive";
    if (key === "-" || key === "_") return "negative";
    if (key === "u") return "unclear";
    return /^[0-9]$/.test(key) ? key : null;
  }
  if (key === "y") return "yes";
  if (key === "n") return "no";
  return key === "u" ? "unknown" : null;
}

/** @param {Element} root @param {HTMLElement} row */
function goOn(root, row) {
  const rows = [...root.querySelectorAll("fieldset[data-test], fieldset[data-question]")];
  const next = rows[rows.indexOf(row) + 1];
  const to = /** @type {HTMLElement | null | undefined} */ (next?.querySelector("input:checked") ?? next?.querySelector("input[type=radio]"));
  to?.focus();
}

/** @param {HTMLElement} root */
export function start(root) {
  root.dataset.keys = "on";
  root.addEventListener("keydown", event => {
    const row = event.target instanceof Element ? /** @type {HTMLElement | null} */ (event.target.closest("fieldset[data-test], fieldset[data-question]")) : null;
    if (!row || event.ctrlKey || event.altKey || event.metaKey) return;
    const isTest = row.dataset.test !== undefined;
    if (isTest && (event.key === "Delete" || event.key === "Backspace")) {
      const clear = /** @type {HTMLButtonElement | null} */ (row.querySelector("button[data-clear]:not([hidden])"));
      if (!clear) return;
      event.preventDefault();
      clear.click();
      return;
    }
    const value = valueOf(event.key.toLowerCase(), isTest);
    const input = value === null ? null : /** @type {HTMLInputElement | null} */ (row.querySelector(`input[type=radio][value="${value}"]`));
    if (!input || input.disabled) return;
    event.preventDefault();
    input.focus();
    input.click();
    goOn(root, row);
  });
}
