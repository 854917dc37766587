// Attempts to make text into code, or to send something out, from within a page: its policy must
// refuse them.

export const ATTEMPTS_AT_CODE = ['inline', 'handler', 'eval', 'construct', 'markup', 'policy'];

/** Runs `attempt` in the page's own task: what the test driver runs by itself is let past the policy. */
export const tryInPage = (page, attempt, argument) =>
  page.evaluate(
    ({ attempt, argument }) =>
      new Promise((done) => {
        const violated = [];
        addEventListener('securitypolicyviolation', (e) => violated.push(e.effectiveDirective));
        const run = attempts[attempt];
        setTimeout(async () => {
          let outcome;
          try {
            outcome = { returned: String(await run(argument)) };
          } catch (error) {
            outcome = { threw: error.name };
          }
          setTimeout(() => done({ ...outcome, violated, ran: window.ran }), 200);
        });
      }),
    { attempt, argument },
  );

/** The attempts, put into the page as functions. */
export const prepareAttempts = (page) =>
  page.evaluate(() => {
    window.attempts = {
      inline() {
        const script = document.createElement('script');
        script.append('window.ran = 1');
        document.body.append(script);
      },
      handler() {
        const el = document.createElement('b');
        el.setAttribute('onclick', 'window.ran = 1');
        document.body.append(el);
        el.click();
      },
      // biome-ignore lint/security/noGlobalEval: refused is what is wanted
      eval: () => globalThis.eval('window.ran = 1'),
      construct: () => new Function('window.ran = 1')(),
      markup() {
        document.createElement('div').innerHTML = '<b>words</b>';
      },
      policy: () => window.trustedTypes.createPolicy('other', {}),
      fetch: (url) => fetch(url, { mode: 'no-cors' }),
      image: (url) =>
        new Promise((done, fail) => {
          const image = new Image();
          image.onload = done;
          image.onerror = () => fail(new TypeError('blocked'));
          image.src = url;
        }),
      beacon: (url) => navigator.sendBeacon(url, 'words'),
    };
  });
