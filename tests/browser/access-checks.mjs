// What must hold on every screen, each as a function that gives its faults in words.

/** Where somebody measures with the phone, reads a tape or types what was read, gloves on. */
const MEASURING =
  /^(start|parts|phone|turn|poses|level|hold|ends|live|captured|demand.*|place|cut|fit|support|ducts|fuel.*|flue.*|supply.*|start_(up|co|values))$/;
const [GLOVE_PX, THUMB_PX, APART_PX] = [64, 44, 8];

/** What can be tapped and is too small, or too near to its neighbour. */
export const targetFaults = (page, screen) =>
  page.evaluate(
    ([least, apart]) => {
      const all = 'button, a[href], summary, select, textarea, input, label.pick';
      const found = [...document.querySelectorAll(all)].filter(
        (el) => el.checkVisibility({ visibilityProperty: true }) && !el.matches('.sr, label.pick input'),
      );
      const name = (el) => el.dataset.action ?? el.dataset.name ?? el.id ?? el.textContent;
      const boxes = found.map((el) => ({ name: name(el), box: el.getBoundingClientRect(), el }));
      const faults = boxes
        .filter(({ box }) => Math.min(box.width, box.height) < least - 0.5)
        .map(({ name, box }) => `${name}: ${Math.round(box.width)} × ${Math.round(box.height)}`);
      const stays = (el) => el.closest('footer, .notice, #strip');
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1)) {
          if (a.el.contains(b.el) || b.el.contains(a.el) || stays(a.el) !== stays(b.el)) continue;
          const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right);
          const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
          if (Math.max(across, down) < apart - 0.5)
            faults.push(`${a.name} and ${b.name}: ${Math.max(across, down).toFixed(1)} px apart`);
        }
      return faults;
    },
    [MEASURING.test(screen) ? GLOVE_PX : THUMB_PX, APART_PX],
  );

/** One h1 in one main landmark; a language; no level of heading left out. */
export const outlineFaults = (page) =>
  page.evaluate(() => {
    const faults = [];
    const seen = (el) => el.checkVisibility();
    const count = (selector) => [...document.querySelectorAll(selector)].filter(seen).length;
    for (const selector of ['h1', 'main'])
      if (count(selector) !== 1) faults.push(`${count(selector)} × ${selector}`);
    if (!document.documentElement.lang) faults.push('no language');
    let above = 0;
    for (const el of document.querySelectorAll('h1, h2, h3, h4')) {
      if (!seen(el)) continue;
      const level = Number(el.tagName[1]);
      if (level > above + 1) faults.push(`h${level} after h${above}: ${el.textContent}`);
      above = level;
    }
    return faults;
  });

/** Text that is cut off, runs out of the page or over other text; a page that scrolls sideways. */
export const flowFaults = (page) =>
  page.evaluate(() => {
    const faults = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth)
      faults.push(`${root.scrollWidth - root.clientWidth} px too wide`);
    const said = (el) => `${el.tagName}.${el.className} “${el.textContent.trim().slice(0, 30)}”`;
    const ancestors = (el) => (el === document.body ? [] : [el, ...ancestors(el.parentElement)]);
    const known = new Map();
    const isCut = (el) => {
      if (!known.has(el)) {
        const { overflowX, overflowY } = getComputedStyle(el);
        const wide = overflowX !== 'visible' && el.scrollWidth > el.clientWidth + 1;
        const high = overflowY !== 'visible' && el.scrollHeight > el.clientHeight + 1;
        known.set(el, wide || high);
      }
      return known.get(el);
    };
    const lines = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) {
      const el = texts.currentNode.parentElement;
      const hidden = !el?.checkVisibility({ visibilityProperty: true });
      if (!texts.currentNode.data.trim() || hidden || el.closest('svg, .sr, option, .tryout nav, noscript'))
        continue;
      if (ancestors(el).some((up) => getComputedStyle(up).clipPath !== 'none')) continue;
      const range = document.createRange();
      range.selectNodeContents(texts.currentNode);
      for (const box of range.getClientRects()) {
        if (box.left < -1 || box.right > root.clientWidth + 1) faults.push(`outside: ${said(el)}`);
        lines.push({ el, box, bar: el.closest('footer, .notice, #strip') });
      }
      for (const up of ancestors(el)) if (isCut(up)) faults.push(`cut off: ${said(el)}`);
    }
    lines.sort((a, b) => a.box.top - b.box.top);
    for (const [i, a] of lines.entries())
      for (const b of lines.slice(i + 1)) {
        if (b.box.top > a.box.bottom) break;
        if (a.bar !== b.bar || a.el.contains(b.el) || b.el.contains(a.el)) continue;
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        // Glyphs leave room within their line's box.
        const room = 0.3 * Math.min(a.box.height, b.box.height);
        if (across > 2 && down > room) faults.push(`over each other: ${said(a.el)}, ${said(b.el)}`);
      }
    // What stays in sight must leave room for what it lies over.
    for (const el of document.querySelectorAll('footer, .notice')) {
      const share = el.getBoundingClientRect().height / innerHeight;
      if (getComputedStyle(el).position === 'sticky' && share > 0.5)
        faults.push(`${el.tagName} takes ${Math.round(share * 100)} % of the screen`);
    }
    return [...new Set(faults)];
  });

/** What moves by itself or glides. */
export const motionFaults = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('*')].flatMap((el) =>
      ['', '::before', '::after'].flatMap((pseudo) => {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(el, pseudo);
        const still =
          animationName === 'none' && /^(0s(, )?)+$/.test(transitionDuration) && scrollBehavior === 'auto';
        return still ? [] : [`${el.tagName}.${el.className}${pseudo}`];
      }),
    ),
  );
