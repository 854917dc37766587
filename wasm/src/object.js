// Builds one plain object from the calls that core's serializer makes, in their order.

/** @type {any[]} */ let open = [];
/** @type {string[]} */ let keys = [];
/** @type {any} */ let whole;

/** @param {any} value */
export function put(value) {
  const inside = open.at(-1);
  if (inside === undefined) whole = value;
  else if (Array.isArray(inside)) inside.push(value);
  else inside[/** @type {string} */ (keys.pop())] = value;
}

/** @param {boolean} list */
export function begin(list) {
  const value = list ? [] : {};
  put(value);
  open.push(value);
}

export function end() {
  open.pop();
}

/** @param {string} name */
export function key(name) {
  keys.push(name);
}

/** What was built; ready for the next one. */
export function take() {
  const value = whole;
  open = [];
  keys = [];
  whole = undefined;
  return value;
}
