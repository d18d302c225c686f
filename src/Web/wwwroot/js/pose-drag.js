// @ts-check
// Pulls and keys on the grips of a pose, sent to the server one at a time. Without this file the number fields do the same.

const keys = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 };

/**
 * @param {HTMLElement} root the part of the page that holds the picture
 * @param {any} island the server's part, with PullAsync(grip, dx, dy), LetGoAsync(), NudgeAsync(grip, degrees), StepAsync(back)
 */
export function watch(root, island) {
  /** @type {{ grip: string, id: number, x: number, y: number } | null} */
  let held = null;
  let [dx, dy, busy] = [0, 0, false];

  const send = async () => {
    if (busy || !held || (Math.abs(dx) < 0.05 && Math.abs(dy) < 0.05)) return;
    busy = true;
    const [x, y, grip] = [dx, dy, held.grip];
    [dx, dy] = [0, 0];
    try {
      await island.invokeMethodAsync("PullAsync", grip, x, y);
    } catch {
      // The connection is down; the page says so.
    }
    busy = false;
    void send();
  };

  root.dataset.heard = "";
  root.addEventListener("pointerdown", (event) => {
    const grip = event.target instanceof Element ? event.target.closest("[data-grip]") : null;
    if (!(grip instanceof SVGElement) || event.button !== 0) return;
    event.preventDefault();
    grip.focus();
    held = { grip: grip.dataset.grip ?? "", id: event.pointerId, x: event.clientX, y: event.clientY };
    root.setPointerCapture(event.pointerId);
  });
  root.addEventListener("pointermove", (event) => {
    if (!held || event.pointerId !== held.id) return;
    const stage = root.querySelector("svg[data-stage]");
    const scale = stage instanceof SVGSVGElement ? stage.getScreenCTM()?.a ?? 1 : 1;
    dx += (event.clientX - held.x) / scale;
    dy += (event.clientY - held.y) / scale;
    [held.x, held.y] = [event.clientX, event.clientY];
    void send();
  });
  const drop = (/** @type {PointerEvent} */ event) => {
    if (!held || event.pointerId !== held.id) return;
    held = null;
    [dx, dy] = [0, 0];
    island.invokeMethodAsync("LetGoAsync").catch(() => {});
  };
  root.addEventListener("pointerup", drop);
  root.addEventListener("pointercancel", drop);

  root.addEventListener("keydown", (event) => {
    const grip = event.target instanceof SVGElement ? event.target.dataset.grip : undefined;
    const step = keys[/** @type {keyof typeof keys} */ (event.key)];
    if (!grip || step === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    island.invokeMethodAsync("NudgeAsync", grip, step).catch(() => {});
  });
  document.addEventListener("keydown", (event) => {
    if (!root.isConnected || event.key.toLowerCase() !== "z" || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const at = event.target;
    const types = at instanceof HTMLTextAreaElement || (at instanceof HTMLInputElement && at.type === "text" && !at.classList.contains("input-number"));
    if (types) return;
    event.preventDefault();
    island.invokeMethodAsync("StepAsync", !event.shiftKey).catch(() => {});
  });
}
