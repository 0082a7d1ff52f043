import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const policyIn = (html) => /http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1];

/** The scripts in a page, as a policy names them. One that stands before the policy of its page is not named there. */
const scriptsIn = (html) =>
  [...html.matchAll(/<script\b(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(
    ([, code]) => `'sha256-${createHash('sha256').update(code).digest('base64')}'`,
  );

/**
 * The policy of the pages once more as a header, where it rules over workers, over all other files and from the first letter of a page,
 * and may say who frames one. The engine of the search is WebAssembly, which needs a word of its own in its worker.
 */
function asHeader(policy, scripts) {
  const missing = [...scripts].filter((one) => !policy.includes(one)).sort();
  const words = ["script-src 'self'", "'wasm-unsafe-eval'", ...missing].join(' ');
  return `${policy
    .replace("script-src 'self'", words)
    .replace(/\s*;\s*/g, '; ')
    .replace(/; $/, '')}; frame-ancestors 'none'`;
}

/** The answers' headers by path, in the plain form that several static hosts read. What is not named is asked for anew each time. */
function rules(base, policy) {
  return `${base}*
  Content-Security-Policy: ${policy}
  X-Content-Type-Options: nosniff
  Referrer-Policy: no-referrer
  Permissions-Policy: camera=(), microphone=(), geolocation=(), payment=(), usb=()
  Cross-Origin-Opener-Policy: same-origin
${base}_astro/*
  Cache-Control: public, max-age=31536000, immutable
${base}sw.js
  Cache-Control: no-cache
`;
}

/** Writes _headers beside the pages. All of them carry one policy; one that differed would be refused by the header of another. */
export function headers() {
  let base = '/';
  return {
    name: 'headers',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': async ({ dir, pages }) => {
        const root = fileURLToPath(dir);
        const policies = new Set();
        const scripts = new Set();
        for (const { pathname } of pages) {
          const file = pathname === '404/' ? '404.html' : join(pathname, 'index.html');
          const html = await readFile(join(root, file), 'utf8');
          policies.add(policyIn(html));
          for (const script of scriptsIn(html)) scripts.add(script);
        }
        const [policy] = policies;
        if (policies.size !== 1 || !policy) throw new Error(`The pages carry ${policies.size} policies, not one.`);
        await writeFile(join(root, '_headers'), rules(base, asHeader(policy, scripts)));
      },
    },
  };
}
