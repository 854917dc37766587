// The drawing that is the instrument: the part at the angle it really has, the permitted sector
// hatched, the limit a line with its number, the reading a wedge as wide as its interval.
// It draws what core says; it compares nothing.

import { s, set } from '../dom.js';
import { outline, PIVOT } from './outlines.js';

const RAD = Math.PI / 180;
const WIDTH = 340;
const HEIGHT = 264;
/** Above it, for the stroke of a wedge that points straight up. */
const MARGIN = 10;
/** Of the wedge: just outside the part. */
const RADIUS = 131;
/** Of the sector: it runs off the paper, as hatching does. */
const SECTOR = 210;
const HATCH_GAP = 9;
/** Room that a limit's number takes in the larger of its two sizes. */
const NUMBER = 138;
let serial = 0;

/** @typedef {import('../types.js').CheckEntry} CheckEntry */
/**
 * @typedef {object} Shown
 * @property {number} value NaN for no reading
 * @property {number} u
 * @property {number} low NaN where there is none
 * @property {number} high
 * @property {number} preferredLow
 * @property {number} preferredHigh
 * @property {import('../types.js').Verdict} verdict
 * @property {(deg: number) => string} label
 */

/**
 * Direction on the paper of a value, degrees anticlockwise from right.
 * @param {CheckEntry['quantity']} quantity @param {number} value
 */
export function paperAngle(quantity, value) {
  if (quantity === 'elevation') return value;
  return 90 - value;
}

/** @param {number} cx @param {number} cy @param {number} r @param {number} deg */
function at(cx, cy, r, deg) {
  return [cx + r * Math.cos(deg * RAD), cy - r * Math.sin(deg * RAD)];
}

/** @param {number} v */
const n1 = (v) => v.toFixed(1);

/** A sector between two directions, anticlockwise from `from` to `to`.
 * @param {number} cx @param {number} cy @param {number} r @param {number} from @param {number} to */
function sector(cx, cy, r, from, to) {
  const [x1, y1] = at(cx, cy, r, from);
  const [x2, y2] = at(cx, cy, r, to);
  const large = to - from > 180 ? 1 : 0;
  return `M${n1(cx)} ${n1(cy)}L${n1(x1)} ${n1(y1)}A${r} ${r} 0 ${large} 0 ${n1(x2)} ${n1(y2)}Z`;
}

export class AngleDrawing {
  /** @param {CheckEntry} check @param {{ level: string, up: string }} words */
  constructor(check, words) {
    this.check = check;
    const full = check.quantity === 'roll';
    this.cx = full ? WIDTH / 2 : 74;
    this.cy = HEIGHT / 2;
    const id = `hatch${++serial}`;
    this.permitted = s('path', { class: 'permitted', fill: `url(#${id})` });
    this.preferred = s('path', { class: 'preferred' });
    this.limits = s('g', { class: 'limit-lines' });
    this.wedge = s('path', { class: 'wedge' });
    const pivot = PIVOT[/** @type {keyof typeof PIVOT} */ (check.id)] ?? 0;
    this.body = outline(check.id);
    this.pivot = pivot;
    const reference = full
      ? s('path', { d: `M${this.cx} ${HEIGHT - 8}V8`, class: 'level' })
      : s('path', { d: `M8 ${this.cy}H${WIDTH - 8}`, class: 'level' });
    const name = full
      ? s('text', { x: this.cx + 6, y: 18, class: 'small' }, words.up)
      : s('text', { x: 10, y: this.cy + 18, class: 'small' }, words.level);
    this.el = s(
      'svg',
      {
        viewBox: `0 ${-MARGIN} ${WIDTH} ${HEIGHT + 2 * MARGIN}`,
        class: 'angle-drawing',
        'aria-hidden': 'true',
      },
      s(
        'defs',
        {},
        s(
          'pattern',
          {
            id,
            width: HATCH_GAP,
            height: HATCH_GAP,
            patternUnits: 'userSpaceOnUse',
            patternTransform: 'rotate(45)',
          },
          s('path', { d: `M0 0V${HATCH_GAP}`, class: 'hatch' }),
        ),
      ),
      this.permitted,
      this.preferred,
      reference,
      name,
      this.limits,
      this.wedge,
      this.body,
      s('circle', { cx: this.cx, cy: this.cy, r: 4, class: 'pivot' }),
    );
    this.shownLimits = '';
  }

