// Fields that take numbers as people type them, each with its own place for a complaint.

import { h } from './dom.js';
import { asTyped } from './locale.js';
import { parseNumber } from './units.js';

/** @typedef {HTMLInputElement | HTMLSelectElement} Input */

export class FieldError extends Error {
  /** @param {string} field @param {string} message */
  constructor(field, message) {
    super(message);
    this.field = field;
  }
}

/** Fields by the names that core uses in its messages. */
export class Fields {
  /** @param {string} notANumber */
  constructor(notANumber) {
    this.notANumber = notANumber;
    /** @type {Map<string, Input>} */
    this.inputs = new Map();
  }

  /** @param {string} field @param {string} label @param {Input} input */
  field(field, label, input) {
    const id = `f-${field.replaceAll('.', '-')}`;
    const message = h('p', { class: 'trouble', id: `${id}-m`, hidden: true });
    input.id = id;
    input.dataset.field = field;
    this.inputs.set(field, input);
    return h('div', { class: 'field' }, h('label', { for: id }, label), input, message);
  }

  /** @param {string} field @param {string} label @param {number | null} value */
  number(field, label, value) {
    const input = h('input', {
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      value: value === null ? '' : asTyped(value),
    });
    return this.field(field, label, input);
  }

  /** @param {string} field @param {string} label @param {boolean} on */
  flag(field, label, on) {
    return this.field(field, label, h('input', { type: 'checkbox', checked: on }));
  }

  /** @param {string} field */
  isOn(field) {
    return /** @type {HTMLInputElement} */ (this.inputs.get(field)).checked;
  }

  /** @param {string} field */
  text(field) {
    return this.inputs.get(field)?.value ?? '';
  }

  /** @param {string} field */
  parsed(field) {
    try {
      return parseNumber(this.text(field));
    } catch {
      throw new FieldError(field, this.notANumber);
    }
  }

  /** A number that must be there. @param {string} field */
  needed(field) {
    const value = this.parsed(field);
    if (value === null) throw new FieldError(field, this.notANumber);
    return value;
  }

  /** Puts a complaint at its field; true where there is such a field. @param {string} field @param {string} words */
  complain(field, words) {
    for (const input of this.inputs.values()) this.#message(input, '');
    const input = this.inputs.get(field);
    if (!input) return false;
    this.#message(input, words);
    input.focus();
    input.scrollIntoView({ block: 'center' });
    return true;
  }

  /** @param {HTMLElement} input @param {string} words */
  #message(input, words) {
    const message = document.getElementById(`${input.id}-m`);
    if (!message) return;
    message.textContent = words;
    message.hidden = words === '';
    input.setAttribute('aria-invalid', String(words !== ''));
    input.setAttribute('aria-describedby', words ? message.id : '');
  }
}
