// @ts-check
// Making elements. Words always go in as text, never as markup.

/** @typedef {Node | string | null | undefined | false} Child */
/** @typedef {Record<string, string | boolean | number | null | undefined | ((event: any) => void)>} Props */

/**
 * `h('button.big', { type: 'button', onclick }, 'Start')`
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K | `${K}.${string}`} selector tag and classes
 * @param {Props} [props]
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[K]}
 */
export function h(selector, props = {}, ...children) {
  const [tag, ...classes] = selector.split('.');
  const element = /** @type {HTMLElementTagNameMap[K]} */ (document.createElement(tag));
  if (classes.length > 0) element.className = classes.join(' ');
  setProps(element, props);
  element.append(...children.filter(isNode));
  return element;
}

/** @param {Child} child @returns {child is Node | string} */
function isNode(child) {
  return child !== null && child !== undefined && child !== false;
}

/** @param {Element} element @param {Props} props */
export function setProps(element, props) {
  for (const [name, value] of Object.entries(props)) {
    if (typeof value === 'function') element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, '');
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(name, String(value));
  }
}

/**
 * @param {string} tag
 * @param {Props} [props]
 * @param {...Element} children
 */
export function svg(tag, props = {}, ...children) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
  setProps(element, props);
  element.append(...children);
  return element;
}

/**
 * @param {string} kind classes of the button, such as `primary`
 * @param {string} text
 * @param {(event: MouseEvent) => void} onclick
 */
export function button(kind, text, onclick) {
  return h('button', { type: 'button', class: `button ${kind}`, onclick }, text);
}

/** A heading that takes the focus when its screen opens. @param {string} text */
export function heading(text) {
  return h('h1', { tabindex: -1 }, text);
}

/** @param {string[]} lines @param {'ul' | 'ol'} [kind] */
export function list(lines, kind = 'ul') {
  return h(kind, {}, ...lines.map((line) => h('li', {}, line)));
}
