import type { AfterSound, BarSeen, LeftId, StoneId } from '$lib/answers/trial-record';
import type { Missing } from '$lib/trial/found';
import type { Say } from '$lib/words/types';

const stones: Readonly<Record<StoneId, string>> = {
  cut: 'Cut or broken across',
  'pulled-out': 'Pulled out whole',
  torn: 'Torn or shattered',
  'none-seen': 'None in sight',
};
const left: Readonly<Record<LeftId, string>> = {
  nothing: 'Nothing',
  dust: 'Dust',
  more: 'Loose pieces or coating',
};
const bar: Readonly<Record<BarSeen, string>> = { no: 'No', yes: 'Yes' };
const sound: Readonly<Record<AfterSound, string>> = { clear: 'Clear', dull: 'Dull' };

/** The page on which a square metre is tried. */
export const trialPage = {
  title: 'Try a square metre',
  description:
    'Try the method on a small patch first: what to set, what to measure, and what the patch says comes next.',
  wait: 'Your job is being opened.',
  noScript: 'This page needs JavaScript, since it reads what you found.',
  toAdvice: 'To the advice',
  toPlan: 'To the plan',
  explainer: 'How to try a square metre',
  /** Above the page, after the zone. */
  intro: (area: string) =>
    `Prepare about ${area} where it shows least. Look, and change one thing.`,
  none: 'Nothing to try yet',
  noneLine: 'A patch is tried once the method is settled and nothing stands before the work.',
  specialist: 'This method is a specialist’s, who makes a trial of their own.',
  set: 'Set this',
  passes: (passes: number) => (passes === 1 ? 'One pass' : `${String(passes)} passes in all`),
  ladder: 'Notches, gentle to hard',
  here: 'this one',
  changed: 'the one change',
  cautions: 'The same dangers as the whole job',
  cautionsLine: 'Mask, goggles, ear protection and barriers as for the work.',
  stopWhen: 'When to stop',
  found: 'What you found',
  minutes: 'Minutes the tool ran',
  area: 'Patch',
  madePasses: 'Passes made',
  depths: 'Depth at five places',
  depthsHow:
    'Down from a straightedge on the old surface: middle and corners. 0 where nothing came off.',
  place: (place: number) => `Place ${String(place)}`,
  profile: 'Chip that comes nearest',
  noProfile: 'Not compared',
  stones: 'Stones in the face',
  left: 'What still comes off (vacuum, scrape, wipe)',
  bar: 'Steel seen',
  sound: 'Hammer afterwards',
  choices: (growth: boolean) => ({
    stones,
    left: growth ? { ...left, more: 'Loose pieces, coating or growth' } : left,
    bar,
    sound,
  }),
  missing: {
    depths: 'depth',
    stones: 'stones',
    left: 'what still comes off',
    bar: 'steel',
    sound: 'sound',
  } satisfies Record<Missing, string>,
  stillMissing: (what: string) => `Still to look at: ${what}.`,
  next: 'What comes next',
  tryNext: 'Try the next square',
  another: 'Try another square',
  oneChange: (from: string, to: string) => `Change only this: ${from} becomes ${to}.`,
  again: (passes: number) =>
    `Leave all settings. Make pass ${String(passes)}, and measure again from the old surface.`,
  disproved: 'The patch has shown that an answer was wrong. With it changed, the advice follows:',
  becomes: (question: string, from: string, to: string) => `${question}: ${to} (was: ${from})`,
  comesTo: (method: string) => `The advice then comes to: ${method}.`,
  comesToFind: 'The advice then says what to find out first.',
  comesToStop: 'The advice then stops the work until somebody has looked.',
  change: 'Change the answers',
  changedAnswers: 'Answers changed by the test patch',
  undoAnswers: 'Undo the changed answers',
  undoneAnswers: 'The answers are as they were.',
  ask: (method: string) =>
    `No answer was wrong. Ask for this instead: ${method}. The plan goes on reckoning with the advice until then.`,
  noOther:
    'No other method would do by your answers. Show the patch to a concrete contractor or an engineer.',
  learnt: 'Learnt from it',
  rate: (rate: string, table: string) => `Pace here: ${rate}. The table has ${table}.`,
  rateOwn: 'You have put your own figure over the pace. It counts, not the patch.',
  notTimed: 'Nobody timed it, so the plan keeps the table’s pace.',
  pass: (depth: string) => `A pass takes ${depth}.`,
  five: (mean: string, least: string, most: string) =>
    `Depth ${mean} on average, ${least} to ${most}.`,
  nineInTen: 'Nine in ten, if the zone is like the patch.',
  inPlan: 'The plan of this zone reckons with it.',
  list: 'Squares tried',
  square: (place: number) => `Square ${String(place)}`,
  edit: 'Change',
  remove: 'Delete',
  removed: (place: number) => `Square ${String(place)} is deleted`,
  undoRemove: 'Undo the deleted square',
  undone: 'The square is back.',
  otherMethod: (method: string) => `tried with another method: ${method}`,
  unread: 'not all of it looked at yet',
  print: 'Print',
  printBlank: 'Print a blank form',
  blankTitle: 'Test patch: form to take along',
  sheetTitle: 'Test patch',
  date: 'Date and name',
  fields: (say: Say) => ({
    minutes: 'min',
    depth: say.unitOf('mm'),
    area: say.unitOf('m2'),
  }),
  basis: 'Basis',
  ownFigure: 'from your test patch',
} as const;

/** "Ramp: 9 to 14 m²/h for shotblasting, from your test patch." */
export const fromPatchLine = (zone: string, step: string, rate: string): string =>
  `${zone}: ${rate} for ${step}, from your test patch.`;

/** What a record of readiness says of the patch. */
export const recordLine = (count: number, settings: string, outcome: string): string =>
  `${String(count)} ${count === 1 ? 'square' : 'squares'} tried; the last: ${settings}. ${outcome}.`;
export const recordTitle = 'Test patch';

/** What the water does at the lance, shown where washing is tried. */
export const waterWords = {
  title: 'What the water does',
  flow: 'Flow',
  pressure: 'Pressure at the gauge (optional)',
  hose: 'Hose length',
  recoil: (force: string) =>
    `It pushes back with ${force}: both hands, firm feet, never on a ladder.`,
  lost: (loss: string, bore: string) => `The hose takes ${loss} of it (bore ${bore}, smooth).`,
  worn: (share: string, change: string) =>
    `A nozzle worn one tenth wider leaves ${share} of the pressure. Change it when the gauge has lost ${change}.`,
  how: 'The formulas',
  formulas: [
    'Push at the lance: F = ρ Q v, with v = √(2 p / ρ). The momentum of the water that leaves in a second (any handbook of fluid mechanics).',
    'Worn nozzle, same pump: p falls by (d / d worn)⁴, since the same water leaves through a larger hole (Bernoulli).',
    'Lost in the hose: Δp = f (L / d) ρ v² / 2, with f = 0.316 / Re^0.25 in a smooth hose (Darcy and Weisbach; Blasius 1913).',
  ],
} as const;
