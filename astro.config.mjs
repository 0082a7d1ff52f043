import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { rehypeBaseLinks } from './src/build/baseLinks.mjs';
import { calcModule } from './src/build/calcModule.mjs';
import { rehypeNoBreakUnits } from './src/build/noBreakUnits.mjs';
import { offline } from './src/build/offline.mjs';
import { rehypeTableAlign } from './src/build/tableAlign.mjs';

const base = process.env.BASE ?? '/';

/**
 * What every worksheet needs from its first moment goes into one file: it compresses a tenth better than in pieces. What is
 * fetched when it is first needed stays out of it.
 */
const late =
  /sources?Labels|sources\.ts|\/job\/(demo|state|csv|process|encode|decode|link|storage|database|schema)|\/words\/en\/(results|remarks|working|identity|margin|figures|notices|sheetPage|moistAir|home|lessons|reference|sections)|\/calc\/(index|mix)/;
const first =
  /\/node_modules\/(preact|@preact\/signals|@preact\/signals-core)\/|\/src\/(calc|job|words)\/|\/src\/parts\/(Field|Choices|Step|Echo|Mark)\.|\/src\/islands\/(store|jobStore|keep|fields|opening|show|lazy|early|QuantityField|ChoiceField|JobLine)\./;
const sheet =
  /\/src\/islands\/capacity\/(index|model|cells|cellProblem|travel|Bar|Answer|remarks|Remarks|StepFrame|start|steps\/\w+)\.|\/src\/islands\/(NoteField|LateFold)\.|\/src\/parts\/(AnswerBar|TextField|Select|Caution)\./;
const oneBase = {
  groups: [
    { name: 'base', test: (id) => first.test(id) && !late.test(id) },
    { name: 'sheet', test: (id) => sheet.test(id) },
  ],
};

export default defineConfig({
  site: process.env.SITE ?? 'https://example.test',
  base,
  trailingSlash: 'always',
  // Vitest and `astro check` read the content store here; the default place is written by builds only.
  cacheDir: './.astro',
  markdown: {
    // Astro's own Markdown engine runs no remark or rehype plugins.
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [
        // MathML alone: no inline styles, which the policy below forbids, and no fonts.
        [rehypeKatex, { output: 'mathml', strict: 'error', throwOnError: true }],
        rehypeTableAlign,
        rehypeNoBreakUnits,
        [rehypeBaseLinks, { base }],
      ],
    }),
    syntaxHighlight: false,
  },
  // Names browsers old enough to need other words for `light-dark()`; the build then writes both.
  vite: {
    build: { cssTarget: ['chrome111', 'firefox114', 'safari16.4'] },
    environments: {
      client: {
        build: {
          modulePreload: false,
          rolldownOptions: { output: { codeSplitting: oneBase } },
        },
      },
    },
  },
  // `offline` lists every built file, so it comes last.
  integrations: [preact({ compat: false }), mdx(), calcModule(), offline()],
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "base-uri 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "form-action 'none'",
        "img-src 'self' data: blob:",
        "manifest-src 'self'",
        "object-src 'none'",
        "worker-src 'self'",
      ],
      scriptDirective: { resources: ["'self'"] },
      styleDirective: { resources: ["'self'"] },
    },
  },
});
