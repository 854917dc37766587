// Chance that falls the same way each time for the same seed.

/** Numbers from 0 to 1, by a Weyl sequence whose bits are mixed (as in splitmix).
 * @param {number} seed */
function uniform(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let bits = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** Normal deviates (Box and Muller). @param {number} seed @returns {() => number} */
export function normals(seed) {
  const next = uniform(seed);
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}
