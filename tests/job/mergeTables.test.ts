import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { mergeEdits, mergeTable } from '../../src/job/mergeTables.ts';
import { processesOf } from '../../src/job/processes.ts';
import { setCell } from '../../src/job/ratingEdits.ts';
import { readEdits, readJob } from '../../src/job/schema.ts';
import { addState, removeState, setState } from '../../src/job/stateEdits.ts';
import { emptyStates, namedStates, stateKeys } from '../../src/job/states.ts';
import type { Edit, Job, TypedTable } from '../../src/job/types.ts';
import { chartWith } from './charts.ts';

/** Edits as a page tells them to others: each table with what it was. */
const told = (job: Job, edits: readonly Edit[]): readonly Edit[] =>
  edits.map((one) => (one.slot === 'tables' ? { ...one, was: job.tables[one.key] } : one));

const { columns } = emptyStates('ip');
const tableOf = (rows: Readonly<Record<string, string>>): TypedTable => ({
  columns,
  rows: Object.entries(rows).map(([key, name]) => columns.map((column) => ({ key, name })[column.key] ?? '')),
});
const rowsOf = (table: TypedTable | undefined) =>
  Object.fromEntries((table?.rows ?? []).map(([key, name]) => [key, name]));

/** A table of states by their keys: some of them, with names. */
const rows = fc.dictionary(fc.constantFrom(...stateKeys), fc.constantFrom('', 'Roof', 'Room', 'Mixed', 'Coil'), {
  noNullPrototype: true,
});
const table = rows.map((one) => (Object.keys(one).length === 0 ? undefined : tableOf(one)));
const differing = (one: TypedTable | undefined, other: TypedTable | undefined) =>
  stateKeys.filter((key) => rowsOf(one)[key] !== rowsOf(other)[key]);

describe('two changes of one table', () => {
  test('leave each row as the change has it where the change touched it, and as it stands where it did not', () => {
    fc.assert(
      fc.property(table, table, table, (now, was, to) => {
        const merged = rowsOf(mergeTable('states', now, was, to));
        const touched = differing(was, to);
        for (const key of stateKeys) {
          expect(merged[key]).toBe(now === undefined || touched.includes(key) ? rowsOf(to)[key] : rowsOf(now)[key]);
        }
      }),
    );
  });

  test('give the table of the change where nothing else happened, and change nothing when made twice', () => {
    fc.assert(
      fc.property(table, table, (was, to) => {
        const once = mergeTable('states', was, was, to);
        expect(once).toEqual(to);
        expect(rowsOf(mergeTable('states', once, was, to))).toEqual(rowsOf(to));
      }),
    );
  });

  test('come to the same in either order where they touch different rows', () => {
    const change = (keys: readonly string[]) =>
      fc.dictionary(fc.constantFrom(...keys), fc.option(fc.constantFrom('New', 'Newer')), { noNullPrototype: true });
    const changed = (was: Readonly<Record<string, string>>, by: Readonly<Record<string, string | null>>) =>
      tableOf(
        Object.fromEntries(Object.entries({ ...was, ...by }).flatMap(([key, name]) => (name ? [[key, name]] : []))),
      );
    fc.assert(
      fc.property(rows, change(['a', 'b', 'c', 'd']), change(['e', 'f', 'g', 'h']), (start, mine, yours) => {
        const was = changed(start, {});
        const [one, other] = [changed(start, mine), changed(start, yours)];
        const first = mergeTable('states', mergeTable('states', was, was, one), was, other);
        const second = mergeTable('states', mergeTable('states', was, was, other), was, one);
        expect(rowsOf(first)).toEqual(rowsOf(second));
        expect(rowsOf(first)).toEqual(rowsOf(changed(start, { ...mine, ...yours })));
      }),
    );
  });

  test('never make a record that cannot be read again', () => {
    fc.assert(
      fc.property(table, table, table, (now, was, to) => {
        const merged = mergeTable('states', now, was, to);
        expect(readJob({ ...emptyJob('a'), tables: merged ? { states: merged } : {} }).ok).toBe(true);
      }),
    );
  });

  test('of more rows than the table has room for keep the change whole', () => {
    const many = (first: number) =>
      Object.fromEntries(Array.from({ length: 400 }, (_, row) => [`${first + row}/1/1`, '30']));
    const rating = (cells: Readonly<Record<string, string>>): TypedTable => ({
      columns: ['outdoorDryBulb', 'enteringWetBulb', 'block', 'total'].map((key) => ({ key, unit: 'count' })),
      rows: Object.entries(cells).map(([place, total]) => [...place.split('/'), total]),
    });
    const change = rating(many(1000));
    expect(mergeTable('rating', rating(many(0)), undefined, change)).toBe(change);
  });

  test('keep two rows of one key apart, and rows in their order', () => {
    const twice: TypedTable = { columns, rows: [...tableOf({ a: 'One' }).rows, ...tableOf({ a: 'Two', b: 'B' }).rows] };
    const more = { columns, rows: [...twice.rows, ...tableOf({ c: 'C' }).rows] };
    const renamed = { columns, rows: [...tableOf({ a: 'New' }).rows, ...twice.rows.slice(1)] };
    expect(mergeTable('states', more, twice, renamed)?.rows.map(([key, name]) => `${key} ${name}`)).toEqual([
      'a New',
      'a Two',
      'b B',
      'c C',
    ]);
  });
});

