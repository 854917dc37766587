// Photos for the record: taken here, scaled, drawn anew without place and time data, kept with what
// they are of.

import { StoreError } from './database.js';
import { button, h } from './dom.js';
import { scaledPhoto } from './photo.js';

/** @typedef {import('./context.js').Context} Context */

/**
 * What photos belong to.
 * @typedef {object} Owner
 * @property {string} sheet a sheet's name, or "capture"
 * @property {number[]} photos their ids
 * @property {'entries' | 'captures'} name the store that it is in
 * @property {() => object} value what is kept of it
 * @property {() => Promise<unknown> | void} changed keeps the ids
 */

/** The camera behind a button of its own: what to put on the page, and how to ask for a photo.
 * @param {Context} ctx @param {string} label @param {(photo: Blob) => Promise<void> | void} onPhoto
 * @param {'environment' | null} [capture] null for a picture that another camera took */
export function camera(ctx, label, onPhoto, capture = 'environment') {
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const input = h('input', {
    type: 'file',
    accept: 'image/*',
    capture,
    class: 'sr',
    // The button beside it opens it.
    tabindex: -1,
    'aria-label': label,
    change: async () => {
      const file = input.files?.[0];
      if (!file) return;
      trouble.hidden = true;
      try {
        await onPhoto(await scaledPhoto(file));
      } catch (error) {
        const stored = error instanceof StoreError;
        trouble.textContent = stored ? ctx.storeWords(error) : ctx.text.photos.failed;
        trouble.hidden = false;
      }
      input.value = '';
    },
  });
  return { parts: [trouble, input], ask: () => input.click() };
}

/** Keeps a photo with what it belongs to: both, or neither.
 * @param {Context} ctx @param {Owner} owner @param {string} about @param {Blob} blob
 * @param {(id: number) => () => void} belong puts the photo's number in; gives how to take it out */
export async function keepPhoto(ctx, owner, about, blob, belong) {
  const at = new Date().toISOString();
  const photo = { job_id: ctx.job.id, sheet: owner.sheet, about, at, blob };
  let takeOut = () => {};
  const withPhoto = (/** @type {number} */ id) => {
    takeOut = belong(id);
    return owner.value();
  };
  try {
    const id = await ctx.write((store) => store.savePhoto(photo, owner.name, withPhoto));
    ctx.photosTaken.push({ ...photo, id });
  } catch (error) {
    takeOut();
    throw error;
  }
  // What was typed meanwhile may have gone to the store without it.
  await owner.changed();
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
    const taken = ctx.photosTaken.filter((p) => owner.photos.includes(Number(p.id)));
    const photos = (await ctx.store?.photos(owner.photos)) ?? taken;
    const own = photos.filter((p) => p.about === about);
    list.replaceChildren(...own.map((p) => picture(p.blob, t.of)));
  };
  show().catch(() => {});
  const { parts, ask } = camera(ctx, t.take, async (blob) => {
    await keepPhoto(ctx, owner, about, blob, (id) => {
      owner.photos.push(id);
      return () => owner.photos.splice(owner.photos.indexOf(id), 1);
    });
    await show();
  });
  return h('section', {}, list, ...parts, button(t.take, 'photo', ask, 'row'));
}
