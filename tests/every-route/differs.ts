import type { Advice, SettledSite, SettledZone } from '$lib/advice/types';
import { tradeSays } from './trade-table';
import { asTrade } from './promises';

/** The names under which the second table holds the work up, where they are not the program's. */
const named: Readonly<Record<string, string>> = {
  'structure-before-removal': 'structure',
  'tendons-before-depth': 'tendons',
  'bar-section-loss': 'section-loss',
  through: 'full-depth',
  'thickness-decides': 'full-depth-perhaps',
  'rust-with-salts': 'rust-and-salt',
  'nothing-over-rust': 'paint-over-rust',
  'bloom-under-dry-finish': 'bloom-under-dry',
};

/** The first thing in which the program and the second table differ, in words; null where they agree. */
export function differs(site: SettledSite, zone: SettledZone, advice: Advice): string | null {
  const trade = tradeSays(site, asTrade(zone));
  const { verdict, underneath, beside, holds, target, steps } = advice;
  const unlike = (what: string, says: unknown, wants: unknown) =>
    String(says) === String(wants) ? null : `${what}: it says ${says}, the trade expects ${wants}`;
  const held = (all: readonly (readonly [string, string])[]) =>
    all
      .map(([what, how]) => `${named[what] ?? what} (${how})`)
      .sort()
      .join(', ') || 'nothing';
  const whole =
    unlike(
      'what stands before the work',
      held(holds.map((hold) => [hold.rule, hold.verdict] as const)),
      held(trade.holds.map((hold) => [hold.what, hold.verdict] as const)),
    ) ??
    unlike('verdict', verdict, trade.verdict) ??
    unlike('profile', target.profile?.[0] ?? null, trade.profileLeast) ??
    unlike('moisture', target.moisture, trade.moisture) ??
    unlike('bruised skin', target.bruisedSkin, trade.bruisedSkin);
  // Where the concrete or its bed is what failed no method stands, and the table names one all the same.
  const chosen =
    underneath &&
    (unlike('method', underneath, trade.method) ??
      unlike('method beside the bar', beside ?? underneath, trade.surface));
  if (whole || chosen || verdict === 'stop') return whole ?? chosen;

  const has = (id: string) => steps.some((step) => step.id === id);
  const says = (rule: string) =>
    steps.some(({ why }) => why.some((reason) => reason.rule === rule));
  const skinOff = [
    ...(says('skin-by-shotblaster') ? ['shotblast'] : []),
    ...(says('skin-by-grit-or-water') || says('skin-by-grit') ? ['abrasive-or-water'] : []),
    ...(says('bruised-skin-wash-will-do') ? ['pressure-wash'] : []),
  ];
  const hammers = ['break-out', 'free-bar', 'chase-crack', 'needle-scale', 'scarify'];
  const shot = says('pits-under-coating') || says('profile-under-coating');
  return (
    unlike('bruised skin off by', skinOff, trade.skinOff) ??
    unlike('hammered', hammers.some(has), trade.hammered) ??
    unlike('degreased first', has('degrease'), trade.before.includes('degrease')) ??
    unlike('stripped first', has('strip-coating'), trade.before.includes('strip-coating')) ??
    unlike('shot after the cutter', shot, trade.thenShotblast)
  );
}
