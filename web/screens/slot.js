// One check's place on the measuring screen: drawing, number, verdict, scale; under them the same
// check in the vehicle. It stands still: only texts and drawings inside it change.

import { h, say } from '../dom.js';
import { AngleDrawing, Scale } from '../drawings/angle.js';
import { uText, valueText, verdictNote, verdictWord } from '../sentences.js';
import { formatAngle } from '../units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../sentences.js').CheckView} CheckView */
/** @typedef {import('../sentences.js').BothViews} BothViews */

/** A number with its U, a verdict, a note. */
class Answer {
  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    this.value = h('span', { class: 'value' });
    this.u = h('span', { class: 'u' });
    this.number = h('p', { class: 'number' }, this.value, ' ', this.u);
    this.verdict = h('strong', { class: 'verdict' });
    this.note = h('span', { class: 'note' });
  }

  /** @param {CheckView | null} view @param {string} word the word without one */
  show(view, word) {
    say(this.value, view ? valueText(this.ctx, view) : '');
    say(this.u, view ? uText(this.ctx, view) : '');
    const verdict = view ? verdictWord(this.ctx, view) : word;
    say(this.verdict, verdict);
    this.verdict.style.setProperty('--letters', String(Math.max(1, verdict.length)));
    say(this.note, view ? verdictNote(this.ctx, view) : '');
    this.verdict.dataset.verdict = view ? view.verdict : 'lost';
    this.verdict.dataset.basis = view?.basis ?? '';
  }
}

export class Slot {
  /** @param {Context} ctx @param {string} id @param {boolean} withVehicle whether a level was read */
  constructor(ctx, id, withVehicle) {
    this.ctx = ctx;
    this.id = id;
    const check = ctx.engine.catalogue.checks.find((c) => c.id === id);
    if (!check) throw new Error(id);
    this.drawing = new AngleDrawing(check, ctx.text.live);
    this.scale = new Scale(check);
    this.parked = new Answer(ctx);
    this.inVehicle = new Answer(ctx);
    const { line } = this;
    const equal = withVehicle && line?.holds_in_operation === true;
    this.why = h('span', { class: 'why' });
    const name = /** @type {Record<string, string>} */ (ctx.text.checks)[id];
    const { parked, inVehicle } = this;
    this.el = h(
      'div',
      { class: equal ? 'slot equal' : 'slot', 'data-check': id },
      this.drawing.el,
      h(
        'div',
        { class: 'says' },
        h('span', { class: 'name' }, name),
        parked.number,
        parked.verdict,
        parked.note,
        this.scale.el,
      ),
      withVehicle &&
        h(
          'div',
          { class: 'in-vehicle' },
          h('span', {}, ctx.text.level.inVehicle),
          inVehicle.number,
          inVehicle.verdict,
          this.why,
        ),
    );
  }

  get line() {
    return this.ctx.limits.lines.find((l) => l.check === this.id);
  }

  /** @param {BothViews | null} views @param {string} reason the word when there is no reading
   * @param {string} refused why there is no answer in the vehicle */
  show(views, reason, refused) {
    const shown = { ...(views?.parked ?? this.#nothing()), label: formatAngle };
    this.drawing.draw(shown);
    this.scale.draw(shown);
    this.parked.show(views?.parked ?? null, reason);
    this.inVehicle.show(views?.inVehicle ?? null, '');
    say(this.why, refused || views?.working || '');
  }

  /** No reading: no number; the limit stays drawn. */
  #nothing() {
    const { line } = this;
    return {
      value: NaN,
      u: NaN,
      low: line?.low_deg ?? NaN,
      high: line?.high_deg ?? NaN,
      preferredLow: line?.preferred_low_deg ?? NaN,
      preferredHigh: line?.preferred_high_deg ?? NaN,
      verdict: /** @type {const} */ ('none'),
    };
  }
}
