// What every part of packing uses.

export const small = /** @type {const} */ ({
  minify: true,
  charset: 'utf8',
  legalComments: 'none',
});

/** @param {string} text @param {string | RegExp} what @param {string} by */
export function replaced(text, what, by) {
  if (text.search(what) < 0) throw new Error(`nothing like ${what} to replace`);
  // As a function: scripts hold dollar signs.
  return text.replace(what, () => by);
}
