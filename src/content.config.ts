import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { type SourceKey, sourceLabels } from './calc/sourceLabels.ts';

/** Quotation marks and apostrophes as the text of an article has them. */
const printed = z.string().transform((text) =>
  text
    .replace(/(^|[\s(])"/g, '$1“')
    .replaceAll('"', '”')
    .replaceAll("'", '’'),
);

/** Articles on their four shelves; the folder is the shelf, `order` the place on it. */
const articles = defineCollection({
  loader: glob({ base: './content', pattern: '{method,cautions,reports,classroom}/*.mdx' }),
  schema: z.strictObject({
    title: printed,
    summary: printed,
    order: z.number().int().positive(),
    /** For the field: they stand on a pocket card, which holds no more. */
    steps: z
      .array(printed.refine((step) => step.length <= 110))
      .min(3)
      .max(9)
      .optional(),
    /** Path of the worksheet that does what the article says. */
    worksheet: z.string().startsWith('/worksheets/').endsWith('/').optional(),
  }),
});

/** Words of the trade; `source` is a key of the bibliography, `also` what else they are called. */
const glossary = defineCollection({
  loader: file('content/glossary.yaml'),
  schema: z.strictObject({
    id: z.string(),
    term: z.string(),
    also: z.array(z.string()).optional(),
    says: z.string(),
    source: z.enum(Object.keys(sourceLabels) as [SourceKey, ...SourceKey[]]).optional(),
  }),
});

export const collections = { articles, glossary };
