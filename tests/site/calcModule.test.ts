/** The calculation package as it is built for programs elsewhere: one module, any Node, with its declarations. */
import { execFile } from 'node:child_process';
import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import ts from 'typescript';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { goldenJobRows } from '../published/data/goldenJobRows.ts';

const run = promisify(execFile);
const [job] = goldenJobRows;
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ton-for-ton-calc-'));
  for (const name of ['calc.js', 'calc.d.ts', 'calc'])
    await cp(join(inject('dist'), name), join(folder, name), { recursive: true });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Every Node on this machine: the one that runs this, and those on the path. */
async function nodes(): Promise<Map<string, string>> {
  const places = [
    process.execPath,
    ...(process.env['PATH'] ?? '').split(delimiter).map((place) => join(place, 'node')),
  ];
  const found = new Map<string, string>();
  for (const place of places) {
    const version = await run(place, ['--version']).then(
      ({ stdout }) => stdout.trim(),
      () => '',
    );
    if (version !== '' && !found.has(version)) found.set(version, place);
  }
  return found;
}

const program = `
  const { moistAir, coilLoad, dryAirFlow } = await import(process.argv[1]);
  const celsius = (f) => (f - 32) / 1.8;
  const job = JSON.parse(process.argv[2]);
  const [entering, leaving] = [job.entering, job.leaving].map(([f, relativeHumidity]) =>
    moistAir({ dryBulb: celsius(f), relativeHumidity, pressure: job.pressure }));
  const volumeFlow = job.cfm * 0.3048 ** 3 / 60;
  const flow = dryAirFlow({ volumeFlow, at: { specificVolume: entering.specificVolume } });
  const { total } = coilLoad({ entering, leaving, dryAirFlow: flow });
  console.log(JSON.stringify({ wetBulb: entering.wetBulb, total }));
`;

test.each([...(await nodes())])(
  'calc.js runs as it stands under Node %s and agrees with a job worked out elsewhere',
  async (version, node) => {
    expect(Number(/^v(\d+)/.exec(version)?.[1])).toBeGreaterThanOrEqual(20);
    const address = pathToFileURL(join(folder, 'calc.js')).href;
    const { stdout } = await run(node, ['--input-type=module', '--eval', program, address, JSON.stringify(job)]);
    const ours = JSON.parse(stdout) as { readonly wetBulb: number; readonly total: number };
    // CoolProp 8.0.0 (HAPropsSI), computed outside this project.
    expect(Math.abs(ours.wetBulb - job!.enteringWetBulb)).toBeLessThan(0.02);
    expect(Math.abs(ours.total / job!.total - 1)).toBeLessThan(job!.tolerance);
  },
);

test('its declarations stand alone, under the strictest rules', async () => {
  const caller = join(folder, 'caller.ts');
  await writeFile(
    caller,
    `import { moistAir } from './calc.js';\nexport const bulb: number = moistAir({ dryBulb: 20, relativeHumidity: 0.5 }).wetBulb;\n`,
  );
  const options = {
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    noEmit: true,
    types: [],
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ESNext,
  };
  const faults = ts.getPreEmitDiagnostics(ts.createProgram([caller], options));
  expect(faults.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))).toEqual([]);
  await writeFile(
    caller,
    `import { moistAir } from './calc.js';\nexport const bulb: string = moistAir({ dryBulb: 20, relativeHumidity: 0.5 }).wetBulb;\n`,
  );
  expect(ts.getPreEmitDiagnostics(ts.createProgram([caller], options))).toHaveLength(1);
});
