// A screenshot as a small file: in few colours, by the browser's own WebP without loss, since edges
// are all that drawings and words have.

/** Colours of a picture. */
const COLOURS = 10;
/** Nearer ones are taken for one, of 255. */
const APART = 24;

/** For each colour of an image, red, green, blue, the one that stands for it: among the commonest.
 * @param {Uint32Array} pixels @param {number} most @param {number} apart */
function fewer(pixels, most, apart) {
  const counts = new Map();
  for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
  const parts = (pixel) => [0, 8, 16].map((shift) => (pixel >> shift) & 255);
  const far = (a, b) => Math.max(...parts(a).map((v, i) => Math.abs(v - parts(b)[i])));
  const chosen = [];
  for (const [pixel] of [...counts].sort((a, b) => b[1] - a[1]))
    if (chosen.length < most && chosen.every((c) => far(c, pixel) > apart)) chosen.push(pixel);
  const nearest = (pixel) => chosen.reduce((best, c) => (far(c, pixel) < far(best, pixel) ? c : best));
  return new Map([...counts.keys()].map((pixel) => [pixel, nearest(pixel)]));
}

/** In the page. @param {string} png base64 @param {(pixels: Uint32Array) => Map<number, number>} by */
async function redrawn(png, by) {
  const image = new Image();
  image.src = `data:image/png;base64,${png}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [image.width, image.height];
  const paint = canvas.getContext('2d');
  paint.drawImage(image, 0, 0);
  const all = paint.getImageData(0, 0, image.width, image.height);
  const pixels = new Uint32Array(all.data.buffer);
  const others = by(pixels);
  pixels.forEach((pixel, i) => {
    pixels[i] = others.get(pixel);
  });
  paint.putImageData(all, 0, 0);
  return canvas.toDataURL('image/webp', 1).split(',')[1];
}

/** @param {import('playwright-core').Page} page any that may show a picture by address @param {Buffer} png */
export async function inFewColours(page, png) {
  const by = `(pixels) => (${fewer})(pixels, ${COLOURS}, ${APART})`;
  const webp = await page.evaluate(`(${redrawn})('${png.toString('base64')}', ${by})`);
  return Buffer.from(webp, 'base64');
}
