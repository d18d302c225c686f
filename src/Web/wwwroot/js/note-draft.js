// @ts-check
// Sends the note to the server a moment after the last key, so that nothing typed is lost.

/** @param {any} keeper the server's part, with KeepAsync(subjective, objective, assessment, plan) */
export function watch(keeper) {
  const form = document.getElementById("note-form");
  if (!form) return;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;
  const text = (/** @type {string} */ name) =>
    /** @type {HTMLTextAreaElement | null} */ (form.querySelector(`[data-note="${name}"]`))?.value ?? "";
  const send = () => {
    waiting = undefined;
    keeper.invokeMethodAsync("KeepAsync", text("subjective"), text("objective"), text("assessment"), text("plan")).catch(() => {
      // The connection is down; the page says so, and the next key tries again.
    });
  };
  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(send, 600);
  });
  form.addEventListener("focusout", () => {
    if (waiting === undefined) return;
    clearTimeout(waiting);
    send();
  });
}
