// What the page keeps to itself, by the debugger's eye: the page as built names nothing of its own.

/** Runs `use`, a function's text, on every object with that prototype; what it gives must be JSON.
 * @param {string} prototype an expression @param {string} use */
export async function onObjects(cdp, prototype, use) {
  const { result } = await cdp.send('Runtime.evaluate', { expression: prototype });
  const { objects } = await cdp.send('Runtime.queryObjects', { prototypeObjectId: result.objectId });
  const asked = await cdp.send('Runtime.callFunctionOn', {
    objectId: objects.objectId,
    functionDeclaration: `function () { return (${use})([...this]); }`,
    returnByValue: true,
    awaitPromise: true,
  });
  await cdp.send('Runtime.releaseObject', { objectId: objects.objectId });
  if (asked.exceptionDetails) throw new Error(asked.exceptionDetails.exception?.description);
  return asked.result.value;
}
