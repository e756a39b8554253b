import { lowered } from '$lib/words/by-language';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import { ladderOf } from '$lib/trial/aim';
import { adviseTried } from '$lib/trial/chain';
import { trialOf } from '$lib/trial/zone-trial';
import { outcomeNames } from '$words/trial/outcomes';
import { recordLine, triedWords } from '$words/trial/tried';
import { notchLine } from '$words/trial/settings';
import type { Say } from '$lib/words/types';

/** What a record of readiness says of the squares tried in a zone; empty where none was read. */
export function trialRecord(site: SiteAnswers, zone: Zone, say: Say): string {
  if (!zone.trial?.length) return '';
  const { advice, ended } = adviseTried(site, zone);
  const [only] = advice.outcomes;
  const now = only ? trialOf(site, zone, only.example) : null;
  // Before the method that has followed is tried, the record names the one that failed.
  const trial = now?.last ? now : ended.at(-1)?.trial;
  if (!trial?.last) return '';
  const { found, outcome } = trial.last;
  const set = notchLine(ladderOf(trial.aim).notches[found.notch] ?? [], say);
  const settings = `${set}, ${lowered(triedWords.passes(found.passes))}`;
  return recordLine(trial.read.length, settings, outcomeNames[outcome.kind]);
}
