import { z } from 'zod';
import { evidenceInput, examinationInput } from './diagnose-input.ts';
import { diagnosis } from './diagnose-output.ts';

/** The JSON Schema (draft 2020-12) of what `combside diagnose` reads and prints, made from what checks it. */
export function diagnoseSchema(): Record<string, unknown> {
  const bare = (schema: z.ZodType, io: 'input' | 'output') => {
    const { $schema: _, ...rest } = z.toJSONSchema(schema, { io });
    return rest;
  };
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'combside diagnose',
    description: 'Input: an examination or evidence. Output: the diagnosis that --json prints.',
    anyOf: [{ $ref: '#/$defs/examination' }, { $ref: '#/$defs/evidence' }],
    $defs: {
      examination: bare(examinationInput, 'input'),
      evidence: bare(evidenceInput, 'input'),
      diagnosis: bare(diagnosis, 'output'),
    },
  };
}
