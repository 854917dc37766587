// Written anew by the build: the core's modules inside the page.

/** For each module its glue, evaluated anew at every call, and its bytes.
 * @type {Record<'phone' | 'sheets' | 'gauge', { glue: () => any, bytes: () => Uint8Array }>} */
export const cores = {
  phone: { glue: () => null, bytes: () => new Uint8Array() },
  sheets: { glue: () => null, bytes: () => new Uint8Array() },
  gauge: { glue: () => null, bytes: () => new Uint8Array() },
};
