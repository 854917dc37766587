// Elements without markup in strings: nothing here can turn text into code.

const SVG = 'http://www.w3.org/2000/svg';

/** @typedef {string | number | boolean | null | undefined | ((event: any) => void)} Attribute */
/** @typedef {Node | string | null | undefined | false} Child */

/**
 * @param {Element} el
 * @param {Record<string, Attribute>} attributes functions become listeners
 */
export function set(el, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') el.addEventListener(name, value);
    else if (value === false || value == null) el.removeAttribute(name);
    else el.setAttribute(name, value === true ? '' : String(value));
  }
  return el;
}

/**
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Record<string, Attribute>} [attributes]
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function h(tag, attributes = {}, ...children) {
  const el = document.createElement(tag);
  set(el, attributes);
  el.append(
    ...children.filter((c) => c != null && c !== false).map((c) => /** @type {Node} */ (c)),
  );
  return el;
}

/**
 * @template {keyof SVGElementTagNameMap} T
 * @param {T} tag
 * @param {Record<string, Attribute>} [attributes]
 * @param {...Child} children
 * @returns {SVGElementTagNameMap[T]}
 */
export function s(tag, attributes = {}, ...children) {
  const el = document.createElementNS(SVG, tag);
  set(el, attributes);
  el.append(
    ...children.filter((c) => c != null && c !== false).map((c) => /** @type {Node} */ (c)),
  );
  return el;
}

/** Changes text only where it differs, so that a screen reader hears changes alone.
 * @param {Element} el @param {string} text */
export function say(el, text) {
  if (el.textContent !== text) el.textContent = text;
}

/**
 * A wide button. `data-action` is what tests and styles know it by.
 * @param {string} label @param {string} action @param {(event: Event) => void} onTap
 * @param {'main' | 'lesser' | 'row'} [kind]
 */
export function button(label, action, onTap, kind = 'main') {
  return h('button', { type: 'button', class: kind, 'data-action': action, click: onTap }, label);
}
