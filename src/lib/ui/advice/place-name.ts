import type { Job, Zone } from '$lib/answers/job';
import { isDemo } from '$lib/ui/is-demo';
import { advicePageWords as labels } from '$words/ui/advice';
import { questionPageWords } from '$words/ui/question';

/** What the advice is for: the job where it has one zone and a name, else the zone. */
export function placeName(job: Job, zone: Zone): string {
  if (job.zones.length <= 1 && job.name) return job.name;
  const at = job.zones.findIndex(({ id }) => id === zone.id) + 1;
  const name = questionPageWords.zone(zone.name, at);
  return isDemo(job) ? labels.invented(name) : name;
}
