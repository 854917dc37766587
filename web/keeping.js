// What is kept, and how it gets to the store: settings, the job that is open, its captures. What the
// store refuses stays in memory, and the page says so at once.

import { blankJob, StoreError } from './database.js';
import { openStore } from './carrier.js';
import { Hold } from './hold.js';
import { askToKeep, FIRST_SETTINGS } from './store.js';
import { storeWords, Trouble } from './trouble.js';

/** @typedef {import('./database.js').StoreCode} StoreCode */
/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./types.js').Capture} Capture */
/** @typedef {import('./types.js').Job} Job */
/** @typedef {import('./types.js').Settings} Settings */

const newJob = () => blankJob(new Date().toISOString());

export class Keeping {
  /** @type {Settings} */ settings = FIRST_SETTINGS;
  /** @type {Capture[]} */ captures = [];
  /** @type {Job} */ job = { id: 0, ...newJob() };
  /** @type {Store | null} */ store = null;
  tryout = false;
  /** The tape-measure half, once it is loaded. @type {any} */ plan = null;
  /** Photos of this visit: what shows them must not go with the store. @type {import('./types.js').Photo[]} */
  photosTaken = [];
  /** Why there is no store. @type {StoreCode} */ #why = 'blocked';
  /** Changes of settings and of the job that the store has not taken. */
  #left = { settings: {}, job: {} };
  #asked = false;
  /** Writes that the store has not answered yet. @type {Set<Promise<unknown>>} */ #writing =
    new Set();

  /** @param {(way: import('./trouble.js').Way) => Promise<void> | void} act */
  constructor(act) {
    this.trouble = new Trouble(act);
    this.hold = new Hold(
      (held) => this.onHold(held),
      () => this.settle(),
    );
    // The last moment of a page that is put away, closed or reloaded.
    for (const event of ['visibilitychange', 'pagehide'])
      addEventListener(event, () => this.settle());
  }

  /** The job has become this tab's, or another's. @param {boolean} _held */
  onHold(_held) {}

  /** Opens the database and takes over what it holds.
   * @param {boolean} tryout @param {number} [job] the one that was open last until told */
  async openKept(tryout, job) {
    await this.settle();
    this.plan = null;
    this.captures = [];
    this.photosTaken = [];
    this.#left = { settings: {}, job: {} };
    try {
      if (!this.store || this.tryout !== tryout) this.useStore(await openStore({ tryout }));
      this.tryout = tryout;
      this.settings = await this.stored().settings();
      if (this.trouble.code !== 'elsewhere') this.trouble.clear();
      await this.#takeJob(await this.stored().jobs(), job ?? this.settings.job);
    } catch (error) {
      this.tryout = tryout;
      this.job = { id: 0, ...newJob() };
      this.dropStore(/** @type {StoreError} */ (error));
    }
  }

  /** @param {Store} store */
  useStore(store) {
    if (this.store) this.store.onLost = () => {};
    this.store = store;
    store.onLeave = () => this.settle();
    store.onLost = (code) => this.dropStore(new StoreError(code));
  }

  /** Without a store from here: what could not be read must not be written over. @param {StoreError} error */
  dropStore(error) {
    this.store = null;
    this.#why = error.code ?? 'failed';
    this.trouble.tell(error);
  }

