// A photo for the record: scaled, and drawn anew, which leaves place and time data behind.

const LONGEST_PX = 1280;

/** @param {Blob} file @returns {Promise<Blob>} */
export async function scaledPhoto(file) {
  const bitmap = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_PX / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('unreadable'))),
      'image/jpeg',
      0.8,
    );
  });
}
