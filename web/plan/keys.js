// For who works by keys, from the first of them on: Escape is the way back, and what is drawn anew
// does not lose the focus. A finger never gets here.

/** What has, or last had, the focus, and what it stands in. @type {Element[]} */
let path = [];
let byKeys = false;

/** Tab or Escape. @param {KeyboardEvent} e */
export function onKey({ key, target }) {
  byKeys = true;
  const chooses = target instanceof HTMLSelectElement;
  const back = /** @type {HTMLElement | null} */ (document.querySelector('[data-action="back"]'));
  if (key === 'Escape' && !chooses) back?.click();
}

const keep = () => {
  const [had] = path;
  const isLost = document.activeElement === document.body && document.hasFocus();
  if (!byKeys || !isLost || !had) return;
  if (had.isConnected && had.checkVisibility()) {
    // A button that was shut for a while; shut ones take no focus.
    /** @type {HTMLElement} */ (had).focus();
    return;
  }
  const left = path.slice(1).filter((el) => el.isConnected);
  for (const place of left) {
    const { action, name } = /** @type {HTMLElement} */ (had).dataset;
    const again = action ? `[data-action="${action}"]` : `[data-name="${name}"]`;
    const found = [again, place.id ? 'h1' : 'button, input, select, summary'].flatMap((s) => [
      ...place.querySelectorAll(s),
    ]);
    const next = /** @type {HTMLElement[]} */ (found).find(
      (el) => el.checkVisibility() && !el.matches(':disabled, .sr'),
    );
    if (next) return next.focus();
  }
};

/** @param {Event} e what had the focus when the first key came */
const remember = (e) => {
  path = /** @type {Element[]} */ (e.composedPath().filter((at) => at instanceof Element));
};

addEventListener('focusin', remember);
addEventListener('pointerdown', () => {
  byKeys = false;
});
new MutationObserver(keep).observe(document.body, {
  childList: true,
  subtree: true,
  attributeFilter: ['disabled', 'hidden'],
});
