/** Installs, once, what only the audit and the mutation test need: the test command and the site do without it. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('.', import.meta.url));

/** Installs the packages of this folder if they are missing. Throws when that fails. */
export function installTools(): void {
  if (existsSync(`${folder}node_modules/.package-lock.json`)) return;
  console.log('Installing the packages of tests/tools, once.');
  const { status } = spawnSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: folder,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) throw new Error('npm could not install the packages of tests/tools.');
}
