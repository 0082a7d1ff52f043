import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { articleOf } from '../../src/components/fieldArticles.ts';
import { airflowQuantities } from '../../src/job/airflow/quantities.ts';
import { ductQuantities } from '../../src/job/ducts/quantities.ts';
import { quantities } from '../../src/job/quantities.ts';
import { sureQuantities } from '../../src/job/sure/quantities.ts';

test('every field that can be typed into has an article that exists', () => {
  const keys = Object.keys({ ...quantities, ...airflowQuantities, ...ductQuantities, ...sureQuantities });
  expect(keys.length).toBeGreaterThan(60);
  const exists = (key: string) => existsSync(new URL(`../../content/method/${articleOf(key)}.mdx`, import.meta.url));
  expect(keys.filter((key) => !exists(key))).toEqual([]);
});
