import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { rehypeBaseLinks } from './src/build/baseLinks.mjs';
import { calcModule } from './src/build/calcModule.mjs';
import { chunkList } from './src/build/chunkList.mjs';
import { codeSplitting } from './src/build/files.mjs';
import { headers } from './src/build/headers.mjs';
import { rehypeNoBreakUnits } from './src/build/noBreakUnits.mjs';
import { offline } from './src/build/offline.mjs';
import { plainProps } from './src/build/plainProps.mjs';
import { searchIndex } from './src/build/searchIndex.mjs';
import { rehypeTableAlign } from './src/build/tableAlign.mjs';
import { rehypeTableScroll } from './src/build/tableScroll.mjs';

const base = process.env.BASE ?? '/';

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
        rehypeTableScroll,
        rehypeNoBreakUnits,
        [rehypeBaseLinks, { base }],
      ],
    }),
    syntaxHighlight: false,
  },
  // Names browsers old enough to need other words for `light-dark()`; the build then writes both.
  vite: {
    plugins: [plainProps(), chunkList()],
    build: { cssTarget: ['chrome111', 'firefox114', 'safari16.4'] },
    environments: {
      client: {
        build: {
          modulePreload: false,
          rolldownOptions: { output: { codeSplitting } },
        },
      },
    },
  },
  // `offline` lists every built file, so it comes last.
  integrations: [preact({ compat: false }), mdx(), calcModule(), searchIndex(), headers(), offline()],
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
