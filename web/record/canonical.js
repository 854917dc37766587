// One form for one content, so that its checksum is the same everywhere: JSON with sorted keys and
// no spaces, numbers and texts as ECMAScript writes them (RFC 8785). The checksum is SHA-256.

/** @param {unknown} value @returns {string} */
export function canonical(value) {
  if (Array.isArray(value)) return `[${value.map((v) => canonical(v ?? null)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const all = /** @type {Record<string, unknown>} */ (value);
    // By UTF-16 code units, as the standard wants.
    const keys = Object.keys(all)
      .filter((key) => all[key] !== undefined)
      .sort();
    return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(all[key])}`).join(',')}}`;
  }
  // No number has no form in JSON.
  return JSON.stringify(typeof value === 'number' && !Number.isFinite(value) ? null : value);
}

/** @param {unknown} value @returns {Promise<string>} 64 hex digits */
export async function checksum(value) {
  const bytes = new TextEncoder().encode(canonical(value));
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** As it stands on paper: enough to find a slip, not to find a forger. @param {string} sum */
export const short = (sum) => (sum.slice(0, 16).match(/.{4}/g) ?? []).join(' ');
