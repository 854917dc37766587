// Numbers of a sample.

/** The value below which that share of them lies. @param {number[]} values @param {number} share */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.round(share * (sorted.length - 1))];
}

/** @param {number[]} values */
export const median = (values) => quantile(values, 0.5);
