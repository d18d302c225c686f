// @ts-check
// Keys of the exam: Enter goes to the next cell at once, before the server has answered, so that typing never waits.
// What a cell means and whether it is saved is the server's work; this file only moves the focus.

/** @typedef {{ from: HTMLInputElement, to: HTMLElement, value: string }} Move */

/** @type {Move | null} */
let lastMove = null;
let valueAtFocus = "";

/** @param {Element} root @returns {HTMLInputElement[]} */
const cellsOf = root => [...root.querySelectorAll("input[data-cell]")].map(cell => /** @type {HTMLInputElement} */ (cell));

/** @param {HTMLElement} to */
function goTo(to) {
  to.focus();
  if (to instanceof HTMLInputElement && to.type === "text") to.select();
}

/** @param {Element} root @param {HTMLInputElement} from @param {number} by */
function step(root, from, by) {
  const cells = cellsOf(root);
  const to = cells[cells.indexOf(from) + by] ?? (by > 0 ? document.getElementById("exam-done") : null);
  if (!to) return;
  goTo(to);
  lastMove = { from, to, value: to instanceof HTMLInputElement ? to.value : "" };
}

/** @param {HTMLInputElement} from @param {number} by */
function changeRow(from, by) {
  const row = from.closest("tr");
  const rows = [...(from.closest("table")?.querySelectorAll("tr") ?? [])].filter(one => one.querySelector("input[data-cell]"));
  const to = row && rows[rows.indexOf(row) + by];
  const cells = to ? cellsOf(to) : [];
  const cell = cells.find(one => one.dataset.column === from.dataset.column) ?? cells[0];
  if (cell) goTo(cell);
}

/** @param {Element} root @param {HTMLInputElement} cell @param {boolean} back */
function enter(root, cell, back) {
  const changed = cell.value !== valueAtFocus;
  if (!changed && cell.dataset.state === "asking") document.getElementById(`keep-${cell.id}`)?.click();
  else if (!changed && cell.dataset.state === "typing") cell.dispatchEvent(new Event("change", { bubbles: true }));
  if (cell.dataset.adds !== undefined && changed && cell.value.trim() && !back) {
    cell.dispatchEvent(new Event("change", { bubbles: true }));
    valueAtFocus = "";
    return;
  }
  step(root, cell, back ? -1 : 1);
}

/** @param {HTMLInputElement} cell */
function restore(cell) {
  cell.value = cell.dataset.saved ?? "";
  cell.dispatchEvent(new Event("input", { bubbles: true }));
  cell.dispatchEvent(new Event("change", { bubbles: true }));
  valueAtFocus = cell.value;
  cell.select();
}

/** The items of a questionnaire, or the way without a device. @param {HTMLInputElement} cell */
function more(cell) {
  if (cell.dataset.items !== undefined) {
    document.getElementById(`items-${cell.id}`)?.click();
    return;
  }
  const way = document.getElementById("without-device");
  if (way instanceof HTMLDetailsElement) way.open = !way.open;
}

/** Goes to a field as soon as it is there. @param {string} id @param {number} [tries] */
export function focusSoon(id, tries = 20) {
  const field = document.getElementById(id);
  if (field) goTo(field);
  else if (tries > 0) setTimeout(() => focusSoon(id, tries - 1), 50);
}

/** Puts a text into a field that the server does not write by itself. @param {string} id @param {string} text */
export function write(id, text) {
  const field = document.getElementById(id);
  if (field instanceof HTMLInputElement && field.value !== text) field.value = text;
}

/** Goes on from a cell as Enter does. @param {HTMLElement} root @param {string} id */
export function stepFrom(root, id) {
  const cell = document.getElementById(id);
  if (cell instanceof HTMLInputElement) step(root, cell, 1);
}

/** Keys inside the exam grid. @param {HTMLElement} root */
export function startGrid(root) {
  root.dataset.keys = "on";
  root.addEventListener("focusin", event => {
    if (event.target instanceof HTMLInputElement) valueAtFocus = event.target.value;
  });
  root.addEventListener("keydown", event => {
    const cell = event.target;
    if (!(cell instanceof HTMLInputElement) || event.isComposing || event.ctrlKey || event.altKey || event.metaKey) return;
    if (cell.id === "type-as-you-measure") return;
    if (cell.dataset.cell === undefined) return;
    if (event.key === "/" && cell.value === "") document.getElementById("type-as-you-measure")?.focus();
    else if (event.key === "F2") more(cell);
    else if (event.key === "Enter") enter(root, cell, event.shiftKey);
    else if (event.key === "ArrowDown") changeRow(cell, 1);
    else if (event.key === "ArrowUp") changeRow(cell, -1);
    else if (event.key === "Escape") restore(cell);
    else return;
    event.preventDefault();
  });
}

/** Goes back to a cell that could not be saved, unless something has been typed since. @param {string} id */
export function moveBack(id) {
  const move = lastMove;
  if (!move || move.from.id !== id || document.activeElement !== move.to) return;
  if (move.to instanceof HTMLInputElement && move.to.value !== move.value) return;
  move.from.focus();
}

/** @type {Record<string, string>} */
const answers = { y: "Yes", n: "No", u: "Unknown" };

/** Keys inside questions: y, n and u answer and go on; Enter goes on from a typed number. @param {HTMLElement} root */
export function startQuestions(root) {
  root.dataset.keys = "on";
  root.addEventListener("click", event => {
    const link = event.target instanceof Element ? event.target.closest("a.danger-act") : null;
    const sign = link?.getAttribute("href")?.split("#decide-")[1];
    const reason = sign ? document.getElementById(`reason-${sign}`) : null;
    if (!reason) return;
    event.preventDefault();
    event.stopPropagation();
    reason.focus();
  });
  root.addEventListener("keydown", event => {
    const question = event.target instanceof Element ? event.target.closest("fieldset[data-sign]") : null;
    if (!question || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.target instanceof HTMLTextAreaElement) return;
    const typing = event.target instanceof HTMLInputElement && event.target.type === "text";
    const key = event.key.toLowerCase();
    if (typing ? key !== "enter" : !(key in answers)) return;
    event.preventDefault();
    if (typing) event.target.dispatchEvent(new Event("change", { bubbles: true }));
    else {
      const answer = /** @type {HTMLInputElement | null} */ (question.querySelector(`input[value="${answers[key]}"]`));
      if (!answer || answer.disabled) return;
      answer.focus();
      answer.click();
    }
    const all = [...root.querySelectorAll("fieldset[data-sign]")];
    const next = all[all.indexOf(question) + 1];
    const field = next?.querySelector("input:checked") ?? next?.querySelector("input");
    const to = /** @type {HTMLElement | null} */ (field ?? document.getElementById("type-as-you-measure"));
    to?.focus();
  });
}

/** Begins where the work begins, unless the person is somewhere already. @param {string} selector */
export function begin(selector) {
  const at = document.activeElement;
  if (at && at !== document.body && at.tagName !== "H1") return;
  const first = /** @type {HTMLElement | null} */ (document.querySelector(selector));
  first?.focus({ preventScroll: true });
}
