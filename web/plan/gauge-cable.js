// A gauge's lines by cable, where the browser has Web Serial. Nothing is asked for before a tap.

/** Bits a second, as the gauge writes. */
const RATE = 115_200;

/**
 * The port that the user chooses, opened: each piece of text that comes is told; returns what stops
 * it. Rejects where nothing was chosen, or the port can't be opened.
 * @param {(words: string) => void} told
 * @param {() => void} gone called when the cable is unplugged
 * @returns {Promise<() => Promise<void>>}
 */
export async function listenByCable(told, gone) {
  const { serial } = /** @type {any} */ (navigator);
  const port = await serial.requestPort();
  await port.open({ baudRate: RATE });
  const reader = port.readable.getReader();
  const decoder = new TextDecoder();
  const reading = (async () => {
    for (;;) {
      const { value, done } = await reader.read();
      if (done) return;
      told(decoder.decode(value, { stream: true }));
    }
  })()
    .catch(gone)
    .finally(() => reader.releaseLock());
  return async () => {
    await reader.cancel().catch(() => {});
    await reading;
    await port.close().catch(() => {});
  };
}

export const hasCable = () => 'serial' in navigator;
