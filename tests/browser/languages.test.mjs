// Every language whole: no text is missing, what is put in is the same, nothing promises safety, and
// somebody has compared each text that may hurt or be taken for an assurance.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  CATALOGUES,
  inLanguage,
  isGrave,
  LANGUAGES,
  messagesOf,
  readLanguage,
  readMark,
  sourceOf,
} from '../../web/catalogue.mjs';

const messages = CATALOGUES.flatMap((path) =>
  messagesOf(sourceOf(path)).map((message) => ({ path, ...message })),
);
/** What is put into a text, and where a part's name goes. */
const put = (text) => (text.match(/\{\w+\}|%s/g) ?? []).sort().join();
/** What no page of ours may say, by language. */
const PROMISES = {
  en: /\bsafe(ly|ty)?\b|\bapproved\b|\bguarantee/i,
  es: /\bsegur(o|a|os|as|idad)\b|\baprobad[oa]s?\b|\bgarant[ií]/i,
};

test('English is marked throughout and promises nothing', () => {
  assert.ok(messages.length > 2000, String(messages.length));
  for (const { id, plural = '' } of messages) assert.doesNotMatch(id + plural, PROMISES.en);
});

test('there is Spanish', () => assert.ok(LANGUAGES.includes('es')));

for (const language of LANGUAGES)
  test(`${language}: every text is there, and nothing else`, () => {
    const { translations, headers } = readLanguage(language);
    assert.equal(headers.Language, language);
    const forms = Number(headers['Plural-Forms'].match(/nplurals=(\d)/)[1]);
    for (const message of messages) {
      const { path, id, plural } = message;
      const told = translations[path]?.[id];
      assert.ok(told?.msgstr.every(Boolean), `${language}.po lacks ${path}: ${id}`);
      assert.equal(told.msgstr.length, plural ? forms : 1, id);
      assert.equal(told.msgid_plural, plural, id);
      // The form for one may do without its number.
      assert.equal(put(told.msgstr.at(-1)), put(plural ?? id), id);
      assert.ok(PROMISES[language], `what ${language} may not promise is to be told here`);
      for (const text of told.msgstr) assert.doesNotMatch(text, PROMISES[language]);
      if (isGrave(message))
        assert.equal(
          told.comments?.translator,
          readMark(id, told.msgstr),
          `nobody has compared ${path}: ${id}`,
        );
    }
    const known = new Set(messages.map(({ path, id }) => `${path}: ${id}`));
    for (const path of Object.keys(translations).filter(Boolean))
      for (const id of Object.keys(translations[path]))
        assert.ok(known.has(`${path}: ${id}`), `gone, but still in ${language}.po: ${path}: ${id}`);
  });

test('grave texts are a good part of all, and a changed one loses its mark', () => {
  const grave = messages.filter(isGrave);
  assert.ok(grave.length > 300 && grave.length < messages.length / 2, String(grave.length));
  for (const id of ['No phone on a pipe that has been hot: burns.', 'STOP. Out, ventilate, find the cause.'])
    assert.ok(
      grave.some((message) => message.id === id),
      id,
    );
  assert.notEqual(readMark('a', ['b']), readMark('a', ['c']));
  assert.notEqual(readMark('a', ['b']), readMark('d', ['b']));
});

test('a catalogue in another language has the same code around other texts', async () => {
  for (const path of CATALOGUES) {
    const source = inLanguage(path, 'es');
    assert.doesNotMatch(source, /\bt`/, `${path}: a text is left`);
    assert.equal(
      source.split('\n').filter((l) => l.startsWith('export')).length,
      sourceOf(path)
        .split('\n')
        .filter((l) => l.startsWith('export')).length,
    );
  }
});
