// Timers that outlive a locked screen and a reload: what is kept of each is when it was started by
// the clock on the wall. How it stands, and whether that clock can be believed, is core's answer.

import { button, h, say } from '../dom.js';
import { play, unlock } from '../sound.js';
import { words } from '../words/start.js';
import { sheetEntry, work } from './model.js';

/** @typedef {import('./start-record.js').Start} Start */

/**
 * @typedef {object} TimerKept
 * @property {number | null} due_s
 * @property {number} started_ms
 * @property {number} last_ms the last look
 * @property {number} clock what core found of the clock
 * @property {number} state how it stands, by core's code
 * @property {number} seen 1 once what it waits for was seen
 * @property {number} alone_s time on the wall clock alone, of looks before this one
 * @property {number} ran_s
 */

const t = words.timer;
/** Core's codes of how a timer stands. */
const STATE = { running: 1, ended: 2, clock_set: 3 };
const LOOK_MS = 1000;
/** The store is written this seldom while a timer runs. */
const KEEP_MS = 10_000;

/** @param {number} seconds */
export function duration(seconds) {
  const whole = Math.max(0, Math.round(seconds));
  const [minutes, rest] = [Math.floor(whole / 60), whole % 60];
  return `${minutes} min ${String(rest).padStart(2, '0')} s`;
}

/** One for each record: it goes on while other screens are open. @type {WeakMap<object, Timers>} */
const all = new WeakMap();

/** @param {Start} start */
export function timersOf(start) {
  const found = all.get(start.kept) ?? new Timers(start);
  all.set(start.kept, found);
  return found;
}

class Timers {
  /** Told after each look: which of them came to an end. @type {(ended: string[]) => void} */
  onLook = () => {};
  #written = 0;
  /** Listens until another job is opened. */ #until = new AbortController();
  /** What the clocks said when this page began to look, or was last seen to be out of sight. */
  #from = { wall: 0, steady: 0, hidden: false };
  /** Time before that which no look fell into, s. @type {Record<string, number>} */ #unseen = {};
  /** When this page saw one end, by the steady clock. @type {Record<string, number>} */ #over = {};

  /** @param {Start} start */
  constructor(start) {
    this.start = start;
    this.#begin();
    for (const [id, { last_ms }] of Object.entries(start.record.timers))
      this.#unseen[id] = (this.#from.wall - last_ms) / 1000;
    const { signal } = this.#until;
    document.addEventListener('visibilitychange', () => this.#turn(), { signal });
    const interval = setInterval(() => this.look(), LOOK_MS);
    signal.addEventListener('abort', () => clearInterval(interval));
    this.look();
  }

  #begin() {
    const hidden = document.visibilityState === 'hidden';
    this.#from = { wall: Date.now(), steady: performance.now(), hidden };
  }

