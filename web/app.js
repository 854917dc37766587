// Puts the page together: loads the core and the store, lists the screens of the first load.

import { keepUpToDate } from './carrier.js';
import { Context } from './context.js';
import { button, h, say } from './dom.js';
import { loadEngine } from './engine.js';
import { language } from './locale.js';
import { captured } from './screens/captured.js';
import { captures } from './screens/captures.js';
import { details } from './screens/details.js';
import { ends } from './screens/ends.js';
import { hold } from './screens/hold.js';
import { level } from './screens/level.js';
import { live } from './screens/live.js';
import { parts } from './screens/parts.js';
import { start } from './screens/start.js';
import { text } from './text.js';

/** @type {import('./context.js').Screens} */
const SCREENS = {
  start,
  parts,
  level,
  hold,
  ends,
  live,
  captured,
  details,
  captures,
};
/** The offer of a new version: never while something is measured or typed. */
const updates = {
  /** @type {(() => void) | null} */ apply: null,
  el: h('div', { class: 'update', hidden: true }),
  /** @param {() => void} apply */
  offer(apply) {
    this.apply = apply;
    this.el.replaceChildren(
      h('span', {}, text.update.ready),
      button(text.update.apply, 'update', () => this.apply?.(), 'lesser'),
    );
    document.getElementById('strip')?.prepend(this.el);
    this.show(context.isBusy());
  },
  /** @param {boolean} busy */
  show(busy) {
    this.el.hidden = this.apply === null || busy;
  },
};

document.documentElement.lang = language;
say(document.documentElement.querySelector('title') ?? document.body, text.name);
const context = new Context(await loadEngine(), SCREENS);
context.onShow = () => updates.show(context.isBusy());
await context.open(false);
history.replaceState({}, '');
context.go('start');
keepUpToDate({
  onUpdateWaiting: (apply) => updates.offer(apply),
  isBusy: () => context.isBusy(),
  settle: () => context.settle(),
});
