// The pieces of the ducts: a list that is the drawing of its runs. Each piece opens to its fields;
// new ones join the end of their run.

import { button, h, say } from '../dom.js';
import { pick } from '../screens/frame.js';
import { sheets, words } from '../words/ducts.js';
import {
  boreOf,
  fieldsOf,
  inShort,
  KINDS,
  kindOf,
  OPEN_END,
  REDUCER,
  relabel,
} from './ducts-kinds.js';
import { heaterPicture, piecePicture } from './ducts-picture.js';
import { sumLines } from './ducts-sums.js';
import { SheetForm } from './sheet.js';
import { rounded, withU } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./fields.js').SheetField} SheetField */
/** @typedef {import('./record.js').Row} Row */

/** Fields of the fan's curve. */
export const FAN = /^(power|curve_density|flow_\d|pressure_\d)/;
/** Half width of a drawn pipe of the widest bore. */
const WIDEST = 22;

/** Where a piece tells what it is and costs.
 * @typedef {{ what: HTMLElement, told: HTMLElement, loss: HTMLElement, bar: HTMLElement,
 *   picture: HTMLElement, shape: string }} Head */

export class DuctForm extends SheetForm {
  /** Pieces whose fields are shown. @type {WeakSet<Row>} */ #open = new WeakSet();
  /** @type {Head[]} */ #heads = [];
  #comparing = false;
  #run = '0';
  #layout = '0';

  /** @param {Context} ctx */
  constructor(ctx) {
    super(ctx, 'ducts', sheets.ducts);
    this.rowsEl.classList.add('pieces');
    this.rowBody = (/** @type {SheetField[]} */ fields, /** @type {number} */ i) =>
      this.#piece(fields, i);
    this.heater = h('div', {});
    this.adding = h('div', {});
    this.sums = h('div', { class: 'sums', role: 'status' });
    this.fanHalves = h('div', {});
    const show = this.answers.show.bind(this.answers);
    // What is not there is not "not measured"; what is compared is shown beside what is judged.
    this.answers.show = (answers) =>
      show(
        answers
          ?.filter((a) => this.#isAsked(a.result))
          .map((a) => ({ ...a, alternative: false })) ?? null,
      );
    this.#showAdding();
  }

  get rows() {
    return this.kept.record.rows;
  }

  get comparing() {
    return this.#comparing || this.rows.some((row) => Number(row.typed.layout) > 0);
  }

  get hasFan() {
    return Boolean(this.kept.record.typed.flow_1_m3_per_h);
  }

  /** @param {import('./model.js').Result} result */
  #isAsked({ name }) {
    if (name.startsWith('fan_') && !this.hasFan) return false;
    return !/_b_/.test(name) || this.rows.some((row) => row.typed.layout === '2');
  }

  #showAdding() {
    const { choices } = this.words;
    const kinds = KINDS.map((_, kind) => {
      const picture = piecePicture(kind, 12, kind === REDUCER ? 7 : 12, this.#run === '1');
      const b = button('', `add-${KINDS[kind][0]}`, () => this.#add(kind), 'row');
      b.append(picture, choices?.kind[kind] ?? '');
      return b;
    });
    /** @param {string[]} labels */
    const numbered = (labels) =>
      labels.map((label, i) => /** @type {const} */ ([String(i), label]));
    const again = (/** @type {() => void} */ change) => {
      change();
      this.#showAdding();
    };
    this.adding.replaceChildren(
      h(
        'div',
        { class: 'card' },
        this.comparing && h('p', { class: 'source' }, words.compareWhy),
        pick(words.add, 'add-run', numbered(choices?.run ?? []), this.#run, (run) =>
          again(() => {
            this.#run = run;
          }),
        ),
        this.comparing &&
          pick(
            words.addIn,
            'add-layout',
            numbered(choices?.layout ?? []),
            this.#layout,
            (layout) => {
              this.#layout = layout;
            },
          ),
        h('div', { class: 'kinds' }, ...kinds),
      ),
    );
    if (this.comparing) return;
    const compare = () =>
      again(() => {
        this.#comparing = true;
        this.showRows();
        this.refresh();
      });
    this.adding.append(button(words.compare, 'compare', compare, 'row'));
  }

  /** Where a new piece goes: the end of its run, but air enters and leaves by an open end.
   * @param {number} kind */
  #placeFor(kind) {
    const { rows } = this;
    const returns = rows.filter((row) => row.typed.run === '0').length;
    if (this.#run === '0') return kind === OPEN_END ? 0 : returns;
    const last = rows.at(-1);
    const along = ['0', this.#layout].includes(last?.typed.layout ?? '');
    const open = last?.typed.run === '1' && along && kindOf(last) === OPEN_END;
    return open && kind !== OPEN_END ? rows.length - 1 : rows.length;
  }

  /** @param {number} kind */
  #add(kind) {
    const { rows } = this;
    const at = this.#placeFor(kind);
    const before = (rows[at - 1] ?? rows[at])?.typed;
    const ends = before?.kind === String(REDUCER) ? before.second_bore_mm : before?.bore_mm;
    const typed = { run: this.#run, layout: this.#layout, kind: String(kind), bore_mm: ends ?? '' };
    const row = { typed, half: {} };
    rows.splice(at, 0, row);
    this.#openOnly(row);
    this.#changed();
    const field = this.rowsEl.querySelector(`[data-row="${at}"] input`);
    field?.scrollIntoView({ block: 'center' });
  }

  /** @param {Row} row */
  #openOnly(row) {
    this.#open = new WeakSet([row]);
  }

  #changed() {
    this.kept.changed(true);
    this.showRows();
    this.refresh();
  }

