import { currentVersion, formatName } from './job-shape';
import { describe, refuse, type Checked } from './problem';
import { everyChoice, rowsOf, type Table } from './tables/table';
import { newest, tables } from './tables/tables';

type File = Readonly<Record<string, unknown>>;
/** Turns a file of one version into the next; gets whatever was in the file, never throws. */
export type Migration = (file: File) => Record<string, unknown>;

/**
 * The file with every "not-sure" spelled out as the choices its version had. A choice that came
 * later was not among what the reader had before them, so it is not among what they left open.
 */
function spelledOut(file: File, table: Table): Record<string, unknown> {
  const open = (scope: 'site' | 'zone') =>
    new Map(
      rowsOf(table, scope).flatMap((row) => {
        const every = everyChoice(row);
        return every === undefined ? [] : [[row.id, every]];
      }),
    );
  const spell = (part: unknown, rows: ReturnType<typeof open>): unknown => {
    if (typeof part !== 'object' || part === null || Array.isArray(part)) return part;
    const unsure = Object.entries(part).filter(
      ([id, value]) => value === 'not-sure' && rows.has(id),
    );
    if (!unsure.length) return part;
    const spelled = unsure.map(([id]) => [id, rows.get(id)]);
    return { ...part, ...Object.fromEntries(spelled) };
  };
  const { site, zones } = file;
  const zoneRows = open('zone');
  return {
    ...file,
    ...(site !== undefined && { site: spell(site, open('site')) }),
    ...(Array.isArray(zones) && { zones: zones.map((zone) => spell(zone, zoneRows)) }),
  };
}

/**
 * Migrations by the version they start from: entry 0 turns version 1 into version 2. What a later
 * version adds may stand in a file of an earlier one; what was there before means what it meant.
 */
export const migrations: readonly Migration[] = tables
  .slice(0, -1)
  .map((table, index) => (file) => ({ ...spelledOut(file, table), version: index + 2 }));

/** A file of the present version in its plainest form. */
export const plain: Migration = (file) => spelledOut(file, newest);

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
