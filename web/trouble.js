// What must not be missed, above every screen: that something is not kept, why, and the ways out.

import { button, h } from './dom.js';
import { StoreError } from './database.js';
import { text } from './text.js';

/** @typedef {import('./database.js').StoreCode} StoreCode */
/** @typedef {'copyOut' | 'tryAgain' | 'reload' | 'useHere'} Way */

const t = text.notKept;
/** The ways out of each; of the others: a file now, and another try.
 * @type {Partial<Record<StoreCode, Way[]>>} */
const WAYS = {
  elsewhere: ['useHere'],
  newer: ['copyOut', 'reload'],
  unloaded: ['reload'],
  wrong_store: [],
};

/** What a store's refusal means. @param {any} error */
export function storeWords(error) {
  const words = /** @type {Record<string, string>} */ (text.storeErrors);
  return words[error.code ?? 'failed'] ?? words.failed;
}

export class Trouble {
  /** @type {StoreCode | null} */ code = null;
  #el = h('aside', { class: 'notice', role: 'alert', hidden: true });

  /** @param {(way: Way) => Promise<void> | void} act */
  constructor(act) {
    this.act = act;
    document.body.prepend(this.#el);
  }

  /** @param {any} error */
  tell(error) {
    const code = error instanceof StoreError ? error.code : 'failed';
    // While another tab has the job, nothing else is to be done about it here.
    if (code === this.code || this.code === 'elsewhere') return;
    this.code = code;
    const ways = (WAYS[code] ?? ['copyOut', 'tryAgain']).map((way) =>
      button(t[way], way, () => this.#go(way), 'lesser'),
    );
    this.#el.replaceChildren(
      h('p', { class: 'trouble' }, storeWords(error)),
      h('nav', {}, ...ways),
    );
    this.#el.hidden = false;
  }

  /** @param {Way} way */
  async #go(way) {
    const buttons = this.#el.querySelectorAll('button');
    const still = (/** @type {boolean} */ off) => {
      for (const button of buttons) button.disabled = off;
    };
    still(true);
    try {
      await this.act(way);
    } catch (error) {
      this.code = null;
      this.tell(error);
    }
    still(false);
  }

  clear() {
    this.code = null;
    this.#el.hidden = true;
    this.#el.replaceChildren();
  }
}
