// Which of the page's languages this person reads, and how they write numbers and lengths.

const KEY = 'language';
/** What the build has put in; as it stands, English alone. @type {string[]} */
export const LANGUAGES = ['en'];

/** @type {readonly string[]} */
const wanted = globalThis.navigator?.languages ?? [];
/** @param {string} tag BCP 47 */
const languageOf = (tag) => tag.split('-')[0].toLowerCase();

/** Kept apart from the store: words are wanted before it is open. Some browsers keep nothing. */
function chosen() {
  try {
    return globalThis.localStorage?.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

export const language =
  [chosen(), ...wanted].map(languageOf).find((one) => LANGUAGES.includes(one)) ?? 'en';

/** With its region, where the browser knows one. */
export const locale = wanted.find((tag) => languageOf(tag) === language) ?? language;

/** @param {string} other @returns {boolean} whether the browser keeps it */
export function choose(other) {
  try {
    localStorage.setItem(KEY, other);
    return true;
  } catch {
    return false;
  }
}

/** A language as its own speakers call it. @param {string} of */
export const nameOf = (of) => new Intl.DisplayNames([of], { type: 'language' }).of(of) ?? of;

/** What stands between ones and tenths. */
export const point =
  new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ??
  '.';

/** A number as people here type it. @param {number | string} number */
export const asTyped = (number) => String(number).replace('.', point);

/** A number as it is printed here. @param {number | string} number */
export const asPrinted = (number) => asTyped(number).replace('-', '−');

/** Lengths in feet and inches are usual there (CIA World Factbook, appendix on weights and
 * measures: United States, Liberia, Myanmar). */
export const system = /** @type {'metric' | 'us'} */ (
  ['US', 'LR', 'MM'].includes(new Intl.Locale(wanted[0] ?? 'en').region ?? '') ? 'us' : 'metric'
);
