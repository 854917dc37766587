// The pieces of the ducts: a list that is the drawing of its runs. Each piece opens to its fields;
// new ones join the end of their run.

import { button, h, say } from '../dom.js';
import { pick } from '../screens/frame.js';
import { sheets, words } from '../words/ducts.js';
import { heaterPicture, piecePicture } from './ducts-picture.js';
import { SheetForm } from './sheet.js';
import { unitLabel, valueAndU } from './units.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('./fields.js').SheetField} SheetField */
/** @typedef {import('./record.js').Row} Row */

/** Core's names of the kinds, in their order, and the fields that each has a use for. */
const KINDS = /** @type {const} */ ([
  ['straight', ['bore_mm', 'length_m']],
  ['bend', ['bore_mm', 'angle_deg', 'radius_ratio']],
  ['mitre', ['bore_mm', 'angle_deg']],
  ['flexible', ['bore_mm', 'length_m', 'share', 'angle_deg', 'radius_ratio']],
  ['open_end', ['bore_mm', 'share']],
  ['reducer', ['bore_mm', 'second_bore_mm', 'length_m']],
  ['branch', ['bore_mm', 'share', 'angle_deg', 'second_bore_mm']],
]);
const OPEN_END = 4;
const REDUCER = 5;
const ROUGH = ['straight', 'bend', 'flexible', 'reducer'];
/** Fields of the fan's curve. */
export const FAN = /^(power|curve_density|flow_\d|pressure_\d)/;
/** Half width of a drawn pipe of the widest bore. */
const WIDEST = 22;

/** @param {Row} row */
const kindOf = (row) => Number(row.typed.kind);

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
    // What is not there is not "not measured".
    this.answers.show = (answers) => show(answers?.filter((a) => this.#isAsked(a.result)) ?? null);
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
    const open =
      last?.typed.run === '1' && last.typed.layout === this.#layout && kindOf(last) === OPEN_END;
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
      const used = this.#fieldsOf(this.rows[i], fields);
      this.rowsEl.children[i].querySelector('.own-halves')?.replaceChildren(...halvesOf(used));
    }
    const warm = this.rows.findIndex((row) => row.typed.run === '1');
    const before = warm < 0 ? null : this.rowsEl.children[warm];
    this.rowsEl.insertBefore(h('li', { class: 'between' }, this.heater), before);
  }

  /** Fields that a piece's kind has a use for. @param {Row} row @param {SheetField[]} fields */
  #fieldsOf(row, fields) {
    const [kind, used] = KINDS[kindOf(row)];
    const names = [...used, ...(ROUGH.includes(kind) ? ['roughness_mm'] : [])];
    return names.flatMap((name) => fields.filter((f) => f.entry.name === name));
  }

  /** @param {SheetField[]} fields @param {number} i */
  #piece(fields, i) {
    const row = this.rows[i];
    const [kind] = KINDS[kindOf(row)];
    const used = this.#fieldsOf(row, fields);
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
      const [what, told] = this.#what(i);
      say(head.what, what);
      say(head.told, told);
      const loss = losses[i];
      say(head.loss, loss ? rounded(loss, system) : '');
      head.bar.style.width = `${loss && most > 0 ? Math.max(0, (100 * loss.value) / most) : 0}%`;
      head.bar.classList.toggle('most', Boolean(loss && loss.value === most));
    }
    const outlet = results.find((r) => r.name === 'outlet_air_celsius');
    this.heater.replaceChildren(heaterPicture(words.heater, outlet ? withU(outlet, system) : ''));
    this.#sum(results);
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

  /** A piece in short, as it was typed. @param {number} i */
  #what(i) {
    const { typed } = this.rows[i];
    const { choices } = this.words;
    const layout =
      this.comparing && typed.layout !== '0' ? ['', 'A ', 'B '][Number(typed.layout)] : '';
    const told = this.#fieldsOf(this.rows[i], this.rowFields[i])
      .filter((f) => f.row.typed[f.entry.name])
      .map(
        (f) =>
          `${f.row.typed[f.entry.name]}${shortUnit(f, KINDS[kindOf(this.rows[i])][0], this.ctx.settings.system)}`,
      );
    return [`${i + 1} ${layout}${choices?.kind[Number(typed.kind)]}`, told.join(' · ')];
  }

  /** Both layouts in a line each, and which costs less. @param {import('./model.js').Result[]} results */
  #sum(results) {
    const { system } = this.ctx.settings;
    const of = (/** @type {string} */ name) =>
      results.find((r) => r.name === name && r.row === null && !Number.isNaN(r.value));
    const lines = ['a', 'b'].flatMap((layout) => {
      const [loss, dearest] = [of(`loss_${layout}_pa`), of(`dearest_${layout}`)];
      if (!loss || !dearest) return [];
      const row = dearest.value - 1;
      const its = results.find((r) => r.row === row && r.name === `piece_${layout}_pa`);
      const kind = this.words.choices?.kind[kindOf(this.rows[row])];
      return words.dearest(
        this.comparing ? words.layout(layout.toUpperCase()) : '',
        withU(loss, system),
        `${row + 1} ${kind}`,
        its ? rounded(its, system) : '',
      );
    });
    const apart = of('loss_difference_pa');
    if (apart) lines.push(differ(apart, system));
    if (!this.rows.length) lines.push(words.noPieces);
    this.sums.replaceChildren(...lines.map((line) => h('p', { class: 'summary' }, line)));
  }
}

/** @param {SheetField[]} fields */
const halvesOf = (fields) => fields.map((f) => f.halfRow()).filter((el) => el !== null);

/** Which layout costs less, where it is sure. @param {import('./model.js').Result} apart
 * @param {'metric' | 'us'} system */
function differ(apart, system) {
  if (Math.abs(apart.value) <= apart.u) return words.differOpen;
  const by = withU({ ...apart, value: Math.abs(apart.value) }, system);
  return words.differ(apart.value > 0 ? 'A' : 'B', by);
}

/** A value and its U. @param {import('./model.js').Result} r @param {'metric' | 'us'} system */
function withU({ value, u, unit }, system) {
  const shown = valueAndU(value, u, unit, system);
  return `${shown.value} ${shown.u}`;
}

/** A value alone, as exact as its U lets it be. @param {import('./model.js').Result} r
 * @param {'metric' | 'us'} system */
const rounded = ({ value, u, unit }, system) =>
  `${valueAndU(value, u, unit, system).value} ${unitLabel(unit, system)}`;

/** A diameter for the drawing. @param {string | undefined} typed */
const boreOf = (typed) => Number.parseFloat((typed ?? '').replace(',', '.')) || 0;

/** @param {SheetField} field @param {string} kind @param {'metric' | 'us'} system */
function shortUnit({ entry }, kind, system) {
  if (entry.unit === 'deg') return '°';
  if (entry.name === 'radius_ratio') return ' D';
  if (entry.name === 'share') return ` ${words.shares[kind]}`;
  return entry.unit === 'ratio' ? '' : ` ${unitLabel(entry.unit, system)}`;
}

/** @param {SheetField} field @param {[string, string]} words */
function relabel(field, [label, hint]) {
  field.words.label = label;
  const el = /** @type {HTMLElement} */ (field.el.querySelector('label'));
  const [name, unit] = [el.querySelector('b'), el.childNodes[1]];
  if (name) name.textContent = label;
  const plain = unit?.nodeType === Node.TEXT_NODE ? [unit] : [];
  el.replaceChildren(...(name ? [name] : []), ...plain, h('small', {}, hint));
}