  /** @param {number} low @param {number} high @returns {[number, number]} */
  #span(low, high) {
    const { quantity, low_deg, high_deg } = this.check;
    const from = paperAngle(quantity, Number.isNaN(low) ? low_deg : low);
    const to = paperAngle(quantity, Number.isNaN(high) ? high_deg : high);
    return from < to ? [from, to] : [to, from];
  }

  /** @param {Shown} shown */
  #drawLimits(shown) {
    const key = [shown.low, shown.high, shown.preferredLow, shown.preferredHigh].join();
    if (key === this.shownLimits) return;
    this.shownLimits = key;
    const { cx, cy } = this;
    const entered = !Number.isNaN(shown.low) || !Number.isNaN(shown.high);
    set(this.permitted, {
      d: entered ? sector(cx, cy, SECTOR, ...this.#span(shown.low, shown.high)) : '',
    });
    const wanted = !Number.isNaN(shown.preferredLow) || !Number.isNaN(shown.preferredHigh);
    const [from, to] = this.#span(shown.preferredLow, shown.preferredHigh);
    const [x1, y1] = at(cx, cy, RADIUS - 5, from);
    const [x2, y2] = at(cx, cy, RADIUS - 5, to);
    const r = RADIUS - 5;
    set(this.preferred, {
      d: wanted ? `M${n1(x1)} ${n1(y1)}A${r} ${r} 0 0 0 ${n1(x2)} ${n1(y2)}` : '',
    });
    this.limits.replaceChildren(
      ...[shown.low, shown.high].flatMap((limit, i) => {
        if (Number.isNaN(limit)) return [];
        const deg = paperAngle(this.check.quantity, limit);
        const [x, y] = at(cx, cy, SECTOR, deg);
        const side = deg === 90 ? 0 : Math.sign(90 - deg);
        // Along the line as far as the paper allows, beside it where it is steep.
        const reach = Math.min(158, (cy - 34) / Math.max(0.01, Math.abs(Math.sin(deg * RAD))));
        const [tx, ty] = at(cx, cy, reach, deg);
        const sign = i === 0 ? '≥' : '≤';
        const steep = Math.abs(Math.cos(deg * RAD)) < 0.5;
        const along = tx + (steep ? 8 * side : 0);
        return [
          s('path', { d: `M${cx} ${cy}L${n1(x)} ${n1(y)}`, class: 'limit' }),
          s(
            'text',
            {
              x: n1(side < 0 ? Math.max(along, NUMBER) : Math.min(along, WIDTH - NUMBER)),
              y: n1(ty - 8),
              class: 'number',
              'text-anchor': side < 0 ? 'end' : 'start',
            },
            `${sign} ${shown.label(limit)}`,
          ),
        ];
      }),
    );
  }

  /** @param {Shown} shown */
  draw(shown) {
    this.#drawLimits(shown);
    const lost = Number.isNaN(shown.value);
    this.el.classList.toggle('lost', lost);
    this.el.dataset.verdict = lost ? '' : shown.verdict;
    const deg = paperAngle(this.check.quantity, lost ? 0 : shown.value);
    const shift = this.pivot ? ` translate(${-this.pivot} 0)` : '';
    set(this.body, {
      transform: `translate(${this.cx} ${this.cy}) rotate(${n1(-deg)}) scale(1.08)${shift}`,
    });
    if (lost) {
      set(this.wedge, { d: '' });
      return;
    }
    const { cx, cy } = this;
    const u = Math.min(shown.u, 90);
    const [x1, y1] = at(cx, cy, RADIUS, deg - u);
    const [x2, y2] = at(cx, cy, RADIUS, deg + u);
    const [x3, y3] = at(cx, cy, RADIUS - 20, deg + u);
    const [x4, y4] = at(cx, cy, RADIUS - 20, deg - u);
    set(this.wedge, {
      d: `M${n1(x4)} ${n1(y4)}L${n1(x1)} ${n1(y1)}A${RADIUS} ${RADIUS} 0 0 0 ${n1(x2)} ${n1(y2)}L${n1(x3)} ${n1(y3)}`,
    });
  }
}

