// What was typed into a sheet, kept as typed: saved at every change, so that nothing is lost but
// the field under the thumb.

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

/** A record and its way to the store. */
export class Kept {
  /** @type {ReturnType<typeof setTimeout> | undefined} */ #timer;
  #changes = 0;
  /** Called with "saving", "saved", or an error of the store's. @type {(state: 'saving' | 'saved' | Error) => void} */
  onState = () => {};

  /** @param {Context} ctx @param {SheetRecord} record */
  constructor(ctx, record) {
    this.ctx = ctx;
    this.record = record;
  }

  /** What is kept of a sheet; a blank one where nothing is. @param {Context} ctx @param {string} key */
  static async open(ctx, key) {
    const found = await ctx.store?.entry(ctx.job.id, key).catch(() => null);
    return new Kept(ctx, found ?? blank(ctx.job.id, key, ctx.settings.system));
  }

  /** What photos belong to. @returns {import('../photos.js').Owner} */
  get owner() {
    const { key, photos } = this.record;
    return { sheet: key, photos, changed: () => this.changed(true) };
  }

  /** The record has changed: it is saved after a pause, or at once. @param {boolean} [now] */
  changed(now = false) {
    this.record.changed_at = new Date().toISOString();
    this.#changes += 1;
    this.onState('saving');
    clearTimeout(this.#timer);
    if (now) this.#save();
    else this.#timer = setTimeout(() => this.#save(), PAUSE_MS);
  }

  async #save() {
    const changes = this.#changes;
    try {
      if (!this.ctx.store) throw Object.assign(new Error('blocked'), { code: 'blocked' });
      await this.ctx.store.saveEntry(this.record);
      // What was typed since is not in the store yet.
      if (changes === this.#changes) this.onState('saved');
    } catch (error) {
      this.onState(/** @type {Error} */ (error));
    }
  }
}
