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
  }),
});

export const collections = { articles };
