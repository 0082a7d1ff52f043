/**
 * Stands in for Vitest while mutants are tried: `test` and `describe` only write down what is to be run, so that every test stays
 * loaded and runs as often as it is asked to. `expect` is Vitest's own.
 */
export { expect } from 'vitest';

/** Every test of every file that was loaded: its name and its body. */
export const tests = [];

const groups = [];
const nameOf = (title) => [...groups, title].join(' > ').slice(0, 200);
/** A title with what its row puts in: `$key`, `%s` and the like. */
function filled(title, row, index) {
  const list = Array.isArray(row) ? [...row] : [row];
  const text = title
    .replace(/\$(\w+)/g, (_, key) => String(row?.[key]))
    .replace(/%[sijdfo]/g, () => String(list.shift()));
  return `${text} (${index + 1})`;
}
const bodyOf = (rest) => rest.find((one) => typeof one === 'function');
const spread = (body, row) => (Array.isArray(row) ? () => body(...row) : () => body(row));

export function test(title, ...rest) {
  tests.push({ name: nameOf(title), body: bodyOf(rest) });
}
test.each =
  (rows) =>
  (title, ...rest) => {
    for (const [index, row] of [...rows].entries())
      tests.push({ name: nameOf(filled(title, row, index)), body: spread(bodyOf(rest), row) });
  };

export function describe(title, body) {
  groups.push(title);
  body();
  groups.pop();
}
describe.each = (rows) => (title, body) => {
  for (const [index, row] of [...rows].entries()) describe(filled(title, row, index), spread(body, row));
};
