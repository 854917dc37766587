// The marks of words in the catalogues: text.js and words/. The build finds words by them and puts
// another language's in their place; as they stand they say what is written.

/** Words, with what is put into them by name: `${time}`.
 * @param {TemplateStringsArray} words @param {unknown[]} values */
export const t = (words, ...values) => String.raw({ raw: words }, ...values);

/** The one of two that fits a number. A language with more forms for numbers has more.
 * @param {number} n @param {string} one @param {string} many */
export const forNumber = (n, one, many) => (n === 1 ? one : many);
