/** Draws public/icon.svg as the PNG files that some systems ask for. Run by hand when the icon changes: `node src/build/icons.mjs`. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const here = (name) => fileURLToPath(new URL(`../../public/${name}`, import.meta.url));
const drawing = await readFile(here('icon.svg'));
for (const size of [192, 512]) {
  await sharp(drawing, { density: (72 * size) / 64 })
    .resize(size, size)
    .png({ palette: true })
    .toFile(here(`icon-${size}.png`));
}
