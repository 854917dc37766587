// The parts' own outlines, drawn along their axis: tail at x = 0, head at x = 100, thickness
// about y = 0. Simple shapes of our own, as on a fitter's sketch.

import { s } from '../dom.js';

/** @param {string} d @param {string} [cls] */
const path = (d, cls = 'outline') => s('path', { d, class: cls });

/** @param {number} x @param {number} y */
const flow = (x, y) => s('path', { d: `M${x} ${y}h26m-8 -6l8 6l-8 6`, class: 'flow' });

const centre = () => path('M-6 0H112', 'centre');

/** @type {Record<string, () => SVGElement[]>} */
const OUTLINES = {
  heater_outlet: () => [
    path('M8 -22H80V22H8Z'),
    path('M80 -15H92L100 -11V11L92 15H80'),
    path('M8 -22L0 -16V16L8 22M20 -22V22'),
    path('M34 22V34M42 22V34M52 22V30H66V22'),
    centre(),
    flow(34, 0),
  ],
  // The heater seen along its length, its port towards x = 100.
  heater_port: () => [
    path('M14 -26H62V26H14Z'),
    path('M20 -18H56V18H20Z'),
    path('M62 -10H70V10H62M70 -4H100M70 4H100'),
    centre(),
  ],
  pump_outlet: () => [
    path('M0 -4H10V-8H18V8H10V4H0Z'),
    path('M18 -18H72V18H18ZM62 -18V18M66 -18V18'),
    path('M72 -10H84V10H72M84 -6H88L91 -4V4L88 6H84M91 -4H100V4H91'),
    centre(),
    flow(30, -26),
  ],
  filter_upright: () => [
    path('M0 -4H14V4H0ZM14 -17H20V17H14Z'),
    path('M20 -15H80V15H20ZM32 -15V15M44 -15V15M56 -15V15M68 -15V15'),
    path('M80 -17H86V17H80ZM86 -4H100V4H86Z'),
    centre(),
    flow(37, -24),
  ],
  pipe_fall: () => [
    path('M0 -22H5V22H0ZM5 -13H100M5 13H100'),
    path('M100 -13q-5 6.5 0 13t0 13', 'outline thin'),
    centre(),
    flow(38, 0),
  ],
  // The pump seen along its length, its bracket's flat towards x = 100.
  pump_roll: () => [
    s('circle', { cx: 34, cy: 0, r: 26, class: 'outline' }),
    s('circle', { cx: 34, cy: 0, r: 8, class: 'outline' }),
    path('M59 -8H84V-22H92V22H84V8H59'),
    centre(),
  ],
};

/** @param {string} check */
export function outline(check) {
  return s('g', { class: 'part' }, ...(OUTLINES[check]?.() ?? []));
}

/** Where the outline's own middle of rotation lies along its axis, in its units. */
export const PIVOT = { pump_roll: 34, heater_port: 38 };
