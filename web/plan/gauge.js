// Captures that a gauge took, shown line by line before they are taken in.

import { button, h, say } from '../dom.js';
import { uText, valueText, verdictNote, verdictWord, viewOfReport } from '../sentences.js';
import { frame, verdictFrame } from '../screens/frame.js';
import { words } from '../words/gauge.js';
import { hasCable, listenByCable } from './gauge-cable.js';
import { GaugeLines } from './gauge-lines.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./gauge-lines.js').GaugeLine} GaugeLine */
/** @typedef {import('../types.js').Capture} Capture */

const LARGEST_BYTES = 256 * 1024;
/** What the cable has not ended yet is no line. */
const UNENDED = /[^\n]*$/;

/** One capture from another, whatever job. @param {import('../types.js').Gauge} gauge */
const keyOf = ({ number, count, crc }) => `${number}/${count}/${crc}`;

/** @param {Context} ctx @param {string} by @param {import('../sentences.js').CheckView} view */
const answer = (ctx, by, view) =>
  h(
    'p',
    { class: 'by', 'data-by': by },
    h('span', {}, by === 'job' ? words.byJob : words.byGauge),
    h(
      'span',
      {},
      h('span', { class: 'value' }, valueText(ctx, view)),
      ' ',
      h('span', { class: 'u' }, uText(ctx, view)),
    ),
    verdictFrame(view.verdict, verdictWord(ctx, view), view.basis),
    h('small', {}, verdictNote(ctx, view)),
  );

/** @param {Context} ctx @param {GaugeLine} line @param {number} i */
function checkOf(ctx, { report, shown }, i) {
  const view = viewOfReport(report.checks[i]);
  const name = /** @type {Record<string, string>} */ (ctx.text.checks)[view.id];
  return h(
    'div',
    { 'data-check': view.id },
    h('h3', {}, name),
    answer(ctx, 'gauge', { ...view, ...shown[i], source: '' }),
    answer(ctx, 'job', view),
  );
}

/** A capture like any other. @param {Context} ctx @param {GaugeLine} line @param {string} taken_at
 * @returns {Capture} */
const captureOf = (ctx, { gauge, report }, taken_at) => ({
  job_id: ctx.job.id,
  taken_at,
  tryout: ctx.tryout,
  blind: false,
  app_version: ctx.version,
  limits_name: ctx.limits.name,
  report,
  in_operation: ctx.limits.lines.filter((l) => l.holds_in_operation).map((l) => l.check),
  found_ms: null,
  level_ms: null,
  photo: null,
  gauge,
});

