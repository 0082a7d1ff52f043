/** Finds a browser for the tests: a variable, an installed one, else Debian's package, else one sentence of advice. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** The shell without a window comes first: it does the same work in two thirds of the time. */
const names = [
  'chromium-headless-shell',
  'google-chrome',
  'google-chrome-stable',
  'chromium',
  'chromium-browser',
  'chrome',
];
const places = [
  '/usr/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

const onPath = (name: string) =>
  spawnSync(process.platform === 'win32' ? 'where' : 'which', [name], { encoding: 'utf8' }).stdout?.split('\n')[0] ??
  '';

function installed(): string | undefined {
  return [...names.map(onPath), ...places].find((path) => path !== '' && existsSync(path));
}

/** On Debian as root the package can be had at once; elsewhere nobody's machine is changed. */
function installOnDebian(): void {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  const get = (...args: readonly string[]) =>
    spawnSync('apt-get', args, { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
  get('update');
  // Older releases have the browser with a window only.
  for (const name of ['chromium-headless-shell', 'chromium']) {
    if (installed()) return;
    console.log(`No browser found: installing the package ${name}.`);
    get('install', '-y', '--no-install-recommends', name);
  }
}

/** Path of a Chromium-like browser. Throws with advice when there is none. */
export function findBrowser(): string {
  const named = process.env['BROWSER_PATH'];
  if (named) return named;
  const here = installed();
  if (here) return here;
  installOnDebian();
  const now = installed();
  if (now) return now;
  throw new Error('The browser tests need Chrome or Chromium: install one, or set BROWSER_PATH to where it stands.');
}

/** What the browser is started with: no traffic of its own, and nothing that a container lacks. */
export const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