  /** The page comes into sight or goes out of it: what lies behind is settled. */
  #turn() {
    this.look(true);
    this.#settle();
  }

  #settle() {
    for (const [id, timer] of this.#running) {
      timer.alone_s += this.#ask(id, timer)?.alone_s ?? 0;
      this.#unseen[id] = 0;
    }
    this.#begin();
  }

  get #running() {
    return Object.entries(this.start.record.timers).filter(([, r]) => r.state === STATE.running);
  }

  /** @param {string} id @param {TimerKept} timer */
  #ask(id, timer) {
    const now = Date.now();
    /** @type {Record<string, number>} */
    const told = {
      due_s: timer.due_s ?? NaN,
      wall_s: (now - timer.started_ms) / 1000,
      page_wall_s: (now - this.#from.wall) / 1000,
      page_steady_s: (performance.now() - this.#from.steady) / 1000,
      unseen_s: this.#unseen[id] ?? 0,
      hidden: Number(this.#from.hidden),
      clock: timer.clock,
      seen: timer.seen,
    };
    const x = sheetEntry('timer').entry.inputs.map(({ name }) => told[name]);
    const half = x.map(() => NaN);
    const worked = work(this.start.ctx, 'timer', x, half);
    if (!worked || worked.refused) return null;
    return Object.fromEntries(worked.results.map((r) => [r.name, r.value]));
  }

  /** Looks at every timer that runs. @param {boolean} [now] kept at once */
  look(now = false) {
    const { ctx, kept } = this.start;
    // Another job is open: what this one keeps is no longer this page's to write.
    if (ctx.plan?.keptOf('start') !== kept) return this.#until.abort();
    const ended = [];
    for (const [id, timer] of this.#running) {
      const found = this.#ask(id, timer);
      if (!found) continue;
      Object.assign(timer, { clock: found.clock, state: found.state, ran_s: found.ran_s });
      timer.last_ms = Date.now();
      if (timer.state === STATE.running) continue;
      timer.alone_s += found.alone_s;
      this.#over[id] = performance.now();
      ended.push(id);
    }
    const due = performance.now() - this.#written > KEEP_MS;
    if (ended.length || ((now || due) && this.#running.length)) {
      this.#written = performance.now();
      this.start.kept.changed(true);
    }
    if (ended.length) play('none');
    this.onLook(ended);
  }

  /** @param {string} id @param {number | null} due_s */
  begin(id, due_s) {
    unlock();
    // What the clocks did before this does not count against it.
    this.look();
    this.#settle();
    const now = Date.now();
    this.start.record.timers[id] = {
      due_s,
      started_ms: now,
      last_ms: now,
      clock: 0,
      state: STATE.running,
      seen: 0,
      alone_s: 0,
      ran_s: 0,
    };
    this.start.kept.changed(true);
    this.onLook([]);
  }

  /** What it waits for was seen. @param {string} id */
  seen(id) {
    this.start.record.timers[id].seen = 1;
    this.look(true);
  }

  /** Whole minutes since it began, its end left behind; none where the clock cannot be believed or
   * nobody saw the end. @param {string} id @returns {number | null} */
  minutes(id) {
    const timer = this.start.record.timers[id];
    if (!timer || timer.clock) return null;
    if (timer.state === STATE.running) return Math.floor(timer.ran_s / 60);
    const over = this.#over[id];
    if (over === undefined) return null;
    return Math.floor((timer.ran_s + (performance.now() - over) / 1000) / 60);
  }

  /** Left, and on the wall clock alone. @param {string} id */
  now(id) {
    const timer = this.start.record.timers[id];
    const running = timer.state === STATE.running ? this.#ask(id, timer) : null;
    return { left_s: running?.left_s ?? NaN, alone_s: timer.alone_s + (running?.alone_s ?? 0) };
  }
}

/** A timer on the page.
 * @param {Timers} timers @param {'prime' | 'co' | 'after_run'} id
 * @param {{ due_s: number | null, missing?: string }} told missing: why it has no time of its own */
export function timerPanel(timers, id, { due_s, missing }) {
  const big = h('p', { class: 'timer-left' });
  const note = h('p', { class: 'source' });
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const begin = button(t.start[id], `timer-${id}`, () => timers.begin(id, due_s), 'row');
  const seen = button(t.seen[id], `seen-${id}`, () => timers.seen(id), 'row');
  const update = () => {
    const timer = timers.start.record.timers[id];
    const state = timer?.state ?? 0;
    const { left_s, alone_s } = timer ? timers.now(id) : { left_s: NaN, alone_s: 0 };
    const ran = timer ? duration(timer.ran_s) : '';
    const running = Number.isNaN(left_s) ? t.ran(ran) : t.left(duration(left_s));
    say(big, ['', running, t.ended(ran), ''][state]);
    say(trouble, t.clock[timer?.clock ?? 0]);
    trouble.hidden = trouble.textContent === '';
    const why = [
      due_s === null ? (missing ?? '') : t.due(duration(due_s)),
      alone_s >= 1 ? t.alone(duration(alone_s)) : '',
      // Without a time of its own it sounds at no end.
      state === STATE.running && due_s !== null ? t.keepOpen : '',
    ];
    say(note, why.filter(Boolean).join(' '));
    begin.hidden = state === STATE.running;
    say(begin, state ? t.again : t.start[id]);
    seen.hidden = state !== STATE.running || !t.seen[id];
    el.dataset.state = String(state);
  };
  const el = h(
    'section',
    { class: 'timer card', 'data-timer': id },
    h('b', {}, t.names[id]),
    big,
    trouble,
    note,
    begin,
    seen,
  );
  return { el, update };
}
