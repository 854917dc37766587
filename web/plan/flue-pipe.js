// A pipe from the heater, leg by leg: angles typed or taken from captures, where water stays, what
// may be done there; drawn as a height profile. The same screen for exhaust and combustion air.

import { button, h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words as flueWords } from '../words/flue.js';
import { sheets } from '../words/flue-sheets.js';
import { formatAngle, clock } from '../units.js';
import { angleWords, forget, group, left, readingOf, take } from './flue-captures.js';
import { legsOf } from './flue-legs.js';
import { pipePicture } from './flue-picture.js';
import { SheetForm } from './sheet.js';
import { unitLabel } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./fields.js').SheetField} SheetField */

const words = flueWords.pipe;
/** What every leg must tell, and what only a low point. */
const [MAIN, LOW] = [
  ['elevation_deg', 'length_m', 'bend_deg'],
  ['place', 'clear', 'drain_bore_mm'],
];
/** Told once for both pipes. */
const SHARED = ['boat', 'afloat', 'roll_period_s', 'averaged_s', 'roll_deg'];

/** What both pipes share goes to the other one. @param {Context} ctx @param {SheetForm} form */
export function share(ctx, form) {
  const other = ctx.plan.keptOf(form.name === 'exhaust' ? 'air_pipe' : 'exhaust');
  const { typed } = form.kept.record;
  const changed = SHARED.filter((name) => (other.record.typed[name] ?? '') !== (typed[name] ?? ''));
  for (const name of changed) other.record.typed[name] = typed[name] ?? '';
  if (changed.length) other.changed();
}

export class PipeForm extends SheetForm {
  /** What is said of each leg. @type {{ short: HTMLElement, told: HTMLElement }[]} */ #heads = [];

  /** @param {Context} ctx @param {string} name */
  constructor(ctx, name) {
    super(ctx, name, sheets[name]);
    group(this.rows);
    this.rowBody = (/** @type {SheetField[]} */ fields, /** @type {number} */ i) =>
      this.#leg(fields, i);
    const show = this.answers.show.bind(this.answers);
    // Legs together that are not proven to hold water say no more than each by itself.
    this.answers.show = (answers) =>
      show(answers?.filter((a) => !a.only_beyond || a.verdict === 'beyond') ?? null);
  }

  get rows() {
    return this.kept.record.rows;
  }

  /** Takes captures into new legs. @param {import('../types.js').Capture[]} captures */
  takeAll(captures) {
    for (const capture of captures) {
      const row = { typed: {}, half: {} };
      take(this.ctx, row, capture);
      this.rows.push(row);
    }
    this.#again();
  }

