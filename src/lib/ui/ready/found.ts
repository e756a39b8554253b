import type { CheckId, ReadinessRecord } from '$lib/answers/readiness-record';
import { checks } from '$lib/readiness/checks';
import type { ZoneReadiness } from '$lib/readiness/zone';
import { readinessWords, readyPage } from '$words/readiness';
import type { Say } from '$lib/words/types';
import { spokenTime } from './times';

/** What was found at a check, in a few words for the record: readings in order, choices counted. */
export function foundAt(
  check: CheckId,
  record: ReadinessRecord,
  readiness: ZoneReadiness,
  say: Say,
): string {
  const { none } = readyPage.record;
  if (check === 'open-time') return clockFound(record, readiness, say);
  if (check === 'pull-off') return pullOffFound(readiness, say) || none;
  const readings = (record.results[check]?.readings ?? []).filter((reading) => reading !== '');
  if (!readings.length) return none;
  const words = readinessWords.checks(say)[check].choices;
  const { unit } = checks[check];
  const spoken = readings.map((reading) =>
    typeof reading === 'string'
      ? (words[reading] ?? `“${reading}”`)
      : unit === 'mm'
        ? say.typed('mm', reading)
        : unit === 'C'
          ? say.temperature(reading)
          : say.number(reading),
  );
  const given = Object.entries(record.results[check]?.given ?? {}).map(
    ([id, value]) =>
      `${readinessWords.given[id as keyof typeof readinessWords.given].name}: ${
        typeof value !== 'number' || id === 'rinse'
          ? value
          : id === 'air'
            ? say.temperature(value)
            : id === 'humidity'
              ? say.percent(value)
              : say.length(value)
      }`,
  );
  const suffix = unit === 'mm' ? ` ${say.unitOf('mm')}` : unit === 'mV' ? ' mV' : '';
  return [`${counted(spoken)}${suffix}`, ...given].join('; ');
}

/** Values in order; the same one several times in a row as "3 × Clean". */
function counted(values: readonly string[]): string {
  const runs: { value: string; times: number }[] = [];
  for (const value of values) {
    const last = runs.at(-1);
    if (last?.value === value) last.times += 1;
    else runs.push({ value, times: 1 });
  }
  return runs.map(({ value, times }) => (times > 1 ? `${times} × ${value}` : value)).join(', ');
}

const listed = 24;

function pullOffFound({ pullOff }: ZoneReadiness, say: Say): string {
  const labels = readyPage.pullOff;
  const groups = pullOff.groups.map(({ planes, summary }) => {
    const where = planes.map((plane) => readinessWords.planes[plane]).join(' + ');
    const bound =
      summary.lowerBound === undefined ? '' : `, ${labels.bound} ${say.stress(summary.lowerBound)}`;
    const spread =
      summary.deviation === undefined
        ? ''
        : `, ${labels.deviation} ${say.stress(summary.deviation)}`;
    return `${where}: n ${summary.n}, ${labels.average} ${say.stress(summary.mean)} (${say.stress(summary.least)} – ${say.stress(summary.most)})${spread}${bound}`;
  });
  if (pullOff.voided) groups.push(`${labels.voided}: ${pullOff.voided}`);
  // On one sheet there is room for the single results of a usual job; a long list is in the file.
  if (pullOff.tests.length && pullOff.tests.length <= listed) {
    const single = pullOff.tests.map(
      (test) => `${test.row}: ${say.stress(test.stress)}${test.void ? ` (${labels.voided})` : ''}`,
    );
    groups.push(`${labels.tests} ${single.join(', ')}`);
  }
  return groups.join('. ');
}

function clockFound(record: ReadinessRecord, { clock }: ZoneReadiness, say: Say): string {
  if (!record.clock?.prepared) return readyPage.record.none;
  const cleaned = spokenTime(record.clock.prepared);
  return 'open' in clock ? `${cleaned}. ${readyPage.clock.open(say.hours(clock.open))}` : cleaned;
}
