// What every part of packing uses.

export const small = /** @type {const} */ ({
  minify: true,
  charset: 'utf8',
  legalComments: 'none',
});

/** Files that load when they are first wanted, or not at all: the try-out, the tape-measure half with
 * the guides and their pictures, words of other languages than this one, the gauge's, schemas, sums,
 * the page as one file. @param {string} language */
export const laterThan = (language) =>
  new RegExp(
    `^(panel|demo|plan|more|guide)[-/]|^first-(?!${language}-)|_(sheets|gauge)|schema|SUMS$|^plumbmark\\.html$`,
  );

/** @param {string} text @param {string | RegExp} what @param {string} by */
export function replaced(text, what, by) {
  if (text.search(what) < 0) throw new Error(`nothing like ${what} to replace`);
  // As a function: scripts hold dollar signs.
  return text.replace(what, () => by);
}
