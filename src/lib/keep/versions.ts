import { currentVersion, formatName } from './job-shape';
import { describe, refuse, type Checked } from './problem';

/** Turns a file of one version into the next; gets whatever was in the file, never throws. */
export type Migration = (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/**
 * Migrations by the version they start from: entry 0 turns version 1 into version 2.
 * There is one for every version before the present one.
 */
export const migrations: readonly Migration[] = [];

/** Checks that a value is a job file of a known version and brings it to the present one. */
export function atPresentVersion(
  raw: unknown,
  steps: readonly Migration[] = migrations,
): Checked<Record<string, unknown>> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refuse(
      [],
      { id: 'object', fields: ['format', 'version', 'site', 'zones'] },
      describe(raw),
    );
  const file = raw as Record<string, unknown>;
  const format = Object.hasOwn(file, 'format') ? file.format : undefined;
  if (format !== formatName)
    return refuse(['format'], { id: 'format', format: formatName }, describe(format));
  const version = Object.hasOwn(file, 'version') ? file.version : undefined;
  const latest = steps.length + 1;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > latest)
    return refuse(
      ['version'],
      { id: 'version', known: Array.from({ length: latest }, (_, index) => index + 1) },
      describe(version),
    );
  return {
    ok: true,
    value: steps
      .slice(version - 1)
      .reduce<Record<string, unknown>>((older, step) => step(older), file),
  };
}

if (migrations.length !== currentVersion - 1)
  throw new Error('Every version of the job file before the present one needs a migration.');
