// Files out.

/** Hands a file out: the system's send dialog on phones, a download elsewhere.
 * @param {string} name @param {string} type @param {string} content
 * @returns {Promise<boolean>} whether it was taken, as far as a browser tells */
export async function handOut(name, type, content) {
  const file = new File([content], name, { type });
  if (matchMedia('(pointer: coarse)').matches && navigator.canShare?.({ files: [file] })) {
    // Cancelling the dialog is no error.
    return navigator.share({ files: [file] }).then(
      () => true,
      () => false,
    );
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return true;
}

/** @param {string} name @param {unknown} value */
export const copyOut = (name, value) =>
  handOut(name, 'application/json', JSON.stringify(value, null, 2));
