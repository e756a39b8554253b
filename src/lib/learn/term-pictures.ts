import type { CheckId } from '$lib/answers/readiness-record';
import type { QuestionId } from '$lib/answers/questions';
import type { StepId } from '$shared/methods';

/** What is drawn beside a term: a method or a check in three pictures, or damage seen from above. */
export type TermPicture =
  | { readonly kind: 'method'; readonly id: StepId }
  | { readonly kind: 'check'; readonly id: CheckId }
  | { readonly kind: 'view'; readonly question: QuestionId; readonly choice: string };

const method = (id: StepId): TermPicture => ({ kind: 'method', id });
const check = (id: CheckId): TermPicture => ({ kind: 'check', id });
const view = (question: QuestionId, choice: string): TermPicture => ({
  kind: 'view',
  question,
  choice,
});

/** The terms of the glossary that a picture says better, by id. */
export const termPictures: Readonly<Record<string, TermPicture>> = {
  spall: view('depth', '20-to-50'),
  fractured: view('looseness', 'fractured'),
  scaling: view('depth', '3-to-6'),
  hollow: view('looseness', 'hollow'),
  sounding: check('sounding'),
  profile: check('profile'),
  'pressure-washing': method('pressure-wash'),
  grinding: method('grind'),
  scarifying: method('scarify'),
  shotblasting: method('shotblast'),
  'abrasive-blasting': method('abrasive-blast'),
  'needle-scaling': method('needle-scale'),
  'breaking-out': method('break-out'),
  'water-jetting': method('water-jet'),
  bruising: method('blast-clean'),
  routing: method('route-crack'),
  chasing: method('chase-crack'),
  'saw-cut': method('saw-cut'),
  undercut: method('free-bar'),
  'section-loss': view('barLoss', 'one-bar'),
  'map-cracking': view('warnings', 'map-cracking'),
  hairline: view('cracks', 'hairline'),
  carbonation: check('carbonation'),
  'half-cell': check('half-cell'),
  'salt-bloom': view('contamination', 'salt-bloom'),
  sealer: view('finish', 'sealer'),
  'thin-film': view('finish', 'thin-film'),
  'build-coat': view('finish', 'build-coat'),
  'self-levelling': view('finish', 'self-levelling'),
  overlay: view('finish', 'overlay'),
  rebuild: view('finish', 'rebuild'),
  curing: method('cure'),
  'pull-off': check('pull-off'),
  absorption: check('absorption'),
  'dew-point': check('dew-point'),
  rust: view('steel', 'rust-stain'),
  trowelled: view('texture', 'smooth'),
};