/** The same interval on a short scale, permitted side hatched: for differences too fine to see in
 * a wedge. */
export class Scale {
  /** @param {CheckEntry} check */
  constructor(check) {
    this.check = check;
    const id = `hatch${++serial}`;
    this.permitted = s('rect', { y: 26, height: 12, fill: `url(#${id})` });
    this.ticks = s('g', { class: 'ticks' });
    this.limits = s('g', {});
    this.bar = s('path', { class: 'bar' });
    this.el = s(
      'svg',
      { viewBox: '0 0 340 58', class: 'scale', 'aria-hidden': 'true' },
      s(
        'defs',
        {},
        s(
          'pattern',
          {
            id,
            width: 7,
            height: 7,
            patternUnits: 'userSpaceOnUse',
            patternTransform: 'rotate(45)',
          },
          s('path', { d: 'M0 0V7', class: 'hatch' }),
        ),
      ),
      this.permitted,
      s('path', { d: 'M6 38H334', class: 'axis' }),
      this.ticks,
      this.limits,
      this.bar,
    );
    this.drawn = '';
  }

  /** @param {Shown} shown */
  draw(shown) {
    this.el.dataset.verdict = Number.isNaN(shown.value) ? '' : shown.verdict;
    const lost = Number.isNaN(shown.value);
    this.el.classList.toggle('lost', lost);
    if (lost) return;
    // A window of 16° that holds the reading, moved in whole steps of 5° so that it stands still.
    const span = 16;
    const near = [shown.low, shown.high].filter((l) => Math.abs(l - shown.value) < span * 0.7);
    const middle = near.length ? (near[0] + shown.value) / 2 : shown.value;
    const from = Math.round((middle - span / 2) / 2) * 2;
    /** @param {number} deg */
    const x = (deg) => 6 + ((deg - from) / span) * 328;
    const key = [from, shown.low, shown.high].join();
    if (key !== this.drawn) {
      this.drawn = key;
      const left = Math.max(6, Number.isNaN(shown.low) ? 6 : x(shown.low));
      const right = Math.min(334, Number.isNaN(shown.high) ? 334 : x(shown.high));
      const entered = !Number.isNaN(shown.low) || !Number.isNaN(shown.high);
      set(this.permitted, { x: n1(left), width: n1(entered ? Math.max(0, right - left) : 0) });
      const ticks = [];
      for (let d = Math.ceil(from); d <= from + span; d += 1) {
        const big = d % 5 === 0;
        ticks.push(s('path', { d: `M${n1(x(d))} 38v${big ? 7 : 4}`, class: 'axis' }));
        if (big && x(d) > 20 && x(d) < 320)
          ticks.push(
            s(
              'text',
              { x: n1(x(d)), y: 56, class: 'small', 'text-anchor': 'middle' },
              `${d}°`.replace('-', '−'),
            ),
          );
      }
      this.ticks.replaceChildren(...ticks);
      this.limits.replaceChildren(
        ...[shown.low, shown.high]
          .filter((l) => x(l) >= 6 && x(l) <= 334)
          .map((l) => s('path', { d: `M${n1(x(l))} 4V44`, class: 'limit' })),
      );
    }
    const low = Math.max(2, x(shown.value - shown.u));
    const high = Math.min(338, x(shown.value + shown.u));
    set(this.bar, { d: `M${n1(low)} 15H${n1(high)}` });
  }
}
