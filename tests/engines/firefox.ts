/** Firefox, driven over its own WebDriver BiDi socket: nothing is installed for it but the browser. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Engine } from './engine.ts';

const programs = ['firefox-esr', 'firefox'];
export const firefoxHere = () => programs.find((name) => spawnSync(name, ['--version']).status === 0);

interface Answer {
  readonly id?: number;
  readonly type: 'success' | 'error' | 'event';
  readonly result?: unknown;
  readonly message?: string;
  readonly method?: string;
  readonly params?: { readonly level: string; readonly text: string };
}

/** Starts it without a window, in a profile of its own. */
export async function firefox(program: string): Promise<Engine> {
  const profile = mkdtempSync(join(tmpdir(), 'ton-for-ton-firefox-'));
  const child = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0']);
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stderr.on('data', (data) => {
      said += String(data);
      const found = /WebDriver BiDi listening on (ws:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    child.once('exit', () => reject(new Error(`${program} ended: ${said}`)));
  });
  const socket = new WebSocket(`${address}/session`);
  await new Promise((resolve, reject) => {
    socket.onopen = resolve;
    socket.onerror = reject;
  });
  const waiting = new Map<number, (answer: Answer) => void>();
  const complaints: string[] = [];
  socket.onmessage = ({ data }) => {
    const answer = JSON.parse(String(data)) as Answer;
    if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
    else if (answer.params?.level === 'error') complaints.push(answer.params.text);
  };
  let last = 0;
  const ask = <Result>(method: string, params: object): Promise<Result> =>
    new Promise((resolve, reject) => {
      const id = ++last;
      waiting.set(id, (answer) => {
        waiting.delete(id);
        if (answer.type === 'success') resolve(answer.result as Result);
        else reject(new Error(`${method}: ${answer.message}`));
      });
      socket.send(JSON.stringify({ id, method, params }));
    });
  await ask('session.new', { capabilities: {} });
  await ask('session.subscribe', { events: ['log.entryAdded'] });
  const { context } = await ask<{ context: string }>('browsingContext.create', { type: 'tab' });
  await ask('browsingContext.setViewport', { context, viewport: { width: 390, height: 844 } });
  return {
    name: program,
    complaints,
    open: (url) => ask('browsingContext.navigate', { context, url, wait: 'complete' }),
    reload: () => ask('browsingContext.reload', { context, wait: 'complete' }),
    async evaluate(expression) {
      const { result, exceptionDetails } = await ask<{
        result?: { value?: unknown };
        exceptionDetails?: { text: string };
      }>('script.evaluate', {
        expression: `(async () => JSON.stringify(await (${expression})) ?? 'null')()`,
        target: { context },
        awaitPromise: true,
      });
      if (exceptionDetails) throw new Error(`${exceptionDetails.text} in ${expression}`);
      return JSON.parse(String(result?.value));
    },
    async close() {
      await ask('browser.close', {}).catch(() => {});
      socket.close();
      const ended = new Promise((resolve) => child.once('exit', resolve));
      child.kill();
      await ended;
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
