/** WebKit as GTK has it, driven over WebDriver by the driver of its own package. It needs a screen: `xvfb-run` gives one. */
import { spawn, spawnSync } from 'node:child_process';
import { globSync } from 'node:fs';
import type { Engine } from './engine.ts';

const browsers = '/usr/lib/*/webkit{2gtk-4.*,gtk-6.*}/MiniBrowser';
export function webkitHere(): string | undefined {
  const driver = spawnSync('WebKitWebDriver', ['--version']);
  if (driver.error || (process.env['DISPLAY'] === undefined && process.env['WAYLAND_DISPLAY'] === undefined)) return;
  return globSync(browsers)[0];
}

const port = 4477;

export async function webkit(binary: string): Promise<Engine> {
  const driver = spawn('WebKitWebDriver', [`--port=${port}`], { stdio: 'ignore' });
  async function ask<Result>(method: string, path: string, body?: object): Promise<Result> {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body && { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
    const { value } = (await answer.json()) as { value: Result & { error?: string; message?: string } };
    if (!answer.ok) throw new Error(`${path}: ${value.error} ${value.message}`);
    return value;
  }
  for (let turn = 0; ; turn++) {
    const up = await ask('GET', '/status').then(
      () => true,
      () => false,
    );
    if (up) break;
    if (turn > 100) throw new Error('WebKitWebDriver does not answer');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  const { sessionId } = await ask<{ sessionId: string }>('POST', '/session', {
    capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': { binary, args: ['--automation'] } } },
  });
  const at = `/session/${sessionId}`;
  await ask('POST', `${at}/timeouts`, { script: 60_000, pageLoad: 60_000 });
  return {
    name: 'WebKitGTK',
    // Its driver has no console; the journey listens in the page for refusals.
    complaints: [],
    open: (url) => ask('POST', `${at}/url`, { url }),
    reload: () => ask('POST', `${at}/refresh`, {}),
    async evaluate(expression) {
      const script = `const done = arguments[0]; (async () => JSON.stringify(await (${expression})) ?? 'null')().then(done, (e) => done('"failed: ' + String(e).replaceAll('"', "'") + '"'));`;
      return JSON.parse(await ask<string>('POST', `${at}/execute/async`, { script, args: [] }));
    },
    async close() {
      await ask('DELETE', at).catch(() => {});
      const ended = new Promise((resolve) => driver.once('exit', resolve));
      driver.kill();
      await ended;
    },
  };
}
