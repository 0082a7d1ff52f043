import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';
import ts from 'typescript';

const source = fileURLToPath(new URL('../calc/', import.meta.url));
const entry = join(source, 'index.ts');

/** One readable ES module of the whole calculation package. */
async function writeModule(file) {
  const bundle = await rolldown({ input: entry });
  await bundle.write({ file, format: 'esm', minify: false });
  await bundle.close();
}

/** A declaration names its neighbours by '.ts'; beside a built module they are found by '.js'. */
const asBuilt = (text) => text.replace(/(['"])(\.{1,2}\/[^'"]+)\.ts\1/g, '$1$2.js$1');

/** Declarations file by file under `folder`, and one `calc.d.ts` beside the module that hands them on. */
async function writeDeclarations(folder) {
  const program = ts.createProgram([entry], {
    declaration: true,
    emitDeclarationOnly: true,
    allowImportingTsExtensions: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    target: ts.ScriptTarget.ESNext,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    rootDir: source,
    outDir: folder,
    types: [],
  });
  const written = [];
  program.emit(undefined, (path, text) => written.push([path, asBuilt(text)]));
  for (const [path, text] of written) {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text);
  }
  await writeFile(`${folder}.d.ts`, "export * from './calc/index.js';\n");
  return written.length;
}

/** Writes the calculation package as `calc.js` with its declarations, for callers that have no clone of the project. */
export function calcModule() {
  return {
    name: 'calc-module',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        await writeModule(join(root, 'calc.js'));
        const declarations = await writeDeclarations(join(root, 'calc'));
        logger.info(`calc.js and ${declarations} files of declarations`);
      },
    },
  };
}
