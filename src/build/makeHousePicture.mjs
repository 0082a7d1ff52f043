/**
 * Draws the house from what its modules import: `npx node src/build/makeHousePicture.mjs` writes `docs/house.svg`.
 * A row is a layer with its rooms; a dot in a row says that it imports from the layer whose letter heads the column.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { filesUnder, importsOf, layers } from './imports.mjs';

const row = 44;
const top = 84;
const column = 26;
const [nameAt, roomsAt, matrixAt, width] = [20, 136, 640, 900];

/** The folders of a layer, each a room. @param {string} layer @param {readonly string[]} files */
function roomsOf(layer, files) {
  const names = files.flatMap((file) => {
    const [, of, room, more] = file.split('/');
    return of === layer && more !== undefined ? [/** @type {string} */ (room)] : [];
  });
  return [...new Set(names)].filter((name) => name !== 'en' && !name.startsWith('[')).sort();
}

/** The layers that a layer imports from, itself left out. @param {string} layer */
function below(layer) {
  const paths = filesUnder(`src/${layer}`).flatMap((file) => importsOf(file).flatMap(({ path }) => path ?? []));
  return layers.filter((other) => other !== layer && paths.some((path) => path.startsWith(`src/${other}/`)));
}

/** Words in lines of at most so many letters. @param {readonly string[]} words @param {number} most */
function inLines(words, most) {
  /** @type {string[]} */
  const lines = [''];
  for (const word of words) {
    const longer = [lines.at(-1), word].filter(Boolean).join(' · ');
    if (longer.length <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** The picture of the house as it stands. */
export function housePicture() {
  const files = filesUnder('src');
  const height = top + row * layers.length + 44;
  const middle = (/** @type {number} */ index) => top + row * index + row / 2;
  const across = (/** @type {number} */ index) => matrixAt + column * index + column / 2;
  const heads = layers.map(
    (layer, i) =>
      `<text x="${across(i)}" y="${top - 10}" transform="rotate(-50 ${across(i)} ${top - 10})" class="quiet">${layer}</text>`,
  );
  const rows = layers.map((layer, i) => {
    const lines = inLines(roomsOf(layer, files), 82);
    const from = middle(i) + 4 - (lines.length - 1) * 8;
    const rooms = lines.map((line, at) => `<text x="${roomsAt}" y="${from + at * 16}" class="quiet">${line}</text>`);
    const dots = below(layer).map((other) => `<circle cx="${across(layers.indexOf(other))}" cy="${middle(i)}" r="5"/>`);
    const own = `<path class="own" d="M${across(i) - 5} ${middle(i) - 5}l10 10m0 -10l-10 10"/>`;
    return [
      `<path class="rule" d="M${nameAt} ${top + row * i}H${width - 20}"/>`,
      `<text x="${nameAt}" y="${middle(i) + 5}" class="name">${layer}</text>`,
      ...rooms,
      own,
      ...dots,
    ].join('');
  });
  const foot = `<path class="rule" d="M${nameAt} ${top + row * layers.length}H${width - 20}"/><text x="${nameAt}" y="${height - 18}" class="quiet">A dot: the layer of the row imports from that of the column. All dots lie right of the crosses, so that everything leans downwards.</text>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-label="The layers of the source, their rooms, and which layer imports from which">
<style>
:root{color-scheme:light dark}
rect{fill:#fbfaf6}text,circle{fill:#1c2530}.quiet{fill:#46515b}path{stroke:#1c2530;fill:none}.rule{stroke:#dad5c6}
@media (prefers-color-scheme:dark){rect{fill:#14191f}text,circle{fill:#ece8dc}.quiet{fill:#a7afb5}path{stroke:#ece8dc}.rule{stroke:#46525e}}
text{font:13px "Segoe UI",Roboto,"Helvetica Neue",sans-serif}.name{font-size:16px;font-weight:600}.own{stroke-width:1.4}
</style>
<rect width="100%" height="100%"/>
${[...heads, ...rows, foot].join('\n')}
</svg>
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(fileURLToPath(new URL('../../docs/house.svg', import.meta.url)), housePicture());
