// @ts-check
// Moving pictures on the clinic's pages, and the button that prints a sheet. Both pages work without this file: the picture
// stays still, and the browser's own menu prints.

/** Plays an exercise: the frames are fetched at the first press. With reduced motion, start and end alternate slowly. */
class ExercisePicture extends HTMLElement {
  static observedAttributes = ["data-frames"];

  /** @type {{ element: HTMLElement, show: (place: number) => void } | null} */
  #moving = null;
  /** @type {Node | null} */
  #still = null;
  #dose = { outSeconds: 2, holdSeconds: 0, backSeconds: 2 };
  #tick = 0;
  #began = 0;

  connectedCallback() {
    const button = this.querySelector("button");
    if (!button) return;
    button.hidden = false;
    button.addEventListener("click", () => void this.toggle());
  }

  disconnectedCallback() {
    this.stop();
  }

  attributeChangedCallback() {
    this.stop();
    this.#moving = null;
  }

  async toggle() {
    if (this.#tick !== 0) return this.stop();
    if (this.#moving === null) await this.load();
    const figure = this.querySelector("figure");
    if (this.#moving === null || !figure) return;
    this.#still = figure.firstElementChild;
    figure.replaceChildren(this.#moving.element);
    this.#began = performance.now();
    await this.run();
    this.name("Stop");
  }

  async load() {
    const path = this.getAttribute("data-frames") ?? "";
    const [answer, { makePicture }] = await Promise.all([fetch(path), import("/patient/picture.js")]);
    if (!answer.ok) return;
    const { viewBox, frames, dose } = await answer.json();
    const alt = this.querySelector("svg")?.getAttribute("aria-label") ?? "";
    this.#dose = dose;
    this.#moving = makePicture({ viewBox, alt, frames }, "The picture can't be shown.");
  }

  async run() {
    const { loopPlace } = await import("/patient/motion.js");
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const step = () => {
      const passed = performance.now() - this.#began;
      this.#moving?.show(calm ? Math.floor(passed / 2500) % 2 : loopPlace(/** @type {any} */ (this.#dose), passed));
      this.#tick = requestAnimationFrame(step);
    };
    step();
  }

  stop() {
    cancelAnimationFrame(this.#tick);
    this.#tick = 0;
    if (this.#still) this.querySelector("figure")?.replaceChildren(this.#still);
    this.#still = null;
    this.name("Play");
  }

  /** @param {string} text */
  name(text) {
    const button = this.querySelector("button");
    if (button) button.textContent = text;
  }
}

/** A button that opens the browser's print window. */
class ExercisePrint extends HTMLElement {
  connectedCallback() {
    const button = this.querySelector("button");
    if (!button) return;
    button.hidden = false;
    button.addEventListener("click", () => print());
  }
}

customElements.define("exercise-picture", ExercisePicture);
customElements.define("exercise-print", ExercisePrint);
