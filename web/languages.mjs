// Brings every language's file up to what the catalogues say: what is new stands empty, what is gone
// goes. Says what is missing, and which grave texts nobody has compared.
// `node languages.mjs fr` begins a new one; `node languages.mjs es --compared` marks all of its grave
// texts: only for somebody who has compared them.

import { existsSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { po } from 'gettext-parser';
import {
  CATALOGUES,
  isGrave,
  LANGUAGES,
  messagesOf,
  readLanguage,
  readMark,
  sourceOf,
} from './catalogue.mjs';

/** @typedef {import('gettext-parser').GetTextTranslations} File */

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { compared: { type: 'boolean' } },
});

/** @param {string} language @returns {File} */
const begun = (language) => ({
  charset: 'utf-8',
  headers: {
    Language: language,
    'Content-Type': 'text/plain; charset=utf-8',
    'Plural-Forms': 'nplurals=2; plural=(n != 1);',
  },
  translations: {},
});

/** @param {string} language */
const pathOf = (language) => new URL(`languages/${language}.po`, import.meta.url);

/** @param {string} language @param {File} kept */
function broughtUp(language, kept) {
  const forms = Number(kept.headers['Plural-Forms'].match(/\d+/)?.[0]);
  /** @type {File['translations']} */
  const now = { '': kept.translations[''] ?? {} };
  const left = { missing: 0, uncompared: 0 };
  for (const path of CATALOGUES)
    for (const message of messagesOf(sourceOf(path))) {
      const { id, plural } = message;
      now[path] ??= {};
      if (now[path][id]) continue;
      const told = kept.translations[path]?.[id];
      const msgstr = told?.msgstr ?? Array.from({ length: plural ? forms : 1 }, () => '');
      const mark = readMark(id, msgstr);
      const isCompared = told?.comments?.translator === mark || values.compared;
      const isMissing = msgstr.some((text) => !text);
      if (isMissing) left.missing += 1;
      else if (isGrave(message) && !isCompared) left.uncompared += 1;
      now[path][id] = {
        ...{ msgctxt: path, msgid: id, msgstr, ...(plural && { msgid_plural: plural }) },
        ...(isGrave(message) && isCompared && !isMissing && { comments: { translator: mark } }),
      };
    }
  writeFileSync(pathOf(language), po.compile({ ...kept, translations: now }, { foldLength: 100 }));
  console.log(`${language}: ${left.missing} missing, ${left.uncompared} grave ones not compared`);
}

const asked = positionals.length ? positionals : LANGUAGES;
for (const language of asked)
  broughtUp(language, existsSync(pathOf(language)) ? readLanguage(language) : begun(language));