  /** @param {number} i @param {number} by */
  #move(i, by) {
    this.moveRow(i, by);
    /** @type {HTMLElement | null} */ (
      this.rowsEl.querySelector(`[data-row="${i + by}"] summary`)
    )?.focus();
  }

  showRows() {
    this.#heads = [];
    super.showRows();
    // Half-widths of a piece stand with the piece, those of the fan with the fan.
    const isFan = (/** @type {SheetField} */ f) => FAN.test(f.entry.name);
    this.halves.replaceChildren(...halvesOf(this.fields.filter((f) => !isFan(f))));
    this.fanHalves.replaceChildren(...halvesOf(this.fields.filter(isFan)));
    for (const [i, fields] of this.rowFields.entries()) {
      const used = fieldsOf(this.rows[i], fields);
      this.rowsEl.children[i].querySelector('.own-halves')?.replaceChildren(...halvesOf(used));
    }
    const warm = this.rows.findIndex((row) => row.typed.run === '1');
    const before = warm < 0 ? null : this.rowsEl.children[warm];
    this.rowsEl.insertBefore(h('li', { class: 'between' }, this.heater), before);
  }

  /** @param {SheetField[]} fields @param {number} i */
  #piece(fields, i) {
    const row = this.rows[i];
    const [kind] = KINDS[kindOf(row)];
    const used = fieldsOf(row, fields);
    for (const field of used) {
      const own = words.ofKind[kind]?.[field.entry.name];
      if (own) relabel(field, own);
    }
    const rough = used.filter((f) => f.entry.name === 'roughness_mm');
    const layout = fields.filter((f) => f.entry.name === 'layout' && this.comparing);
    const head = {
      what: h('b', {}),
      told: h('small', {}),
      loss: h('b', {}),
      bar: h('i', { class: 'bar' }),
      picture: h('span', {}),
      shape: '',
    };
    this.#heads.push(head);
    const more = h(
      'details',
      {},
      h('summary', {}, words.edit),
      ...rough.map((f) => f.el),
      h('div', { class: 'own-halves' }),
    );
    const sameRun = (/** @type {number} */ by) => this.rows[i + by]?.typed.run === row.typed.run;
    const moves = [
      sameRun(-1) && button(words.up, 'move-up', () => this.#move(i, -1), 'lesser'),
      sameRun(1) && button(words.down, 'move-down', () => this.#move(i, 1), 'lesser'),
    ];
    const details = h(
      'details',
      { class: 'piece-fields', open: this.#open.has(row) },
      h(
        'summary',
        {},
        head.picture,
        h('span', { class: 'words' }, head.what, head.told),
        h('span', { class: 'costs' }, head.loss, head.bar),
      ),
      ...layout.map((f) => f.el),
      ...used.filter((f) => !rough.includes(f)).map((f) => f.el),
      more,
      h('nav', { class: 'row' }, ...moves),
    );
    details.addEventListener('toggle', () => {
      // One that was drawn anew meanwhile tells late.
      if (!details.isConnected) return;
      if (details.open) this.#open.add(row);
      else this.#open.delete(row);
    });
    return [details];
  }

  /** What the pieces cost, beside them. @param {import('./model.js').Worked | null} worked */
  tell(worked) {
    const results = worked && !worked.refused ? worked.results : [];
    const { system } = this.ctx.settings;
    const losses = this.rows.map((_, i) => {
      const told = results.filter((r) => r.row === i && r.unit === 'pa');
      return told.find((r) => !Number.isNaN(r.value));
    });
    const most = Math.max(...losses.map((r) => r?.value ?? 0));
    const bores = this.rows.flatMap(({ typed }) => [
      boreOf(typed.bore_mm),
      boreOf(typed.second_bore_mm),
    ]);
    const widest = Math.max(1, ...bores);
    for (const [i, head] of this.#heads.entries()) {
      const { typed } = this.rows[i];
      const w = (/** @type {string} */ bore) =>
        boreOf(bore) ? Math.max(6, (WIDEST * boreOf(bore)) / widest) : 14;
      const after = typed.second_bore_mm ? w(typed.second_bore_mm) : w(typed.bore_mm);
      this.#draw(head, [Number(typed.kind), w(typed.bore_mm), after, typed.run === '1']);
      const layout = this.comparing ? words.inLayout[Number(typed.layout)] : '';
      say(head.what, `${i + 1} ${layout}${this.words.choices?.kind[Number(typed.kind)]}`);
      say(head.told, inShort(this.rows[i], this.rowFields[i], system));
      const loss = losses[i];
      say(head.loss, loss ? rounded(loss, system) : '');
      head.bar.style.width = `${loss && most > 0 ? Math.max(0, (100 * loss.value) / most) : 0}%`;
      head.bar.classList.toggle('most', Boolean(loss && loss.value === most));
    }
    const outlet = results.find((r) => r.name === 'outlet_air_celsius');
    this.heater.replaceChildren(heaterPicture(words.heater, outlet ? withU(outlet, system) : ''));
    const lines = sumLines(this, results);
    this.sums.replaceChildren(...lines.map((line) => h('p', { class: 'summary' }, line)));
    // A complaint must be seen.
    for (const [i, fields] of this.rowFields.entries()) {
      const details = this.rowsEl.querySelector(`[data-row="${i}"] .piece-fields`);
      if (details && fields.some((f) => !f.message.hidden)) details.setAttribute('open', '');
    }
  }

  /** Draws a piece where its drawing changes: a finger may lie on it while a field is left.
   * @param {Head} head @param {[number, number, number, boolean]} shape */
  #draw(head, shape) {
    if (head.shape === String(shape)) return;
    head.shape = String(shape);
    head.picture.replaceChildren(piecePicture(...shape));
  }
}

/** @param {SheetField[]} fields */
const halvesOf = (fields) => fields.map((f) => f.halfRow()).filter((el) => el !== null);
