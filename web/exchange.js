// JSON out and in, as files.

const LARGEST_BYTES = 256 * 1024;

/** Hands a value out: the system's send dialog on phones, a download elsewhere.
 * @param {string} name @param {unknown} value */
export function copyOut(name, value) {
  const json = JSON.stringify(value, null, 2);
  const file = new File([json], name, { type: 'application/json' });
  if (matchMedia('(pointer: coarse)').matches && navigator.canShare?.({ files: [file] })) {
    // Cancelling the dialog is no error.
    navigator.share({ files: [file] }).catch(() => {});
    return;
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/**
 * Reads a JSON file. Keys that would reach into prototypes are refused with the rest of what is
 * not known, by whoever takes the value.
 * @param {Blob} file
 * @param {{ tooLarge: string, notJson: string }} words
 * @returns {Promise<unknown>} throws a string for the user
 */
export async function bringIn(file, words) {
  if (file.size > LARGEST_BYTES) throw words.tooLarge;
  const json = await file.text();
  try {
    return JSON.parse(json);
  } catch {
    throw words.notJson;
  }
}
