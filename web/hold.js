// A job is written to by one tab at a time: the one that holds its lock. A browser without locks
// has nobody to ask.

/** How long a tab that is being closed may still hold it, ms. */
const PATIENCE_MS = 700;
/** How long a tab that is asked may take to let go; one that sleeps never does. */
const ASKED_MS = 1500;

export class Hold {
  held = true;
  #name = '';
  #turn = 0;
  #letGo = () => {};
  #queue = new AbortController();
  /** @type {((held: boolean) => void) | null} */ #answer = null;
  #tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel('plumbmark-hold') : null;

  /** @param {(held: boolean) => void} onChange after the first answer
   * @param {() => Promise<void>} flush writes what is not written yet */
  constructor(onChange, flush) {
    this.onChange = onChange;
    if (!this.#tabs) return;
    this.#tabs.onmessage = async ({ data }) => {
      if (data !== this.#name || !this.held) return;
      await flush();
      this.#lose(this.#turn);
    };
  }

  /** Lets go of the one before and asks for this one. @param {string} name
   * @returns {Promise<boolean>} whether it is ours; `onChange` tells what comes later */
  take(name) {
    if (name === this.#name) return Promise.resolve(this.held);
    this.#name = name;
    if (!navigator.locks) return Promise.resolve(true);
    this.held = false;
    return new Promise((resolve) => {
      const answer = (/** @type {boolean} */ held) => {
        this.#answer = null;
        resolve(held);
      };
      this.#answer = answer;
      this.#ask();
      setTimeout(() => this.#answer === answer && answer(this.held), PATIENCE_MS);
    });
  }

  /** Asks the tab that holds it to let go; takes it from one that sleeps. */
  takeOver() {
    this.#tabs?.postMessage(this.#name);
    const turn = this.#turn;
    const steal = () => turn === this.#turn && !this.held && this.#ask({ steal: true });
    setTimeout(steal, this.#tabs ? ASKED_MS : 0);
  }

  /** Does something to a job that no other tab has open. @param {string} name
   * @param {() => Promise<void>} act @returns {Promise<boolean>} whether it was done */
  async alone(name, act) {
    if (name === this.#name || !navigator.locks) return act().then(() => true);
    const done = await navigator.locks.request(name, { ifAvailable: true }, async (lock) => {
      if (lock) await act();
      return lock !== null;
    });
    return done;
  }

  /** @param {LockOptions} [how] */
  #ask(how) {
    this.#letGo();
    this.#queue.abort();
    this.#queue = new AbortController();
    this.#turn += 1;
    const turn = this.#turn;
    const held = () =>
      new Promise((free) => {
        this.#letGo = () => free(undefined);
        this.#set(true);
      });
    // Refused: given up by us, or taken by another tab.
    navigator.locks
      .request(this.#name, how ?? { signal: this.#queue.signal }, held)
      .catch((error) => {
        // Where the page is an origin of its own there are no locks, and no other tab.
        if (error.name === 'SecurityError') this.#set(true);
        else this.#lose(turn);
      });
  }

  /** It is another tab's; once that one lets go it is ours again. @param {number} turn */
  #lose(turn) {
    if (turn !== this.#turn) return;
    this.#set(false);
    this.#ask();
  }

  /** @param {boolean} held */
  #set(held) {
    this.held = held;
    if (this.#answer) this.#answer(held);
    else this.onChange(held);
  }
}
