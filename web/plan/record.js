// What was typed into a sheet, kept as typed: saved at every change, so that nothing is lost but
// the field under the thumb.

import { h, say } from '../dom.js';
import { text } from '../text.js';
import { storeWords } from '../trouble.js';

/**
 * @typedef {object} Row
 * @property {Record<string, string>} typed by field
 * @property {Record<string, string>} half half-widths, by field
 *
 * @typedef {object} Tick
 * @property {string} who
 * @property {string} at ISO 8601
 * @property {string} reason
 * @property {number | null} photo its id
 *
 * @typedef {object} SheetRecord
 * @property {number} job_id
 * @property {string} key the sheet's name
 * @property {'metric' | 'us'} system that it was typed in
 * @property {Record<string, string>} typed
 * @property {Record<string, string>} half
 * @property {Row[]} rows
 * @property {Record<string, Tick>} ticks
 * @property {number[]} photos their ids
 * @property {string} changed_at ISO 8601
 */

/** @typedef {import('../context.js').Context} Context */

const PAUSE_MS = 400;

/** @param {number} job_id @param {string} key @param {'metric' | 'us'} system
 * @returns {SheetRecord} */
const blank = (job_id, key, system) => ({
  job_id,
  key,
  system,
  typed: {},
  half: {},
  rows: [],
  ticks: {},
  photos: [],
  changed_at: '',
});

/** @param {HTMLElement} el @param {Kept['state']} state */
function showState(el, state) {
  el.dataset.saved = { saving: 'saving', saved: 'yes' }[String(state)] ?? 'no';
  const { saving, saved } = text.captured;
  const words = { '': '', saving, saved };
  say(el, state instanceof Error ? storeWords(state) : words[state]);
}

/** A record and its way to the store. */
export class Kept {
  /** @type {ReturnType<typeof setTimeout> | undefined} */ #timer;
  #changes = 0;
  /** @type {Promise<void>} */ #written = Promise.resolve();
  /** @type {'' | 'saving' | 'saved' | Error} */ state = '';

  /** @param {Context} ctx @param {SheetRecord} record */
  constructor(ctx, record) {
    this.ctx = ctx;
    this.record = record;
    // Its own: what is typed into a job must not go to another database.
    this.store = ctx.store;
  }

  /** What is kept of a sheet; a blank one where nothing is.
   * @param {Context} ctx @param {string} key @param {SheetRecord[]} entries */
  static of(ctx, key, entries) {
    const found = entries.find((e) => e.key === key);
    return new Kept(ctx, found ?? blank(ctx.job.id, key, ctx.settings.system));
  }

  /** Changed, and not in the store. */
  get unsaved() {
    return this.state !== '' && this.state !== 'saved';
  }

  /** What photos belong to. @returns {import('../photos.js').Owner} */
  get owner() {
    const { key, photos } = this.record;
    return {
      sheet: key,
      photos,
      name: 'entries',
      value: () => this.record,
      changed: () => this.changed(true),
    };
  }

  /** The place that says whether it is saved. */
  mark() {
    const { key, changed_at } = this.record;
    const el = h('span', { class: 'saved', 'data-kept': key });
    showState(el, this.state);
    if (!this.state) el.dataset.saved = changed_at ? 'yes' : 'no';
    return el;
  }

  /** The record has changed: it is saved after a pause, or at once. @param {boolean} [now] */
  changed(now = false) {
    const at = new Date().toISOString();
    this.record.changed_at = at;
    // None while another job is being opened.
    this.ctx.plan?.passed(at);
    this.#changes += 1;
    this.#tell('saving');
    clearTimeout(this.#timer);
    if (now) this.save();
    else this.#timer = setTimeout(() => this.save(), PAUSE_MS);
  }

  /** Saves what waits for a pause. */
  flush() {
    if (this.#timer !== undefined) this.save();
    return this.#written;
  }

  save() {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#written = this.#save();
    return this.#written;
  }

  async #save() {
    const changes = this.#changes;
    try {
      await this.ctx.write((store) => store.saveEntry(this.record), this.store);
      // What was typed since is not in the store yet.
      if (changes === this.#changes) this.#tell('saved');
    } catch (error) {
      this.#tell(/** @type {Error} */ (error));
    }
    this.ctx.mended();
  }

  /** @param {Kept['state']} state */
  #tell(state) {
    this.state = state;
    const { key } = this.record;
    // Another job may be open by now.
    if (this.ctx.plan?.keptOf(key) !== this) return;
    const marks = document.querySelectorAll(`[data-kept="${key}"]`);
    for (const el of marks) showState(/** @type {HTMLElement} */ (el), state);
  }
}
