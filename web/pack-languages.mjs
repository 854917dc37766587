// Puts the languages into the page: for each half of it one script of words in each language, and in
// the place of a catalogue the words that were loaded. A person loads the words of one language.

import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CATALOGUES, LANGUAGES, exportsOf, inLanguage, said, sourceOf } from './catalogue.mjs';
import { replaced } from './pack-common.mjs';
import { text } from './text.js';

const web = dirname(fileURLToPath(import.meta.url));
export const ALL = ['en', ...LANGUAGES];
/** The words of the first load, and all others. */
const HALVES = { first: ['text.js'], more: CATALOGUES.filter((path) => path !== 'text.js') };

/** What stands on the page while no script runs: in every language, since none can be chosen. */
const noScript = ALL.map(
  (language) => `<p lang="${language}">${said('text.js', text.noScript, language)}</p>`,
).join('');

/** index.html with these words in it. */
export const page = replaced(
  sourceOf('index.html'),
  '<noscript></noscript>',
  `<noscript>${noScript}</noscript>`,
);

/** The words of one language, once they are loaded. @param {string} half */
const loading = (half) => `
  import { language } from './locale.js';
  const words = { ${ALL.map((one) => `${one}: () => import('words:${half}-${one}')`)} };
  export const all = await words[language]();`;

/** The words of one language, where all are inside. @param {string} half */
const choosing = (half) => `
  import { language } from './locale.js';
  ${ALL.map((one) => `import * as ${one} from 'words:${half}-${one}';`).join('\n')}
  export const all = { ${ALL} }[language];`;

/** @param {string} half @param {string} language */
const everyOne = (half, language) =>
  HALVES[/** @type {keyof HALVES} */ (half)]
    .map((path, i) => `export * as w${i} from './${path}?${language}';`)
    .join('\n');

/** @param {string} path of a catalogue */
function inPlaceOf(path) {
  const half = path === 'text.js' ? 'first' : 'more';
  return `
    import { all } from 'words:${half}';
    export const { ${exportsOf(path)} } = all.w${HALVES[half].indexOf(path)};`;
}

/** @param {{ areInside: boolean }} they whether all languages are in the one script, or each in its own
 * @returns {import('esbuild').Plugin} */
export const languages = ({ areInside }) => ({
  name: 'languages',
  setup(build) {
    build.onResolve({ filter: /^words:/ }, ({ path }) => ({
      path: path.slice(6),
      namespace: 'words',
    }));
    // Not by where the folder lies: a path that is no file's own goes into the names of scripts.
    build.onResolve({ filter: /\.js\?\w+$/, namespace: 'words' }, ({ path }) => ({
      path: path.replace('./', ''),
      namespace: 'said',
    }));
    build.onLoad({ filter: /./, namespace: 'words' }, ({ path }) => {
      const [half, language] = path.split('-');
      return {
        contents: language ? everyOne(half, language) : (areInside ? choosing : loading)(half),
        resolveDir: web,
      };
    });
    build.onLoad({ filter: /./, namespace: 'said' }, ({ path }) => {
      const [file, language] = path.split('?');
      return { contents: inLanguage(file, language), resolveDir: join(web, dirname(file)) };
    });
    build.onLoad({ filter: /\/(text|words\/[\w-]+)\.js$/ }, ({ path }) => {
      const catalogue = relative(web, path);
      return CATALOGUES.includes(catalogue)
        ? { contents: inPlaceOf(catalogue), resolveDir: web }
        : null;
    });
    build.onLoad({ filter: /\/locale\.js$/ }, () => ({
      contents: replaced(sourceOf('locale.js'), "['en']", JSON.stringify(ALL)),
      resolveDir: web,
    }));
  },
});
