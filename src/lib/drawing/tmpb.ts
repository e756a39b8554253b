import { hasSection, viewOf } from './view';
import { scaling } from './view/grades';
import { choicesOf, questionIds } from '$lib/answers/questions';
import { methodFrames, checkFrames } from './frames';
import { stepIds } from '$shared/methods';
import { checkIds } from '$lib/answers/readiness-record';
export const v: Record<string, () => any> = Object.fromEntries([
  ...questionIds
    .filter(hasSection)
    .flatMap((q) => choicesOf(q).map((c) => [`${q}: ${c}`, () => viewOf(q, c)])),
  ['scaling: light 10 %', () => scaling('light', 0.1)],
  ['scaling: medium 25 %', () => scaling('medium', 0.25)],
  ['scaling: severe 50 %', () => scaling('severe', 0.5)],
  ['warnings: map-cracking', () => viewOf('warnings', 'map-cracking')],
]);
export const f: Record<string, () => any> = Object.fromEntries([
  ...stepIds.map((id) => ['method/step: ' + id, () => methodFrames(id)]),
  ...checkIds.map((id) => ['check: ' + id, () => checkFrames(id)]),
]);