  /** Takes over a job, or the newest. @param {Job[]} jobs @param {number} wanted */
  async #takeJob(jobs, wanted) {
    const there = jobs.filter((j) => !j.deleted_at);
    const job = there.find((j) => j.id === wanted) ?? there.at(-1);
    this.job = job ?? (await this.stored().addJob({}));
    const { id } = this.job;
    await this.askForJob();
    // As the tab that had it left it.
    this.job = (await this.stored().jobs()).find((j) => j.id === id) ?? this.job;
    this.captures = await this.stored().captures(id);
  }

  /** The lock of a job. @param {number} id */
  lockOf(id) {
    return `plumbmark/${this.tryout ? 'tryout' : 'job'}/${id}`;
  }

  /** Asks whether the job is this tab's to write. */
  async askForJob() {
    this.tellHold(await this.hold.take(this.lockOf(this.job.id)));
  }

  /** @param {boolean} held */
  tellHold(held) {
    if (this.store) this.store.elsewhere = !held;
    const page = document.getElementById('page');
    if (page) page.inert = !held;
    if (!held) this.trouble.tell(new StoreError('elsewhere'));
    else if (this.trouble.code === 'elsewhere') this.trouble.clear();
  }

  stored() {
    if (!this.store) throw new StoreError(this.#why);
    return this.store;
  }

  /** What a store's refusal means. @param {any} error */
  storeWords(error) {
    return storeWords(error);
  }

  /** Writes something of a job; where that fails the page says so, on whatever screen.
   * @template T @param {(store: Store) => Promise<T>} act @param {Store | null} [store]
   * @returns {Promise<T>} */
  write(act, store = this.store) {
    const writing = this.#write(act, store);
    this.#writing.add(writing);
    const done = () => this.#writing.delete(writing);
    writing.then(done, done);
    return writing;
  }

  /** @template T @param {(store: Store) => Promise<T>} act @param {Store | null} store */
  async #write(act, store) {
    try {
      const given = await act(store ?? this.stored());
      this.mended();
      this.#askToKeep();
      return given;
    } catch (error) {
      this.trouble.tell(error);
      throw error;
    }
  }

  /** Once there is something to lose. */
  async #askToKeep() {
    if (this.#asked || this.tryout) return;
    this.#asked = true;
    const persisted = await askToKeep();
    if (persisted !== this.settings.persisted) this.keep({ persisted });
  }

  /** Nothing is left that the store has not taken. */
  mended() {
    const { code } = this.trouble;
    const other = code === null || code === 'elsewhere' || code === 'unloaded';
    if (!other && this.store && !this.unsaved) this.trouble.clear();
  }

  /** Whether something of the job is in memory alone. */
  get unsaved() {
    const captures = this.captures.some((c) => c.id === undefined);
    return captures || this.plan?.unsaved || Object.keys(this.#left.job).length > 0;
  }

  /** Before another job is opened: what only memory has would go with this one. */
  async mayLeave() {
    await this.settle();
    if (this.unsaved) throw new StoreError(this.trouble.code ?? 'failed');
  }

  /** Writes what is typed and not written yet, and waits for what is on its way. */
  async settle() {
    await this.plan?.flush();
    await Promise.allSettled(this.#writing);
  }

  /** Writes everything that the store has not taken. */
  async saveLeft() {
    const { settings, job } = this.#left;
    await this.stored().saveSettings(settings);
    if (Object.keys(job).length) await this.keepJob(job);
    for (const capture of this.captures.filter((c) => c.id === undefined))
      await this.keepCapture(capture);
    await this.plan?.saveAll(this);
    this.mended();
  }

  /** @param {Capture} capture @returns {Promise<Capture>} with its id */
  async keepCapture(capture) {
    const { id } = await this.write((store) => store.saveCapture(capture));
    capture.id = id;
    this.mended();
    return capture;
  }

  /** @param {Partial<Settings>} patch */
  async keep(patch) {
    this.settings = { ...this.settings, ...patch };
    this.#left.settings = { ...this.#left.settings, ...patch };
    const { settings } = this.#left;
    try {
      await this.stored().saveSettings(settings);
      if (settings === this.#left.settings) this.#left.settings = {};
    } catch (error) {
      this.trouble.tell(error);
    }
  }

  /** @param {Partial<Job>} patch @param {number} [id] the open one's until told */
  async keepJob(patch, id = this.job.id) {
    // One time for what is shown and what is stored.
    const changed = { changed_at: new Date().toISOString(), ...patch };
    if (id !== this.job.id) return this.write((store) => store.saveJob(id, changed));
    this.job = { ...this.job, ...changed };
    this.#left.job = { ...this.#left.job, ...changed };
    const { job } = this.#left;
    await this.write((store) => store.saveJob(id, job));
    if (job === this.#left.job) this.#left.job = {};
    this.mended();
  }
}
