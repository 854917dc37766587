// A JSON file that comes in, read strictly: UTF-8 without a fault, and no name twice in an object
// (I-JSON, RFC 7493), since another reader might take the other one of the two.

/** @param {string} json valid @returns {number} members of all its objects, as they stand in it */
function membersIn(json) {
  const before = /\s*:/y;
  let count = 0;
  for (let at = json.indexOf('"'); at >= 0; at = json.indexOf('"', at + 1)) {
    let end = at;
    let first;
    do {
      end = json.indexOf('"', end + 1);
      for (first = end; json[first - 1] === '\\'; ) first -= 1;
      // A quote behind an odd number of these is in the text.
    } while ((end - first) % 2);
    at = end;
    before.lastIndex = end + 1;
    if (before.test(json)) count += 1;
  }
  return count;
}

/** Without recursion: a file may be deeper than the stack. @param {unknown} value */
function membersOf(value) {
  let count = 0;
  for (const left = [value]; left.length; ) {
    const next = left.pop();
    if (typeof next !== 'object' || next === null) continue;
    const inner = Object.values(next);
    if (!Array.isArray(next)) count += inner.length;
    for (const one of inner) left.push(one);
  }
  return count;
}

/**
 * Keys that would reach into prototypes are refused with the rest of what is not known, by whoever
 * takes the value.
 * @param {Blob} file
 * @param {number} largest_bytes
 * @param {{ tooLarge: string, notJson: string, twice: string }} words
 * @returns {Promise<unknown>} throws a string for the user
 */
export async function readJson(file, largest_bytes, words) {
  if (file.size > largest_bytes) throw words.tooLarge;
  const bytes = await file.arrayBuffer();
  let json;
  let value;
  try {
    json = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    value = JSON.parse(json);
  } catch {
    throw words.notJson;
  }
  if (membersIn(json) !== membersOf(value)) throw words.twice;
  return value;
}
