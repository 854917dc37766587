// Plays a recording as events: t_ms, ax, ay, az in mm/s² (specific force), other columns ignored.

import { send } from './phone.js';

/** @typedef {{ t_ms: number, a: [number, number, number] }} Row */

/** @param {string} csv @returns {Row[]} throws where there is nothing to play */
export function parseTrace(csv) {
  const lines = csv.split(/\r?\n/).filter((l) => l && !l.startsWith('#'));
  const names = lines.shift()?.split(',') ?? [];
  const at = ['t_ms', 'ax', 'ay', 'az'].map((n) => names.indexOf(n));
  if (at.includes(-1)) throw new Error('columns');
  const rows = lines.map((line) => {
    const cells = line.split(',');
    // An empty cell is no zero.
    const [t_ms, x, y, z] = at.map((i) => Number(cells[i]?.trim() || NaN));
    return { t_ms, a: /** @type {[number, number, number]} */ ([x / 1000, y / 1000, z / 1000]) };
  });
  const sound = rows.every(
    (r, i) => [r.t_ms, ...r.a].every(Number.isFinite) && (i === 0 || r.t_ms > rows[i - 1].t_ms),
  );
  if (rows.length < 2 || !sound) throw new Error('values');
  return rows;
}

/**
 * Sends every row at its time. No orientation: recordings of this kind have none.
 * @param {Row[]} rows
 * @param {{ rounding?: boolean, onRow?: (i: number) => void, onEnd?: () => void }} [options]
 * @returns {() => void} stops it
 */
export function replay(rows, { rounding = true, onRow, onEnd } = {}) {
  const start = performance.now() - rows[0].t_ms;
  let i = 0;
  const timer = setInterval(() => {
    // One event a turn, as browsers do; a late turn is followed by the next without delay.
    if (performance.now() - start < rows[i].t_ms) return;
    send(rows[i].a, null, { rounding });
    onRow?.(i);
    i += 1;
    if (i < rows.length) return;
    clearInterval(timer);
    onEnd?.();
  }, 4);
  return () => clearInterval(timer);
}
