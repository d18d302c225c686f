// @ts-check
// Small comforts of the clinic's pages: where the focus goes, the account menu, the light and dark switch.
// Every page works without this file.

const themeKey = "momentarm.theme";

/** The light and dark switch: three buttons, one of them pressed. */
class ThemeSwitch extends HTMLElement {
  connectedCallback() {
    this.addEventListener("click", event => {
      const button = /** @type {Element} */ (event.target).closest("button[data-choice]");
      if (button) this.choose(button.getAttribute("data-choice") ?? "device");
    });
    this.show();
  }

  /** @param {string} choice device, light or dark */
  choose(choice) {
    try {
      if (choice === "device") localStorage.removeItem(themeKey);
      else localStorage.setItem(themeKey, choice);
    } catch {
      // Without storage the choice can't be kept; the page stays as the device wants it.
    }
    dispatchEvent(new Event("momentarm-theme"));
    this.show();
  }

  show() {
    let choice = "device";
    try {
      choice = localStorage.getItem(themeKey) ?? "device";
    } catch {
      // As above.
    }
    for (const button of this.querySelectorAll("button[data-choice]")) {
      button.setAttribute("aria-pressed", String(button.getAttribute("data-choice") === choice));
    }
  }
}

/** @param {HTMLElement | null} element */
function focusOn(element) {
  if (!element) return;
  if (!element.hasAttribute("tabindex")) element.setAttribute("tabindex", "-1");
  element.focus({ preventScroll: true });
}

let lastPath = location.pathname;

/** After a move without a full page load: errors first, else the heading, as a full load would announce it. */
function afterMove() {
  const errors = /** @type {HTMLElement | null} */ (document.querySelector("[data-focus-first]"));
  if (errors) {
    focusOn(errors);
  } else if (location.pathname !== lastPath) {
    closeMenus();
    focusOn(document.querySelector("h1"));
  }
  lastPath = location.pathname;
}

/** @param {Node | null} [except] */
function closeMenus(except = null) {
  for (const menu of document.querySelectorAll("details.account[open]")) {
    if (!except || !menu.contains(except)) menu.removeAttribute("open");
  }
}

customElements.define("theme-switch", ThemeSwitch);

document.addEventListener("click", event => closeMenus(/** @type {Node} */ (event.target)));
document.addEventListener("keydown", event => {
  if (event.key !== "Escape") return;
  const menu = document.querySelector("details.account[open]");
  if (!menu) return;
  menu.removeAttribute("open");
  /** @type {HTMLElement | null} */ (menu.querySelector("summary"))?.focus();
});

focusOn(document.querySelector("[data-focus-first]"));
/** @type {any} */ (globalThis).Blazor?.addEventListener("enhancedload", afterMove);
