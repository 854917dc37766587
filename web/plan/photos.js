// Photos of a check: taken here, scaled, drawn anew without place and time data, kept with the job.

import { button, h } from '../dom.js';
import { scaledPhoto } from '../photo.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('./record.js').Kept} Kept */

/** A button that takes a photo and gives it, scaled. @param {Context} ctx
 * @param {(photo: Blob) => Promise<void>} onPhoto @param {string} [label] */
export function photoButton(ctx, onPhoto, label = ctx.plan.words.photo) {
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
        trouble.textContent = stored ?? ctx.text.ends.photoFailed;
        trouble.hidden = false;
      }
      input.value = '';
    },
  });
  return h(
    'div',
    {},
    input,
    button(label, 'photo', () => input.click(), 'row'),
    trouble,
  );
}

/** @param {Blob} blob @param {string} alt */
function picture(blob, alt) {
  const src = URL.createObjectURL(blob);
  return h('img', { src, alt, load: () => URL.revokeObjectURL(src) });
}

/** The photos kept of one check of a sheet, and the button for one more.
 * @param {Context} ctx @param {Kept} kept @param {string} about */
export function photosOf(ctx, kept, about) {
  const list = h('div', { class: 'photos' });
  const show = async () => {
    const photos = (await ctx.store?.photos(kept.record.photos)) ?? [];
    const own = photos.filter((p) => p.about === about);
    list.replaceChildren(...own.map((p) => picture(p.blob, ctx.plan.words.photoOf)));
  };
  show().catch(() => {});
  const add = photoButton(ctx, async (blob) => {
    const id = await keepPhoto(ctx, kept, about, blob);
    kept.record.photos.push(id);
    kept.changed(true);
    await show();
  });
  return h('section', {}, list, add);
}

/** @param {Context} ctx @param {Kept} kept @param {string} about @param {Blob} blob @returns {Promise<number>} its id */
export async function keepPhoto(ctx, kept, about, blob) {
  if (!ctx.store) throw Object.assign(new Error('blocked'), { code: 'blocked' });
  const at = new Date().toISOString();
  return ctx.store.savePhoto({ sheet: kept.record.key, about, at, blob });
}