/** The way in: what was pasted, read again whenever it changes. */
class Intake {
  /** @type {Promise<GaugeLines> | null} */ #loading = null;
  /** What is read and shown. @type {string | null} */ #read = null;
  /** @type {GaugeLine[]} */ #found = [];
  /** Those that are not wanted, by their keys. @type {Set<string>} */ #leftOut = new Set();
  /** @type {(() => Promise<void>) | null} */ #stop = null;
  busy = false;

  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    this.text = h('textarea', {
      id: 'f-gauge-lines',
      'data-name': 'gauge_lines',
      rows: 4,
      autocomplete: 'off',
      autocapitalize: 'off',
      spellcheck: 'false',
      input: () => this.show(),
    });
    this.state = h('p', { role: 'status', class: 'summary' });
    this.trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
    this.list = h('ul', { class: 'rows gauge-lines' });
    this.refused = h('ul', { class: 'rows refused' });
    this.take = button('', 'take-lines', () => this.takeIn());
  }

  /** @param {string} said */
  complain(said) {
    this.trouble.hidden = said === '';
    say(this.trouble, said);
  }

  /** Words behind those that are there. @param {string} more */
  add(more) {
    this.text.value += more;
    this.show();
  }

  /** @param {Blob} file */
  async open(file) {
    if (file.size > LARGEST_BYTES) return this.complain(words.tooLarge);
    this.complain('');
    const { value } = this.text;
    const gap = value === '' || value.endsWith('\n') ? '' : '\n';
    this.add(gap + (await file.text()));
  }

  isHere(/** @type {GaugeLine} */ { gauge }) {
    return this.ctx.captures.some((c) => c.gauge && keyOf(c.gauge) === keyOf(gauge));
  }

  wanted() {
    return this.#found.filter((l) => !this.isHere(l) && !this.#leftOut.has(keyOf(l.gauge)));
  }

  async show() {
    this.#loading ??= GaugeLines.load();
    const lines = await this.#loading;
    lines.useLimits(this.ctx.limits);
    const whole = this.#stop ? this.text.value.replace(UNENDED, '') : this.text.value;
    if (whole === this.#read) return;
    this.#read = whole;
    /** @type {Map<string, GaugeLine>} */ const found = new Map();
    /** @type {string[]} */ const refused = [];
    for (const [i, line] of whole.split('\n').entries()) {
      if (line.trim() === '') continue;
      const read = lines.read(line.trim());
      if (typeof read === 'string') refused.push(words.bad(i + 1, words.refusals[read]));
      else found.set(keyOf(read.gauge), read);
    }
    this.#found = [...found.values()];
    this.list.replaceChildren(...this.#found.map((line) => this.#row(line)));
    this.refused.replaceChildren(
      ...(refused.length ? [h('li', {}, h('b', {}, words.refused))] : []),
      ...refused.map((why) => h('li', { class: 'trouble' }, why)),
    );
    this.#count();
  }

  #count() {
    const n = this.wanted().length;
    say(this.take, words.take(n));
    this.take.disabled = this.busy || n === 0;
  }

  /** @param {GaugeLine} line */
  #row(line) {
    const { ctx } = this;
    const { part, hold, surface, zero_by } = line.report;
    const key = keyOf(line.gauge);
    const t = ctx.text;
    const of = (/** @type {Record<string, string>} */ table, /** @type {string} */ name) =>
      table[name];
    const box = h('input', {
      type: 'checkbox',
      checked: !this.#leftOut.has(key),
      change: () => {
        this.#leftOut[box.checked ? 'delete' : 'add'](key);
        this.#count();
      },
    });
    return h(
      'li',
      { class: 'card', 'data-line': key },
      h('h2', {}, t.parts[part]),
      h(
        'p',
        { class: 'source' },
        `${of(t.gauge.holds, hold)} ${of(t.surfaces, surface)}. ${t.gauge.zero[zero_by]}. ${t.gauge.by(line.gauge)}`,
      ),
      ...line.shown.map((_, i) => checkOf(ctx, line, i)),
      this.isHere(line)
        ? h('p', { class: 'saved' }, words.here)
        : h('label', { class: 'pick' }, box, words.wanted),
    );
  }

  /** One after the other: what the store has kept stays kept, and the rest stays here. */
  async takeIn() {
    const { ctx } = this;
    this.complain('');
    this.busy = true;
    this.#count();
    let taken = 0;
    try {
      for (const line of this.wanted()) {
        const capture = captureOf(ctx, line, await freeTime(ctx));
        ctx.captures = [...ctx.captures, await ctx.keepCapture(capture)];
        ctx.plan.passed(capture.taken_at);
        taken += 1;
      }
    } catch (error) {
      this.complain(ctx.storeWords(error));
    }
    this.busy = false;
    say(this.state, taken ? words.taken(taken) : '');
    this.#read = null;
    await this.show();
  }

  /** Begins or ends listening. @param {HTMLButtonElement} by the button for it */
  async listen(by) {
    const stop = this.#stop;
    if (stop) return this.quiet(by, '');
    this.complain('');
    try {
      this.#stop = await listenByCable(
        (more) => this.add(more),
        () => this.quiet(by, words.unplugged),
      );
      say(by, words.stop);
      say(this.state, words.listening);
    } catch (error) {
      const { name } = /** @type {Error} */ (error);
      this.complain(name === 'NotFoundError' ? words.noPort : words.noCable);
    }
  }

  /** @param {HTMLButtonElement} by @param {string} trouble */
  async quiet(by, trouble) {
    const stop = this.#stop;
    this.#stop = null;
    say(by, words.listen);
    say(this.state, '');
    this.complain(trouble);
    await stop?.();
    await this.show();
  }
}

/** The time, once it is one that no capture of the job has: sheets know captures by it.
 * @param {Context} ctx */
async function freeTime(ctx) {
  for (;;) {
    const now = new Date().toISOString();
    if (!ctx.captures.some((c) => c.taken_at === now)) return now;
    await new Promise((done) => setTimeout(done, 1));
  }
}

/** @param {Context} ctx */
export function gauge(ctx) {
  const intake = new Intake(ctx);
  const file = h('input', {
    type: 'file',
    accept: '.txt,.log,text/plain',
    class: 'sr',
    // The button beside it opens it.
    tabindex: -1,
    'aria-label': words.open,
    change: () => {
      const chosen = file.files?.[0];
      if (chosen) intake.open(chosen);
      file.value = '';
    },
  });
  const cable = button(words.listen, 'listen', () => intake.listen(cable), 'row');
  const el = frame(
    ctx,
    'gauge',
    words.title,
    [
      h('p', {}, words.why),
      h('div', { class: 'field' }, h('label', { for: 'f-gauge-lines' }, words.lines), intake.text),
      file,
      button(words.open, 'open-lines', () => file.click(), 'row'),
      hasCable() && cable,
      intake.state,
      intake.trouble,
      intake.list,
      intake.refused,
      h('p', { class: 'source' }, words.newest),
    ],
    [button(words.done, 'to-captures', () => ctx.go('captures'), 'lesser'), intake.take],
  );
  intake.show();
  return Object.assign(el, { leave: () => intake.quiet(cable, '') });
}
