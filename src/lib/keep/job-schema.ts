import { toJsonSchema } from '@valibot/to-json-schema';
import type { Expected } from './problem';
import { photosShape } from './photos/photo-file';
import { formatName, currentVersion, jobShape } from './job-shape';

/** What a shape takes, as JSON Schema. */
function schemaOf(shape: Parameters<typeof toJsonSchema>[0]) {
  return toJsonSchema(shape, {
    target: 'draft-2020-12',
    typeMode: 'input',
    overrideAction({ valibotAction, jsonSchema }) {
      if (valibotAction.type === 'regex')
        return {
          ...jsonSchema,
          pattern: (valibotAction as unknown as { requirement: RegExp }).requirement.source,
        };
      if (valibotAction.type === 'raw_check') return jsonSchema;
      if (valibotAction.type !== 'check') return undefined;
      const said = JSON.parse(
        String((valibotAction as unknown as { message: string }).message),
      ) as Expected;
      if (said.id === 'unique' && jsonSchema.type === 'array')
        return { ...jsonSchema, uniqueItems: true };
      return jsonSchema;
    },
  });
}

/**
 * The JSON Schema (draft 2020-12) of the job file, made from the parser's own shape. A file that
 * passes it may still be refused for two zones with one id, a choice in both `yes` and `maybe`, a
 * name that cannot be seen, a field written twice, or a drawing that cannot be (`survey/faults.ts`).
 * Photos stand in files alone: records and links know none.
 */
export function jobSchema(): object {
  const schema = schemaOf(jobShape);
  const photos = { ...schemaOf(photosShape), $schema: undefined };
  return {
    ...schema,
    properties: { ...schema.properties, photos },
    $comment: `${formatName}, version ${currentVersion}`,
  };
}
