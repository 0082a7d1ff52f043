/** The JSON Schema of a file of jobs, made from the very rules by which this site reads one. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { fileKind } from '~/job/jobFile.ts';
import { jobSchema, jobVersion, schemaParts } from '~/job/schema.ts';

export function fileSchema(): object {
  const { $schema, $defs, ...job } = toJsonSchema(jobSchema, { definitions: schemaParts });
  return {
    $schema,
    title: 'Ton for Ton, jobs',
    description:
      'A file of jobs: what was entered, as text, in the unit in which it was typed. Keys that are not named here are not read. Lengths of texts are counted in UTF-16 units where a file is read, which may be more than this schema counts.',
    type: 'object',
    required: ['kind', 'version', 'jobs'],
    properties: {
      kind: { const: fileKind },
      version: { const: jobVersion },
      jobs: { type: 'array', items: { $ref: '#/$defs/job' } },
    },
    $defs: { ...$defs, job },
  };
}

export const GET = (): Response => new Response(JSON.stringify(fileSchema()));
