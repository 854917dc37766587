// Brings every language's file up to what the catalogues say: what is new stands empty, what is gone
// goes. Says what is missing. `node languages.mjs fr` begins a new one.

import { existsSync, writeFileSync } from 'node:fs';
import { po } from 'gettext-parser';
import { CATALOGUES, LANGUAGES, messagesOf, readLanguage, sourceOf } from './catalogue.mjs';

const FIRST = {
  charset: 'utf-8',
  headers: {
    'Content-Type': 'text/plain; charset=utf-8',
    'Plural-Forms': 'nplurals=2; plural=(n != 1);',
  },
  translations: {},
};

for (const language of new Set([...LANGUAGES, ...process.argv.slice(2)])) {
  const file = new URL(`languages/${language}.po`, import.meta.url);
  const kept = existsSync(file)
    ? readLanguage(language)
    : { ...FIRST, headers: { ...FIRST.headers, Language: language } };
  /** @type {import('gettext-parser').GetTextTranslations['translations']} */
  const now = {};
  let missing = 0;
  for (const path of CATALOGUES)
    for (const { id, plural } of messagesOf(sourceOf(path))) {
      now[path] ??= {};
      const told = kept.translations[path]?.[id];
      const msgstr = told?.msgstr ?? (plural ? ['', ''] : ['']);
      if (!now[path][id] && msgstr.some((text) => !text)) missing += 1;
      now[path][id] = { msgctxt: path, msgid: id, msgstr, ...(plural && { msgid_plural: plural }) };
    }
  writeFileSync(file, `${po.compile({ ...kept, translations: now }, { foldLength: 100 })}\n`);
  console.log(`${language}: ${missing} missing`);
}
