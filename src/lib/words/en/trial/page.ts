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

/** The page on which a square of the surface is tried. */
export const trialPage = {
  title: 'Try a small square',
  description:
    'Try the method on a small square first: what to set, what to measure, and what that says comes next.',
  wait: 'Your job is being opened.',
  noScript: 'This page needs JavaScript, since it reads what you found.',
  toAdvice: 'To the advice',
  toPlan: 'To the plan',
  explainer: 'How to try a small square',
  /** Above the page, after the zone. */
  intro: (area: string) =>
    `Prepare about ${area} where it shows least. Look, and change one thing.`,
  none: 'Nothing to try yet',
  noneLine: 'A square is tried once the method is settled and nothing stands before the work.',
  specialist: 'This method is a specialist’s, who makes a trial of their own.',
  set: 'Set this',
  ladder: 'Notches, gentle to hard',
  here: 'this one',
  changed: 'the one change',
  cautions: 'The same dangers as the whole job',
  cautionsLine: 'Mask, goggles, ear protection and barriers as for the work.',
  stopWhen: 'When to stop',
  found: 'What you found',
  minutes: 'Minutes the tool ran',
  area: 'Square',
  madePasses: 'Passes made',
  depths: 'Depth at five places',
  depthsHow:
    'Down from a straightedge on the old surface: middle and corners. 0 where nothing came off.',
  place: (place: number) => `Place ${String(place)}`,
  nothingOff: 'Nothing came off: 0 at all five',
  asSet: (area: string, passes: string) => `Tried on ${area}, ${passes}`,
  toFound: 'To what you found',
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
  disproved:
    'The square has shown that an answer was wrong. Nothing is changed until you press the button:',
  becomes: (question: string, from: string, to: string) => `${question}: ${to} (was: ${from})`,
  comesTo: (method: string) => `The advice then comes to: ${method}.`,
  comesToFind: 'The advice then says what to find out first.',
  comesToStop: 'The advice then stops the work until somebody has looked.',
  change: 'Change the answers',
  changedAnswers: 'Answers changed by the test square',
  undoAnswers: 'Undo the changed answers',
  undoneAnswers: 'The answers are as they were.',
  follows: (method: string, orChange: boolean) =>
    orChange
      ? `If the answers stay as they are, advice and plan go by this square alone: ${method}.`
      : `No answer was wrong. Advice and plan have followed: ${method}.`,
  followsOpen: 'The advice says what to find out first.',
  tryMethod: (method: string) => `Try ${method} on a square`,
  learnt: 'Learnt from it',
  rate: (rate: string, table: string) => `Pace here: ${rate}. The table has ${table}.`,
  passesHere: (passes: string) => `The plan reckons with ${passes}.`,
  rateOwn: 'You have put your own figure over the pace. It counts, not the square.',
  notTimed: 'Nobody timed it, so the plan keeps the table’s pace.',
  pass: (depth: string) => `A pass takes ${depth}.`,
  five: (mean: string, least: string, most: string) =>
    `Depth ${mean} on average, ${least} to ${most}.`,
  nineInTen: 'Nine in ten, if the zone is like the square.',
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
  blankTitle: 'Test square: form to take along',
  sheetTitle: 'Test square',
  date: 'Date and name',
  toComeOff: (depth: string) => `To come off: ${depth} at the most.`,
  askedRough: (profile: string) => `Roughness asked for: ${profile}.`,
  /** For whoever has no phone at the slab: the answers the page would give, in short. */
  onPaper: (breaking: boolean, climbs: boolean) => [
    breaking
      ? 'Stop and find out: steel where none was known, or a place deeper than a third of the slab.'
      : 'Stop and find out: steel where none was known, a dull sound, or weak concrete at the depth to come off.',
    'One notch gentler: stones torn, too rough, or too deep. Never a harder one after that.',
    breaking
      ? 'Still dull or loose: over it once more, then the heavier hammer. Change one thing at a time.'
      : climbs
        ? 'Dust or loose pieces left: one notch harder; at the hardest, another pass. Change one thing at a time.'
        : 'Dust or loose pieces left: another pass, then one notch harder. Change one thing at a time.',
  ],
  fields: (say: Say) => ({
    minutes: 'min',
    depth: say.unitOf('mm'),
    area: say.unitOf('m2'),
  }),
  basis: 'Basis',
} as const;

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

/** What the air does at the nozzle, shown where blasting is tried. */
export const airWords = {
  title: 'Pressure at a worn nozzle',
  bore: 'Nozzle, inside',
  air: 'Air from the compressor',
  fresh: (air: string, bore: string, pressure: string) =>
    `A new nozzle of ${bore} takes ${air} at ${pressure}.`,
  worn: (air: string) => `This one takes ${air} to hold the same pressure.`,
  left: (left: string, set: string) =>
    `With the air there is, ${left} is left of ${set}. It cuts slower: change the nozzle before the setting.`,
  enough: 'The compressor gives enough, so the pressure holds.',
  change: (wear: string) => `Change it when it is ${wear} wider than new: try it with a drill bit.`,
  how: 'The formulas',
  formulas: [
    'Air at the speed of sound in the narrowest place: m = 0.685 A p / √(R T), p above nothing (any handbook of fluid mechanics). So it goes by the bore squared.',
    'With no more air: p plus the pressure of the air (1 bar, 15 psi) falls by (d / d worn)². Grit takes some room: tables for blasting have about a fifth less air.',
  ],
} as const;
