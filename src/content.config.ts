import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** Articles on their four shelves; the folder is the shelf, `order` the place on it. */
const articles = defineCollection({
  loader: glob({ base: './content', pattern: '{method,cautions,reports,classroom}/*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    order: z.number().int().positive(),
    /** For the field: they stand on a pocket card, which holds no more. */
    steps: z.array(z.string().max(110)).min(3).max(9).optional(),
    /** Path of the worksheet that does what the article says. */
    worksheet: z.string().startsWith('/worksheets/').endsWith('/').optional(),
  }),
});

export const collections = { articles };
