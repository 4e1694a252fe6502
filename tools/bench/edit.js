// Changes single claims in a dossier that the compiled server has open, and prints how long each
// waited for its first answer. The dossier is changed: hand in a copy.
/** @param {string} folder whose compiled door is wanted */
const door = (folder) => import(new URL(`../../dist/${folder}/index.js`, import.meta.url).href);

const { startServer } = await door('server');
const { TOKEN_HEADER } = await door('contract');
const { isoOf, parseEdtf } = await door('evidence');

const CHANGES = 11;
const [folder = '', dataFolder = ''] = process.argv.slice(2);
const running = await startServer({ folder, dataFolder, port: 0 });
const headers = { [TOKEN_HEADER]: running.token, 'content-type': 'application/json' };

/** @param {string} path @param {object} [body] */
async function ask(path, body) {
  const init = body ? { method: 'POST', body: JSON.stringify(body) } : {};
  return await (await fetch(new URL(path, running.url), { headers, ...init })).json();
}

const stop = new AbortController();
const { body } = await fetch(new URL('api/events', running.url), { headers, signal: stop.signal });
if (!body) throw new Error('the server tells of no events');
/** @type {Set<(event: { version: number, dating: string }) => void>} */
const waiting = new Set();
void (async () => {
  let rest = '';
  for await (const piece of body.pipeThrough(new TextDecoderStream())) {
    const parts = (rest + piece).split('\n\n');
    rest = parts.pop() ?? '';
    for (const part of parts) for (const hear of waiting) hear(JSON.parse(part.slice(6)));
  }
})().catch(() => undefined);

/** @param {(event: { version: number, dating: string }) => boolean} isIt */
const heard = (isIt) =>
  new Promise((found) => {
    /** @param {{ version: number, dating: string }} event */
    const hear = (event) => {
      if (isIt(event) && waiting.delete(hear)) found(event);
    };
    waiting.add(hear);
  });

let { version, claims } = await ask('api/dossier');
const days = claims.filter(
  (/** @type {any} */ { property, span }) =>
    property === 'on-sale' && span[0] && span[0] === span[1],
);
await ask('api/dating?effort=refined');

/** @param {any} claim @returns {Promise<number>} milliseconds */
async function change({ row, value, cells }) {
  const later = isoOf(parseEdtf(value).date.ranges[0].first + 1);
  const after = { ...cells, value: later };
  const answered = heard((event) => event.version > version && event.dating === 'first');
  const began = performance.now();
  const made = await ask('api/changes', {
    version,
    label: 'Change a claim',
    changes: [{ file: 'claims.csv', op: 'replace', row, before: cells, after }],
  });
  await answered;
  const took = performance.now() - began;
  version = made.version;
  return took;
}

/** @type {number[]} */
const times = [];
for (let n = 0; n < CHANGES; n++)
  times.push(await change(days[Math.floor(((n + 0.5) / CHANGES) * days.length)]));
times.sort((a, b) => a - b);
stop.abort();
await running.close();
console.log(
  JSON.stringify({ changes: CHANGES, medianMs: times[(CHANGES - 1) / 2], mostMs: times.at(-1) }),
);
