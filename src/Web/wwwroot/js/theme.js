// Loaded before anything is drawn, so that the chosen look (light or dark) never flashes.
(() => {
  const key = "momentarm.theme";
  const root = document.documentElement;

  const stored = () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null; // Storage may be switched off; then the device's own setting rules.
    }
  };

  const apply = () => {
    const choice = stored();
    if (choice === "light" || choice === "dark") {
      if (root.dataset.theme !== choice) root.dataset.theme = choice;
    } else if (root.dataset.theme) {
      delete root.dataset.theme;
    }
  };

  apply();
  // Moving between pages replaces the attributes of the root element; put the choice back before the next paint.
  new MutationObserver(apply).observe(root, { attributes: true, attributeFilter: ["data-theme"] });
  addEventListener("storage", event => { if (event.key === key) apply(); });
  addEventListener("momentarm-theme", apply);
})();
