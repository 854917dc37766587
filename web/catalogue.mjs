// The words of a catalogue's source, found by their marks, and the same source in another language.

import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'acorn';
import { simple } from 'acorn-walk';
import { po } from 'gettext-parser';

const web = dirname(fileURLToPath(import.meta.url));

/** Files that hold words, below this folder. */
export const CATALOGUES = [
  'text.js',
  ...readdirSync(join(web, 'words'))
    .sort()
    .map((name) => `words/${name}`),
];
/** What stands beside English. */
export const LANGUAGES = readdirSync(join(web, 'languages'))
  .sort()
  .flatMap((name) => name.match(/^(\w+)\.po$/)?.[1] ?? []);

/**
 * One text as a translator sees it: what is put in stands in it by name, as `{time}`.
 * @typedef {object} Message
 * @property {string} id
 * @property {string} [plural] the form for more than one
 * @property {string} [count] the source of what is counted
 * @property {number} start in the source
 * @property {number} end
 */

/** @param {any} node a tagged template */
function textOf({ quasi }, source = '') {
  return quasi.quasis
    .map((/** @type {any} */ part, /** @type {number} */ i) => {
      const put = quasi.expressions[i];
      if (put && put.type !== 'Identifier')
        throw new Error(
          `give this a name before it stands in a text: ${source.slice(put.start, put.end)}`,
        );
      return part.value.cooked + (put ? `{${put.name}}` : '');
    })
    .join('');
}

/** @param {any} node @param {string} name */
const isCall = (node, name) => node.type === 'CallExpression' && node.callee.name === name;
/** @param {any} node */
const isText = (node) => node?.type === 'TaggedTemplateExpression' && node.tag.name === 't';

/** Every text of a catalogue, in its order. @param {string} source @returns {Message[]} */
export function messagesOf(source) {
  /** @type {Message[]} */
  const found = [];
  simple(parse(source, { ecmaVersion: 'latest', sourceType: 'module' }), {
    CallExpression(/** @type {any} */ node) {
      if (!isCall(node, 'forNumber')) return;
      const [count, one, many] = node.arguments;
      if (!isText(one) || !isText(many)) throw new Error('both forms for a number are texts');
      found.push({
        id: textOf(one, source),
        plural: textOf(many, source),
        count: source.slice(count.start, count.end),
        start: node.start,
        end: node.end,
      });
    },
    TaggedTemplateExpression(/** @type {any} */ node) {
      if (isText(node)) found.push({ id: textOf(node, source), start: node.start, end: node.end });
    },
  });
  // The two forms for a number are one text.
  return found
    .filter(
      (one) =>
        !found.some((o) => o.plural && o !== one && o.start <= one.start && one.end <= o.end),
    )
    .sort((a, b) => a.start - b.start);
}

/** @param {string} path below this folder */
export const sourceOf = (path) => readFileSync(join(web, path), 'utf8');

/** What a catalogue gives to others. @param {string} path @returns {string[]} */
export const exportsOf = (path) =>
  [...sourceOf(path).matchAll(/^export const (\w+)/gm)].map(([, name]) => name);

/** @type {Map<string, import('gettext-parser').GetTextTranslations>} */
const read = new Map();

/** A language's file. @param {string} language */
export function readLanguage(language) {
  const file = read.get(language) ?? po.parse(sourceOf(`languages/${language}.po`));
  read.set(language, file);
  return file;
}

/** A text's forms in a language, as many as it has; none where it is not translated.
 * @param {string} path @param {string} id @param {string} language @returns {string[]} */
function formsOf(path, id, language) {
  if (language === 'en') return [];
  const forms = readLanguage(language).translations[path]?.[id]?.msgstr ?? [];
  return forms.every(Boolean) ? forms : [];
}

/** A text in a language, else as it stands. @param {string} path @param {string} id @param {string} language */
export const said = (path, id, language) => formsOf(path, id, language)[0] ?? id;

/** What somebody may be hurt by, or take for an assurance: such a text is read by somebody who asks
 * whether each language says neither more nor less than English. */
const GRAVE =
  /carbon|\bCO\b|fire|burn|flame|spark|smoke|fuel|leak|exhaust|\bSTOP\b|\bnever\b|stands\b|voltage|airbag|brake|tank|headache|ventilat|alarm|verdict|within|beyond|proven|proof|prove|approv|no rise|not measured|nothing|manual|law\b|licensed|\bhot\b|\bcold\b|\bsink|\bout[:,.]|\bcables?\b|power be cut|after-run|under load|expired|tested|chocked|sharp|nobody|\bsleeps?\b/i;

/** @param {{ id: string, plural?: string }} message */
export const isGrave = ({ id, plural = '' }) => GRAVE.test(id) || GRAVE.test(plural);

/** What stands beside a translation once somebody has compared it: another text has another mark.
 * @param {string} id @param {string[]} msgstr */
export const readMark = (id, msgstr) =>
  `compared ${createHash('sha256')
    .update([id, ...msgstr].join('\n'))
    .digest('hex')
    .slice(0, 8)}`;

/** A template that puts in what the text names. @param {string} text */
const template = (text) => {
  const plain = text.replace(/[\\`]|\$(?=\{)/g, '\\$&');
  return `\`${plain.replace(/(?=\{\w+\})/g, '$')}\``;
};

/** Which form fits n, as a language's header says it: C's expression is JavaScript's too.
 * @param {string} language */
function formFor(language) {
  const form = readLanguage(language).headers['Plural-Forms']?.match(
    /plural=([n\d\s()!=<>%&|?:]+)/,
  );
  if (!form) throw new Error(`languages/${language}.po has no Plural-Forms`);
  return form[1];
}

/** A catalogue's source in another language; what is not translated stays.
 * @param {string} path @param {string} language */
export function inLanguage(path, language) {
  let source = sourceOf(path);
  for (const { id, plural, count, start, end } of messagesOf(source).reverse()) {
    const forms = formsOf(path, id, language).map(template);
    if (!forms.length) continue;
    const all = `[${forms}][((n) => Number(${plural && formFor(language)}))(${count})]`;
    source = source.slice(0, start) + (plural ? all : forms[0]) + source.slice(end);
  }
  return source;
}
