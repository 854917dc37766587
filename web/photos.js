// Photos for the record: taken here, scaled, drawn anew without place and time data, kept with what
// they are of.

import { button, h } from './dom.js';
import { scaledPhoto } from './photo.js';

/** @typedef {import('./context.js').Context} Context */

/**
 * What photos belong to.
 * @typedef {object} Owner
 * @property {string} sheet a sheet's name, or "capture"
 * @property {number[]} photos their ids
 * @property {() => Promise<void> | void} changed keeps the ids
 */

/** The camera behind a button of its own: what to put on the page, and how to ask for a photo.
 * @param {Context} ctx @param {string} label @param {(photo: Blob) => Promise<void> | void} onPhoto */
export function camera(ctx, label, onPhoto) {
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const input = h('input', {
    type: 'file',
    accept: 'image/*',
    capture: 'environment',
    class: 'sr',
    'aria-label': label,
    change: async () => {
      const file = input.files?.[0];
      if (!file) return;
      trouble.hidden = true;
      try {
        await onPhoto(await scaledPhoto(file));
      } catch (error) {
        const stored = /** @type {any} */ (ctx.text.storeErrors)[/** @type {any} */ (error).code];
        trouble.textContent = stored ?? ctx.text.photos.failed;
        trouble.hidden = false;
      }
      input.value = '';
    },
  });
  return { parts: [trouble, input], ask: () => input.click() };
}

/** @param {Context} ctx @param {string} sheet @param {string} about @param {Blob} blob
 * @returns {Promise<number>} its id */
export async function keepPhoto(ctx, sheet, about, blob) {
  if (!ctx.store) throw Object.assign(new Error('blocked'), { code: 'blocked' });
  return ctx.store.savePhoto({
    job_id: ctx.job.id,
    sheet,
    about,
    at: new Date().toISOString(),
    blob,
  });
}

/** @param {Blob} blob @param {string} alt */
function picture(blob, alt) {
  const src = URL.createObjectURL(blob);
  return h('img', { src, alt, load: () => URL.revokeObjectURL(src) });
}

/** The photos kept of one check, and the button for one more.
 * @param {Context} ctx @param {Owner} owner @param {string} about */
export function photosOf(ctx, owner, about) {
  const t = ctx.text.photos;
  const list = h('div', { class: 'photos' });
  const show = async () => {
    const photos = (await ctx.store?.photos(owner.photos)) ?? [];
    const own = photos.filter((p) => p.about === about);
    list.replaceChildren(...own.map((p) => picture(p.blob, t.of)));
  };
  show().catch(() => {});
  const { parts, ask } = camera(ctx, t.take, async (blob) => {
    owner.photos.push(await keepPhoto(ctx, owner.sheet, about, blob));
    await owner.changed();
    await show();
  });
  return h('section', {}, list, ...parts, button(t.take, 'photo', ask, 'row'));
}