  #again() {
    group(this.rows);
    this.kept.changed(true);
    this.showRows();
    this.refresh();
  }

  /** A leg: how it drains, and its fields, open until they are told.
   * @param {SheetField[]} fields @param {number} i */
  #leg(fields, i) {
    /** @param {string[]} names */
    const some = (names) => fields.filter((f) => names.includes(f.entry.name)).map((f) => f.el);
    const row = this.rows[i];
    const source = h('p', { class: 'source' }, this.#source(row));
    const angle = fields.find((f) => f.entry.name === 'elevation_deg');
    angle?.input.addEventListener('input', () => {
      if (!row.typed.taken_at) return;
      forget(row);
      group(this.rows);
      this.kept.changed();
      say(source, '');
      this.refresh();
    });
    const short = h('summary', {});
    const told = h('p', { class: 'leg-state', role: 'status' });
    this.#heads[i] = { short, told };
    const low = h(
      'details',
      { open: LOW.some((name) => row.typed[name]) },
      h('summary', {}, words.low),
      h('p', { class: 'source' }, words.manualWhy),
      ...some(LOW),
      i ? button(words.earlier, 'move-leg', () => this.moveRow(i, -1), 'lesser') : null,
    );
    const body = h(
      'details',
      { class: 'leg', open: !MAIN.every((name) => row.typed[name]) },
      short,
      ...some(MAIN.slice(0, 1)),
      source,
      this.#byPhone(row),
      ...some(MAIN.slice(1)),
      low,
    );
    return [told, body];
  }

  /** How the angle was come by. @param {import('./record.js').Row} row */
  #source({ typed }) {
    if (!typed.taken_at) return '';
    const how = typed.view === 'moved' ? words.moved : /** @type {any} */ (words.view)[typed.view];
    return words.taken(clock(typed.taken_at), how, `${typed.u_deg}°`);
  }

  /** Captures that can be taken, newest first, and the way to read one now.
   * @param {import('./record.js').Row} row */
  #byPhone(row) {
    const { ctx } = this;
    const body = h('div', {});
    const fill = () => {
      const found = left(ctx).reverse();
      const one = (/** @type {import('../types.js').Capture} */ capture) => {
        const { check, view } = /** @type {NonNullable<ReturnType<typeof readingOf>>} */ (
          readingOf(ctx, capture)
        );
        const angle = formatAngle(Number(check.value));
        const how = /** @type {any} */ (words.view)[view];
        const label = words.take(clock(capture.taken_at), angle, how);
        const put = () => {
          take(ctx, row, capture);
          this.#again();
        };
        return button(label, 'take-capture', put, 'row');
      };
      body.replaceChildren(
        ...(found.length ? found.map(one) : [h('p', { class: 'source' }, words.none)]),
        button(words.go, 'read-leg', () => ctx.go('hold', { part: 'pipe' }), 'row'),
      );
    };
    const open = !row.typed.elevation_deg;
    const details = h('details', { open }, h('summary', {}, words.byPhone), body);
    details.addEventListener('toggle', () => details.open && fill());
    if (open) fill();
    return details;
  }

  /** @param {import('./flue-legs.js').LegTold[]} legs none while refused */
  tell(legs) {
    const unit = unitLabel('m', this.ctx.settings.system);
    for (const [i, { typed }] of this.rows.entries()) {
      const { short, told } = this.#heads[i];
      told.dataset.verdict = legs[i]?.verdict ?? 'none';
      const said = legs[i] ? [legs[i].word, legs[i].remedy] : [words.state.none];
      say(told, said.filter(Boolean).join('. '));
      const [length, bend] = [typed.length_m, typed.bend_deg].map((told) => told || '?');
      const angle = angleWords(typed) || '?';
      say(short, words.short(angle, length, unit, bend));
    }
  }
}

/** What is asked of the vehicle: of a boat whether she was afloat, and then how she rolled.
 * @param {PipeForm} form */
function vehicle(form) {
  const boat = form.group(words.afloat, ['afloat'], words.afloatWhy);
  const rolling = h(
    'div',
    {},
    ...['roll_period_s', 'averaged_s', 'roll_deg'].map((name) => form.field(name).el),
  );
  boat.append(rolling);
  const drain = form.group(words.manual, ['drain_in_manual'], words.manualWhy);
  const show = () => {
    const { typed } = form.kept.record;
    boat.hidden = typed.boat !== '1';
    rolling.hidden = typed.afloat !== '1';
    drain.hidden = typed.boat === '1';
  };
  show();
  return { els: [form.group(words.vehicle, ['boat']), boat, drain], show };
}

/** Captures that wait for legs, all in one tap. @param {PipeForm} form */
function waiting(form) {
  const el = h('div', {});
  const show = () => {
    const found = left(form.ctx);
    const all = () => form.takeAll(found);
    el.replaceChildren(
      ...(found.length ? [button(words.addAll(found.length), 'take-all', all, 'row')] : []),
    );
  };
  return { el, show };
}

/** @param {string} name */
export const pipeScreen = (name) => (/** @type {Context} */ ctx) => {
  const form = new PipeForm(ctx, name);
  const [title] = flueWords.sheets[name];
  const picture = h('div', {});
  const asked = vehicle(form);
  const captures = waiting(form);
  form.onWorked = (worked) => {
    share(ctx, form);
    asked.show();
    captures.show();
    const legs = legsOf(worked);
    form.tell(legs);
    picture.replaceChildren(...pipePicture(form, legs, title));
  };
  const el = frame(
    ctx,
    `flue_${name}`,
    title,
    [
      h('p', { class: 'caution' }, /** @type {any} */ (words.cautions)[name]),
      ...asked.els,
      h('p', {}, words.lead),
      picture,
      form.rowList(),
      captures.el,
      h('p', { class: 'source' }, words.levelled),
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
};
