// First open: what this is, what comes first, and the tap that asks for the sensors.

import { opening } from '../carrier.js';
import { button, h } from '../dom.js';
import { LANGUAGES, nameOf } from '../locale.js';
import { askPermission } from '../phone.js';
import { prepare, unlock } from '../sound.js';
import { frame } from './frame.js';

/** The job that is open, and a STOP that is on in it: the first thing to know after a break.
 * @param {import('../context.js').Context} ctx */
function openJob(ctx) {
  const t = ctx.text.start;
  const { id, vehicle } = ctx.job;
  const el = h('div', {}, vehicle && h('p', {}, `${t.openJob}: `, h('b', {}, vehicle)));
  const tell = (/** @type {any[]} */ entries) => {
    const { stops = [] } = entries.find(({ key }) => key === 'start') ?? {};
    if (stops.every((/** @type {any} */ s) => s.went_on)) return;
    const on = button(ctx.text.parts.toStop, 'to-stop', () => ctx.go('start_up'), 'row');
    el.append(h('p', { class: 'trouble', role: 'alert' }, t.stopOn), on);
  };
  ctx.store?.entries(id).then(tell, () => {});
  return el;
}

/** @param {import('../context.js').Context} ctx */
export function start(ctx) {
  const t = ctx.text.start;
  const names = LANGUAGES.map(nameOf).join(' · ');
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  /** @param {string} words */
  const complain = (words) => {
    trouble.textContent = words;
    trouble.hidden = words === '';
  };
  const allow = () => {
    // First thing in the tap: browsers ask inside it or not at all.
    const answer = askPermission();
    unlock();
    complain('');
    answer.then((a) => {
      if (a !== 'granted') return complain(ctx.text.sensors[a]);
      ctx.useSensors();
      ctx.go('parts');
    });
  };
  const el = frame(
    ctx,
    'start',
    ctx.text.name,
    [
      openJob(ctx),
      h('p', { class: 'lead' }, t.lead),
      trouble,
      h('h2', {}, t.first),
      h('ul', { class: 'cautions' }, ...t.cautions.map((c) => h('li', {}, c))),
      opening(ctx),
      h(
        'nav',
        { class: 'row' },
        button(t.tape, 'tape', () => ctx.go('parts'), 'row'),
        button(t.jobs, 'jobs', () => ctx.go('jobs'), 'lesser'),
        button(t.captures, 'captures', () => ctx.go('captures'), 'lesser'),
        button(t.limits, 'limits', () => ctx.go('limits'), 'lesser'),
        button(`${t.settings}: ${names}`, 'settings', () => ctx.go('settings'), 'lesser'),
        button(ctx.text.guides.minutes, 'minutes', () => ctx.go('minutes'), 'lesser'),
      ),
      h('p', { class: 'source' }, `${t.version} ${ctx.version}`),
    ],
    [
      button(t.tryout, 'tryout', () => ctx.startTryout(), 'lesser'),
      button(t.allow, 'allow', allow),
    ],
  );
  return Object.assign(el, { enter: () => setTimeout(prepare, 300) });
}
