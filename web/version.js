// Written anew by the build: a number, a plus, and the hash of all that is shipped, 64 hex digits.
export const wholeVersion = 'unbuilt';

/** As much of it as tells one build from the next. */
export const version = wholeVersion.slice(0, wholeVersion.indexOf('+') + 13);