describe('two pages with one job', () => {
  const start = chartWith([
    { name: 'Roof', dryBulb: '95', relativeHumidity: '40' },
    { name: 'Room', dryBulb: '75', relativeHumidity: '50' },
  ]);
  const namesOf = (job: Job) => namedStates(job).map(({ name, dryBulb }) => `${name} ${dryBulb.text}`);

  test('keep what each typed in a row of its own', () => {
    const here = setState(start, 'a', { dryBulb: '96' }, 'ip');
    const there = setState(start, 'b', { dryBulb: '74' }, 'ip');
    for (const [first, second] of [
      [here, there],
      [there, here],
    ]) {
      const both = mergeEdits(mergeEdits(start, told(start, first!)), told(start, second!));
      expect(namesOf(both)).toEqual(['Roof 96', 'Room 74']);
    }
  });

  test('keep a state that one added while the other took another away, and the process that lost its end', () => {
    const joined = chartWith([], [{ kind: 'drying', from: 'a', to: 'b' }], 'ip', start);
    const added = told(joined, addState(joined, 'ip', { name: 'Coil', dryBulb: '55' }));
    const removed = told(joined, removeState(joined, 'a'));
    const both = mergeEdits(mergeEdits(joined, added), removed);
    expect(namesOf(both)).toEqual(['Room 75', 'Coil 55']);
    expect(processesOf(both)[0]).toMatchObject({ from: null, to: 'b' });
  });

  test('read a bare number in the unit in which it was typed, where their tables have other units', () => {
    const empty = emptyJob('a');
    const here = applyEdits(empty, addState(empty, 'ip', { name: 'Roof', dryBulb: '95', relativeHumidity: '40' }));
    const two = setState(applyEdits(here, addState(here, 'ip')), 'b', { dryBulb: '24' }, 'si');
    const inSi = applyEdits(empty, addState(empty, 'si', { name: 'Dach', dryBulb: '35', relativeHumidity: '40' }));
    const both = mergeEdits(inSi, told(here, two));
    expect(namesOf(both)).toEqual(['Dach 35 °C', ' 24 °C']);
    expect(namedStates(both)[0]?.dryBulb.read).toMatchObject({ si: 35 });
  });

  test('keep the figures of the maker’s table that each typed', () => {
    const empty = emptyJob('a');
    const at = (key: string, text: string) => told(empty, setCell(empty, { key, quantity: 'total' }, text));
    const both = mergeEdits(mergeEdits(empty, at('35/19/1', '30.5')), at('35/22/1', '33.5'));
    expect(both.tables.rating?.rows.map((row) => row.slice(0, 4).join(' '))).toEqual(['35 19 1 30.5', '35 22 1 33.5']);
  });

  test('hear no table that breaks the rules, neither the new one nor the one it was', () => {
    const good = told(start, setState(start, 'a', { dryBulb: '96' }, 'ip'));
    expect(readEdits(good)).toEqual(good);
    expect(readEdits(good.map((edit) => ({ ...edit, was: { columns: [], rows: 'none' } })))).toEqual([]);
  });
});
