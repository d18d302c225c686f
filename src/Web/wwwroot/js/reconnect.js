// @ts-check
// Shows what happens to the live connection of a page part that needs one, and tries to get it back.

const dialog = /** @type {HTMLDialogElement | null} */ (document.getElementById("components-reconnect-modal"));

/** @returns {any} */
const framework = () => /** @type {any} */ (globalThis).Blazor;

/** Ask the server for the old state; when it is gone, load the page again: drafts are kept on the server. */
async function tryAgain() {
  try {
    const back = await framework().reconnect();
    if (back) return;
    const resumed = await framework().resumeCircuit();
    if (resumed) dialog?.close();
    else location.reload();
  } catch {
    // No answer at all: stay, and try when the person comes back to this window.
    document.addEventListener("visibilitychange", onSeen);
  }
}

function onSeen() {
  if (document.visibilityState !== "visible") return;
  document.removeEventListener("visibilitychange", onSeen);
  void tryAgain();
}

async function resume() {
  try {
    if (await framework().resumeCircuit()) return;
    location.reload();
  } catch {
    location.reload();
  }
}

if (dialog) {
  dialog.addEventListener("components-reconnect-state-changed", event => {
    const state = /** @type {CustomEvent} */ (event).detail.state;
    if (state === "show" && !dialog.open) dialog.showModal();
    else if (state === "hide" && dialog.open) dialog.close();
    else if (state === "failed") document.addEventListener("visibilitychange", onSeen);
    else if (state === "rejected") location.reload();
  });
  dialog.querySelector("[data-act='again']")?.addEventListener("click", () => void tryAgain());
  dialog.querySelector("[data-act='resume']")?.addEventListener("click", () => void resume());
  dialog.querySelector("[data-act='reload']")?.addEventListener("click", () => location.reload());
}
