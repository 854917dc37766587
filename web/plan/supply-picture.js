// The circuit with the voltages lost along it, and the bank with its take-off. Not to scale.

import { s } from '../dom.js';
import { words } from '../words/supply.js';
import { unitLabel, valueAndU, withUnit } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** @typedef {import('./model.js').Worked} Worked */

const t = words.picture;
const [LEFT, RIGHT, TOP, BOTTOM] = [34, 296, 56, 190];

/** A battery from its upper to its lower post, two cells of it. @param {number} x @param {number} y */
const battery = (x, y) => [
  s('path', { d: `M${x - 20} ${y}h40M${x - 20} ${y + 20}h40`, class: 'wire' }),
  s('path', { d: `M${x - 10} ${y + 10}h20M${x - 10} ${y + 30}h20`, class: 'wire thick' }),
];

/** What a result is, as shown; a question mark where it is not told.
 * @param {SheetForm} form @param {Worked | null} worked @param {string} name */
function told(form, worked, name) {
  const result = worked && !worked.refused && worked.results.find((r) => r.name === name);
  if (!result || Number.isNaN(result.value)) return '?';
  const { value, u, unit } = result;
  const { system } = form.ctx.settings;
  return `${valueAndU(value, u, unit, system).value} ${unitLabel(unit, system)}`;
}

/** A number as typed. @param {SheetForm} form @param {string} name */
function typed(form, name) {
  const { entry } = form.field(name);
  const x = form.x[form.entry.inputs.indexOf(entry)] ?? NaN;
  return Number.isNaN(x) ? '?' : withUnit(x, entry.unit, form.ctx.settings.system);
}

/** A number with its name above it. @param {number} x @param {number} y @param {string} name
 * @param {string} value @param {string} [anchor] */
const label = (x, y, name, value, anchor = 'middle') => [
  s('text', { x, y: y - 18, class: 'small', 'text-anchor': anchor }, name),
  s('text', { x, y, 'text-anchor': anchor, 'data-of': name }, value),
];

/** Earth: the body at the end of a lead. @param {number} x @param {number} y */
const earth = (x, y) => s('path', { d: `M${x} ${y}v10m-12 0h24m-19 5h14m-9 5h4`, class: 'wire' });

/** @param {SheetForm} form @param {Worked | null} worked */
export function circuitPicture(form, worked) {
  const byBody = form.field('back_by').input.value === '1';
  const answers = worked && !worked.refused ? worked.answers : [];
  const atHeater = answers.find((a) => a.result.name === 'heater_start_v');
  const verdict = atHeater && !Number.isNaN(atHeater.result.value) ? atHeater.verdict : 'unchecked';
  const of = (/** @type {string} */ name) => told(form, worked, name);
  const middle = (LEFT + RIGHT) / 2;
  const back = byBody
    ? [
        s('path', { d: `M${RIGHT} 146V${BOTTOM}H228M112 ${BOTTOM}H${LEFT}V138`, class: 'wire' }),
        earth(228, BOTTOM),
        earth(112, BOTTOM),
      ]
    : [s('path', { d: `M${RIGHT} 146V${BOTTOM}H${LEFT}V138`, class: 'wire' })];
  return s(
    'svg',
    { viewBox: '0 0 340 222', class: 'plan-picture circuit', role: 'img', 'aria-label': t.circuit },
    s('path', { d: `M${LEFT} 108V${TOP}H${RIGHT}V90`, class: 'wire' }),
    s('path', { d: `M64 ${TOP - 7}h34v14h-34z`, class: 'outline thin' }),
    ...battery(LEFT, 108),
    ...back,
    s('path', { d: `M${RIGHT - 40} 90h80v56h-80z`, class: 'outline' }),
    s('path', { d: `M${RIGHT - 40} 153h80`, class: 'dimension', 'data-verdict': verdict }),
    ...label(RIGHT, 132, t.heater, of('heater_start_v')),
    ...label(LEFT + 28, 132, t.battery, typed(form, 'start_supply_v'), 'start'),
    ...label(81, TOP - 14, t.joints, of('start_joints_v')),
    ...label(210, TOP - 14, t.out, of('start_out_v')),
    ...label(middle, BOTTOM - 10, byBody ? t.body : t.back, of('start_back_v')),
    ...label(middle + 12, 120, t.lost, of('start_drop_v')),
    s(
      'text',
      { x: middle + 12, y: 138, class: 'small', 'text-anchor': 'middle' },
      of('start_drop_percent'),
    ),
  );
}

/** A voltage between two posts, as a length between two arrows. @param {number} x @param {number} top
 * @param {number} bottom @param {string} verdict */
const between = (x, top, bottom, verdict) =>
  s('path', {
    d: `M${x} ${top}V${bottom}m-5 -9l5 9l5 -9M${x - 5} ${top + 9}l5 -9l5 9`,
    class: 'dimension',
    'data-verdict': verdict,
  });

/** @param {SheetForm} form @param {Worked | null} worked */
export function bankPicture(form, worked) {
  const isPair = form.field('nominal').input.value === '1';
  const answers = worked && !worked.refused ? worked.answers : [];
  const isWrong = answers.some((a) => a.result.name === 'missed_v' && a.verdict === 'beyond');
  const of = (/** @type {string} */ name) => typed(form, name);
  const [x, top, bottom] = [124, 14, 166];
  const posts = isPair ? [34, 108] : [70];
  const ends = [top, ...posts.flatMap((y) => [y, y + 30]), bottom];
  const lead = (/** @type {number} */ i) => `M${x} ${ends[2 * i]}V${ends[2 * i + 1]}`;
  const never = [
    s('path', { d: `M${x} 86H178`, class: 'centre' }),
    s('path', { d: 'M171 79l14 14m0 -14l-14 14', class: 'wire' }),
    s('text', { x: 192, y: 91, class: 'small' }, t.never),
  ];
  return s(
    'svg',
    { viewBox: '0 0 340 180', class: 'plan-picture circuit', role: 'img', 'aria-label': t.bank },
    s('path', { d: [...posts, bottom].map((_, i) => lead(i)).join(''), class: 'wire' }),
    ...posts.flatMap((y) => battery(x, y)),
    ...(isPair ? never : []),
    s('path', { d: `M${x} ${top}H266M${x} ${bottom}H266`, class: 'wire' }),
    between(266, top, bottom, isWrong ? 'beyond' : 'unchecked'),
    ...label(274, 100, t.takeOff, of('take_off_v'), 'start'),
    s('path', { d: `M14 ${top}H${x}M14 ${bottom}H${x}`, class: 'centre' }),
    between(20, top, bottom, 'unchecked'),
    ...label(28, 100, t.whole, of('bank_v'), 'start'),
  );
}
