// Three fixed patterns after a capture, one for each verdict, and one for "no verdict". They say
// what was captured; nothing sounds while measuring.

/** Tones as [start s, length s, Hz]. Length and number carry the meaning, pitch only helps.
 * @type {Record<import('./types.js').Verdict, [number, number, number][]>} */
export const PATTERNS = {
  within: [[0, 1.1, 660]],
  beyond: [
    [0, 0.22, 520],
    [0.42, 0.22, 520],
  ],
  not_proven: [
    [0, 0.3, 260],
    [0.45, 0.3, 260],
    [0.9, 0.3, 260],
  ],
  none: [
    [0, 0.12, 260],
    [0.2, 0.12, 260],
    [0.4, 0.12, 260],
    [0.6, 0.12, 260],
  ],
};

/** @type {AudioContext | null} */
let audio = null;

/** Takes what a first sound takes longest for, before a tap has to wait for it. */
export function prepare() {
  try {
    audio ??= new AudioContext();
  } catch {
    audio = null;
  }
}

/** Makes sound possible; browsers allow it in a tap only. */
export function unlock() {
  prepare();
  audio?.resume();
}

/** @param {import('./types.js').Verdict} verdict */
export function play(verdict) {
  const pattern = PATTERNS[verdict];
  navigator.vibrate?.(
    pattern.flatMap(([start, length], i) => {
      const next = pattern[i + 1]?.[0] ?? start + length;
      return [length * 1000, (next - start - length) * 1000];
    }),
  );
  if (!audio) return;
  for (const [start, length, pitch] of pattern) {
    const from = audio.currentTime + start;
    const tone = new OscillatorNode(audio, { frequency: pitch, type: 'triangle' });
    const volume = new GainNode(audio, { gain: 0 });
    volume.gain.setTargetAtTime(0.6, from, 0.01);
    volume.gain.setTargetAtTime(0, from + length, 0.02);
    tone.connect(volume).connect(audio.destination);
    tone.start(from);
    tone.stop(from + length + 0.2);
  }
}
