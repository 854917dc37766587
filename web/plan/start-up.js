// The first start, one step at a time: who did it and when, or who left it out and why; STOP at any
// time. What a step is worth is core's answer.

import { asTyped } from '../locale.js';
import { button, h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { clock } from '../units.js';
import { keepAwake } from '../wake.js';
import { steps, words } from '../words/start.js';
import { itemsOf } from './state.js';
import { Start, STEPS } from './start-record.js';
import { beyondIn, stepBody, tell, ways } from './start-step.js';
import { pastStops, stopScreen, textField } from './start-stop.js';
import { timersOf } from './start-timer.js';
import { tick } from './ticks.js';

/** @typedef {import('../context.js').Context} Context */

/** Core's codes of what a step is worth. */
const WORTH = { open: 0, done: 1, skipped: 2, not_proven: 3 };

class Screen {
  /** @type {HTMLElement} */ summary = h('p', {});
  /** @type {Map<string, HTMLElement>} */ rows = new Map();
  /** @type {ReturnType<typeof stepBody> | null} */ body = null;
  /** @type {HTMLElement | null} */ unproven = null;
  /** @type {ReturnType<typeof textField> | null} */ who = null;
  /** @type {ReturnType<typeof textField> | null} */ reason = null;
  /** @type {HTMLElement | null} */ trouble = null;
  /** @type {HTMLElement} */ el = h('div', {});
  /** The step that was tapped, instead of the next one. @type {string | null} */ chosen = null;
  skipping = false;
  /** The step that was told last. @type {string | null} */ lastTold = null;

  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    this.start = new Start(ctx);
    this.timers = timersOf(this.start);
    this.timers.onLook = (ended) => this.#look(ended);
    this.show();
  }

  /** @param {string[]} ended */
  #look(ended) {
    if (!this.el.isConnected || this.start.stop) return;
    if (ended.includes('after_run')) this.#keepAfterRun();
    this.update();
    this.body?.update();
  }

  /** How long it ran on, as timed, becomes the measured value; not by a clock that was set. */
  #keepAfterRun() {
    const timer = this.start.record.timers.after_run;
    if (timer.clock) return;
    const started = this.ctx.plan.keptOf('started');
    started.record.typed.after_run_min = asTyped((timer.ran_s / 60).toFixed(1));
    started.changed(true);
    this.show();
  }

  show() {
    const what = this.start.stopByReading();
    if (what) this.start.raise(what, true);
    const made = this.start.stop ? stopScreen(this.start, () => this.#again()) : this.#frame();
    made.classList.toggle('stopped', this.start.stop !== null);
    // The screen is what the page shows; it is the same element while its steps change.
    if (this.el.isConnected) this.el.replaceWith(made);
    this.el = made;
    this.update();
  }

  #again() {
    this.chosen = null;
    this.skipping = false;
    this.show();
    scrollTo(0, 0);
    this.el.querySelector('h1')?.focus({ preventScroll: true });
  }

  /** What the list and the head say, without touching what is being typed. */
  update() {
    if (this.start.stop) return;
    // A number may be half typed: the field under the thumb is left first.
    const typing = this.el.contains(document.activeElement?.closest('input') ?? null);
    if (!typing && this.start.stopByReading()) return this.show();
    const found = this.start.evaluate();
    const worth = (/** @type {string} */ id) => found?.values[id] ?? WORTH.not_proven;
    const count = (/** @type {number} */ code) => STEPS.filter((id) => worth(id) === code).length;
    const all = /** @type {const} */ ([WORTH.done, WORTH.skipped, WORTH.not_proven, WORTH.open]);
    say(this.summary, words.summary(all.map(count)));
    for (const id of STEPS) {
      const row = /** @type {HTMLElement} */ (this.rows.get(id));
      row.dataset.worth = String(worth(id));
      say(/** @type {Element} */ (row.querySelector('.verdict')), words.worth[worth(id)]);
      const verdict = worth(id) === WORTH.not_proven ? 'not_proven' : 'unchecked';
      /** @type {any} */ (row.querySelector('.verdict')).dataset.verdict = verdict;
    }
    const id = this.current ?? '';
    const left = STEPS.filter((step) => this.start.record.skipped[step]);
    const skipped = left.map((step) => steps[step].title).join(', ');
    const unproven = [words.unproven, skipped && words.skippedAre(skipped)]
      .filter(Boolean)
      .join(' ');
    const why = this.start.isBeforeStop(id) ? words.again : unproven;
    if (this.unproven) tell(this.unproven, worth(id) === WORTH.not_proven ? why : '');
  }

  /** The step that is shown, if any is left. */
  get current() {
    return this.chosen ?? this.start.evaluate()?.next ?? null;
  }

  #frame() {
    const id = this.current;
    const kept = this.ctx.plan.keptOf('job');
    this.summary = h('p', { class: 'summary', role: 'status' });
    this.rows = new Map(STEPS.map((step, i) => [step, this.#row(step, i)]));
    const cautions = h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c)));
    return frame(
      this.ctx,
      'start_up',
      words.title,
      [
        this.summary,
        this.#beyond(),
        h('p', { class: 'caution' }, words.watch),
        this.#lack(id),
        id ? this.#card(id) : h('p', { class: 'lead' }, this.#end()),
        h('p', { class: 'source' }, this.start.kept.mark()),
        h('details', { open: id === STEPS[0] }, h('summary', {}, words.cautionsTitle), cautions),
        pastStops(this.start),
        ...ways(this.start),
        h('h2', {}, words.list),
        h('ol', { class: 'steps-list' }, ...this.rows.values()),
        h('h2', {}, words.ticks),
        ...Object.entries(words.tick).map(([id, statement]) => tick(this.ctx, kept, id, statement)),
      ],
      this.#foot(id),
    );
  }

  /** Nothing is started beside what is beyond. */
  #beyond() {
    const n = itemsOf(this.ctx).filter((i) => i.state === 'beyond').length;
    return n ? h('p', { class: 'trouble' }, words.beyondFirst(n)) : null;
  }

  /** What is said once no step is left to be told. */
  #end() {
    const found = this.start.evaluate();
    return STEPS.every((id) => found?.values[id] === WORTH.done) ? words.allTold : words.notAll;
  }

  /** What the step before lacks, while there is still time for it. @param {string | null} shown */
  #lack(shown) {
    const id = this.lastTold;
    if (!id || id === shown || this.start.isBeforeStop(id)) return null;
    const beyond = beyondIn(this.start, id);
    const worth = this.start.evaluate()?.values[id];
    if (worth !== WORTH.not_proven && !beyond.length) return null;
    return h(
      'div',
      { class: 'lacking', role: 'status' },
      beyond.length
        ? h('p', { class: 'trouble' }, words.isBeyond(steps[id].title, beyond.join(', ')))
        : h('p', { class: 'missing' }, words.notProven(steps[id].title)),
      button(words.lookAgain, 'lacking', () => this.#choose(id), 'row'),
    );
  }

  /** @param {string} id @param {number} i */
  #row(id, i) {
    const { ticks, skipped } = this.start.record;
    const mark = skipped[id] ?? ticks[id];
    const before = mark?.before_stop ? `, ${words.beforeStop}` : '';
    const by = mark ? `${words.by(mark.who, clock(mark.at), mark.reason)}${before}` : '';
    const row = button('', `step-${id}`, () => this.#choose(id), 'row');
    row.append(
      h('span', { class: 'words' }, h('b', {}, `${i + 1} ${steps[id].title}`), h('small', {}, by)),
      h('strong', { class: 'verdict', 'data-verdict': 'unchecked' }),
    );
    return h('li', { 'data-step': id }, row);
  }

  /** @param {string} id */
  #choose(id) {
    this.chosen = id;
    this.skipping = false;
    this.show();
    scrollTo(0, 0);
  }

  /** @param {string} id */
  #card(id) {
    const n = STEPS.indexOf(id) + 1;
    const mark = this.start.record.skipped[id] ?? this.start.record.ticks[id];
    this.body = stepBody(this.start, id, () => this.update());
    this.unproven = h('p', { class: 'missing', hidden: true });
    const who = this.who?.value() || (this.ctx.settings.who ?? '');
    this.who = textField(words.who, 'step-who', who);
    this.reason = textField(this.skipping ? words.skipAsk : words.note, 'step-reason', '');
    this.trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
    const asks = this.#toDo(id) ? [this.who.el, this.reason.el, this.trouble] : [];
    return h(
      'section',
      { class: 'step card', 'data-current': id },
      h('p', { class: 'source' }, words.step(n, STEPS.length)),
      h('h2', {}, steps[id].title),
      ...(this.skipping ? [] : this.body.nodes),
      mark && h('p', { class: 'source' }, words.by(mark.who, clock(mark.at), mark.reason)),
      this.unproven,
      ...asks,
    );
  }

  /** Whether there is something to do about a step. @param {string} id */
  #toDo(id) {
    const anew = this.start.isBeforeStop(id) && this.start.evaluate()?.values[id] !== WORTH.done;
    return anew || this.start.isOpen(id);
  }

  /** @param {string | null} id */
  #foot(id) {
    const stop = button(words.stop.now, 'stop', () => this.#stop(), 'lesser');
    if (id === null)
      return [stop, button(words.ways.start_card[0], 'card', () => this.ctx.go('start_card'))];
    if (this.skipping)
      return [
        stop,
        button(words.skipBack, 'skip-back', () => this.#skip(false), 'lesser'),
        button(words.skipConfirm, 'skip-confirm', () => this.#mark(id, 'skipped')),
      ];
    if (!this.#toDo(id))
      return [
        stop,
        button(words.takeBack, 'take-back', () => this.#takeBack(id), 'lesser'),
        button(words.next, 'go-on', () => this.#again()),
      ];
    return [
      stop,
      button(words.skip, 'skip', () => this.#skip(true), 'lesser'),
      button(words.done, 'done', () => this.#mark(id, 'ticks')),
    ];
  }

  #stop() {
    this.start.raise('', false);
    this.#again();
  }

  /** @param {boolean} skipping */
  #skip(skipping) {
    this.skipping = skipping;
    this.show();
    this.reason?.el.scrollIntoView({ block: 'center' });
    if (skipping) this.reason?.input.focus();
  }

  /** @param {string} id */
  #takeBack(id) {
    this.start.takeBack(id);
    this.show();
  }

  /** @param {string} id @param {'ticks' | 'skipped'} how */
  #mark(id, how) {
    const [who, reason] = [this.who?.value() ?? '', this.reason?.value() ?? ''];
    const trouble = /** @type {HTMLElement} */ (this.trouble);
    const lacks = who ? (how === 'skipped' && !reason ? words.needsReason : '') : words.needsWho;
    tell(trouble, lacks);
    if (lacks) return trouble.scrollIntoView({ block: 'center' });
    this.start.mark(id, who, reason, how);
    this.lastTold = id;
    this.#again();
  }
}

/** @param {Context} ctx */
export function startUp(ctx) {
  const screen = new Screen(ctx);
  return Object.assign(screen.el, { enter: keepAwake });
}
