/**
 * Stands in for Vitest while mutants are tried: `test` and `describe` only write down what is to be run, so that every test stays
 * loaded and runs as often as it is asked to. `expect` is Vitest's own.
 */
export { expect } from 'vitest';

/** Every test of every file that was loaded: its name and its body. */
export const tests = [];

const groups = [];
const nameOf = (title, row) =>
  `${[...groups, title].join(' > ')}${row === undefined ? '' : ` (${row + 1})`}`.slice(0, 200);
const bodyOf = (rest) => rest.find((one) => typeof one === 'function');
const spread = (body, row) => (Array.isArray(row) ? () => body(...row) : () => body(row));

export function test(title, ...rest) {
  tests.push({ name: nameOf(title), body: bodyOf(rest) });
}
test.each =
  (rows) =>
  (title, ...rest) => {
    for (const [index, row] of [...rows].entries())
      tests.push({ name: nameOf(title, index), body: spread(bodyOf(rest), row) });
  };

export function describe(title, body) {
  groups.push(title);
  body();
  groups.pop();
}
describe.each = (rows) => (title, body) => {
  for (const [index, row] of [...rows].entries()) describe(`${title} (${index + 1})`, spread(body, row));
};
