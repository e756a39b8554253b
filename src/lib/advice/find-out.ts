import type { FindOut, Hold, SettledSite, SettledZone } from './types';
import type { RuleId } from './rules';

/** The test that clears a hold. */
const clears: Readonly<Partial<Record<RuleId, FindOut>>> = {
  'map-cracking': { question: 'warnings', test: 'petrography' },
  'old-coating': { question: 'warnings', test: 'lead-asbestos-test' },
  'buried-services': { question: 'warnings', test: 'locate-services' },
  'thickness-decides': { question: 'thickness', test: 'measure-thickness' },
  'hollow-unmeasured': { question: 'depth', test: 'measure-depth' },
  'moving-crack': { question: 'cracks', test: 'ask-engineer' },
  'rust-with-salts': { question: 'salts', test: 'chloride-test' },
  'rust-at-crack': { question: 'steel', test: 'sound-round-stain' },
  'nothing-over-rust': { question: 'steel', test: 'sound-round-stain' },
  'bloom-under-dry-finish': { question: 'contamination', test: 'find-water' },
  'bar-section-loss': { question: 'barLoss', test: 'ask-engineer' },
};

/** What a test patch that stopped calls for: how deep, how hollow, or where the bars lie. */
function afterStop(why: readonly string[], { thickness }: SettledSite): FindOut {
  if (why.includes('bar-unexpected')) return { question: 'steel', test: 'look-at-steel' };
  if (why.includes('hollow-below')) return { question: 'looseness', test: 'hammer-tap' };
  return why.includes('no-sound-base') || thickness !== 'unknown'
    ? { question: 'depth', test: 'measure-depth' }
    : { question: 'thickness', test: 'measure-thickness' };
}

/** What has to be found out for one settled combination: what clears its holds, then what to check beside the work. */
export function findOutFor(
  site: SettledSite,
  zone: SettledZone,
  holds: readonly Hold[],
): FindOut[] {
  const tests = holds.flatMap((hold): FindOut[] => {
    // With the thickness known it is the depth that is doubtful.
    if (hold.rule === 'thickness-decides' && site.thickness !== 'unknown')
      return [{ question: 'depth', test: 'measure-depth' }];
    // Replacing a part through its depth is a contractor's trade: what nobody has measured is, and no engineer is asked.
    if (hold.rule === 'full-depth' || hold.rule === 'through')
      return [
        ...(site.thickness === 'unknown'
          ? [{ question: 'thickness', test: 'measure-thickness' } as const]
          : []),
        ...(hold.rule === 'full-depth' && zone.depthMm === undefined
          ? [{ question: 'depth', test: 'measure-depth' } as const]
          : []),
      ];
    if (hold.rule === 'stopped-on-patch') return [afterStop(zone.stopped ?? [], site)];
    return [clears[hold.rule] ?? { question: 'warnings', test: 'ask-engineer' }];
  });
  if (zone.cracks === 'hairline' && site.freezeThaw === 'often')
    tests.push({ question: 'cracks', test: 'tap-crack' });
  if (zone.steel === 'rust-stain') tests.push({ question: 'steel', test: 'sound-round-stain' });
  if (zone.steel === 'corroded' && !zone.barLoss)
    tests.push({ question: 'barLoss', test: 'measure-bar' });
  if (zone.steel !== 'none-seen' && site.salts !== 'none')
    tests.push({ question: 'salts', test: 'chloride-test' });
  if (zone.contamination.includes('oil'))
    tests.push({ question: 'contamination', test: 'water-drop' });
  if (zone.finish === 'undecided') tests.push({ question: 'finish', test: 'ask-maker' });
  return tests.filter(
    (test, index) =>
      tests.findIndex((other) => other.test === test.test && other.question === test.question) ===
      index,
  );
}
