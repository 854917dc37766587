// Whether the browser keeps nothing for this file. Then no word may say "saved".

import { text } from '../text.js';
import { words as lines } from '../words/limit-lines.js';
import { guide } from '../words/limits.js';
import { words as vehicle } from '../words/vehicle.js';
import { words } from '../words/file.js';

let forgets = false;

export const isForgetting = () => forgets;

export function forget() {
  forgets = true;
  for (const said of [text.captured, vehicle, lines, guide]) said.saved = words.held;
}
