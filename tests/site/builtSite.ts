/** The built site as files: its pages, what they load, and where their links lead. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix, relative, sep } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

/** Paths of all files under a folder, with '/' between their parts. */
export function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

export const pagesUnder = (folder: string) => filesUnder(folder).filter((path) => path.endsWith('.html'));
export const textOf = (folder: string, path: string) => readFileSync(join(folder, path), 'utf8');

/** Bytes after compression at the highest quality. */
export function compressed(data: string | Buffer): number {
  const params = { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY };
  return brotliCompressSync(data, { params }).length;
}

const unescaped = (text: string) =>
  text
    .replace(/&#x27;|&#39;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

/** The values of an attribute of the elements of a name ('' for any). */
export function attributes(html: string, element: string, name: string): string[] {
  const tags = html.match(new RegExp(`<${element === '' ? '[a-z][\\w-]*' : element}\\b[^>]*>`, 'g')) ?? [];
  return tags.flatMap((tag) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? []).map(unescaped);
}

/** The scripts that stand in the page itself. */
export function inlineScripts(html: string): string[] {
  return [...html.matchAll(/<script\b(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(([, code = '']) => code);
}

/** The addresses of the scripts that a page asks for, as they stand in it. */
export function scriptsOf(html: string): string[] {
  const preloads = (html.match(/<link\b[^>]*rel="modulepreload"[^>]*>/g) ?? []).flatMap((tag) =>
    attributes(tag, 'link', 'href'),
  );
  const islands = ['component-url', 'renderer-url', 'before-hydration-url'].flatMap((name) =>
    attributes(html, 'astro-island', name),
  );
  return [...attributes(html, 'script', 'src'), ...islands, ...preloads];
}

const beside = (path: string, specifier: string) => posix.join(posix.dirname(path), specifier);
const staticImport = /(?:\bfrom|\bimport)\s*["'](\.[^"']+)["']/g;
/** A worker is started by its address. */
const workerOf = /\bnew URL\(\s*["'`]([^"'`]+\.js)["'`]/g;
const lateImport = /\bimport\(\s*["'`](\.[^"'`]+)["'`]\s*\)/g;

/** What a built module imports: at once, and only when asked. */
export function importsOf(folder: string, path: string): { now: string[]; late: string[] } {
  const code = textOf(folder, path);
  const found = (pattern: RegExp) =>
    [...code.matchAll(pattern)].map(([, to = '']) => (to.startsWith('/') ? to.slice(1) : beside(path, to)));
  return { now: found(staticImport), late: [...found(lateImport), ...found(workerOf)] };
}

/** Modules and everything that they import at once, those in `without` left out. */
export function closure(
  folder: string,
  start: readonly string[],
  without: ReadonlySet<string> = new Set(),
): Set<string> {
  const reached = new Set<string>();
  const follow = (path: string): void => {
    if (reached.has(path) || without.has(path)) return;
    reached.add(path);
    importsOf(folder, path).now.forEach(follow);
  };
  start.forEach(follow);
  return reached;
}
