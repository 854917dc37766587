// Times are those of the device. Where its clock was set back in the course of the job, they are out
// of order, and the record says so; what counts as newest goes by the order of taking.

/** @typedef {import('../plan/record.js').SheetRecord} SheetRecord */
/** @typedef {import('../types.js').Capture} Capture */
/** @typedef {import('../types.js').Job} Job */

/** @param {string[]} times in the order in which they came */
const isBack = (times) => times.some((time, i) => i > 0 && time < times[i - 1]);

/** Whether some time of a job lies before one that came earlier.
 * @param {Job} job @param {Capture[]} captures @param {SheetRecord[]} entries */
export function clockWentBack(job, captures, entries) {
  const marked = entries.some((e) => e.typed.clock_from);
  const ofEntry = (/** @type {SheetRecord} */ e) =>
    Object.values(e.ticks).some(({ at }) => isBack([job.created_at, at, e.changed_at]));
  const taken = isBack([job.created_at, ...captures.map((c) => c.taken_at)]);
  return marked || taken || isBack([job.created_at, job.changed_at]) || entries.some(ofEntry);
}
