import { cleanName } from '$lib/keep/names';
import { session } from '$lib/ui/session.svelte';
import { jobPageWords as words } from '$lib/words/en/plan/job';
import * as edits from './edits';
import { zoneNames } from '$lib/words/en/zone-names';

interface Undo {
  readonly job: string;
  readonly label: string;
  readonly removed: edits.Removed;
}

/** Zones taken out of jobs in this tab, last first. Kept while the tab is open: an undo never runs out. */
let undone = $state.raw<readonly Undo[]>([]);
let told = $state('');

const labelOf = (id: string): string => {
  const { zones } = session.job;
  return zoneNames(zones)[zones.findIndex((zone) => zone.id === id)] ?? '';
};
const keptIds = () => undone.map(({ removed }) => removed.zone.id);

/** What the reader does with zones. Each change is saved at once; what it did is told. */
export const zoneList = {
  /** The last thing done, for those who do not see the list move. */
  get told(): string {
    return told;
  },
  /** What the next undo brings back; undefined when there is nothing. */
  get last(): Undo | undefined {
    return undone.find(({ job }) => job === session.id);
  },
  add(): string {
    const id = edits.freeId(session.job, keptIds());
    session.update((job) => edits.withZone(job, { id, name: '', answers: {} }));
    return id;
  },
  addRest(): string {
    const id = edits.freeId(session.job, keptIds());
    const zone = { id, name: words.total.restName, answers: {} };
    session.update((job) => ({ ...edits.withZone(job, zone), rest: id }));
    return id;
  },
  rename(id: string, name: string): void {
    session.update((job) =>
      edits.withChange(job, id, (zone) => ({ ...zone, name: cleanName(name) })),
    );
  },
  copy(id: string): string {
    const label = labelOf(id);
    const named = session.job.zones.map(({ name }) => name);
    const own = session.job.zones.find((zone) => zone.id === id)?.name ?? '';
    const copy = {
      id: edits.freeId(session.job, keptIds()),
      name: cleanName(edits.copyName(own, named)),
    };
    session.update((job) => edits.withCopy(job, id, copy));
    told = words.copied(label);
    return copy.id;
  },
  move(id: string, to: number): void {
    session.update((job) => edits.withMove(job, id, to));
    const place = session.job.zones.findIndex((zone) => zone.id === id);
    told = words.moved(labelOf(id), place + 1, session.job.zones.length);
  },
  remove(id: string): void {
    const label = labelOf(id);
    const without = edits.withoutZone(session.job, id);
    if (!without) return;
    session.update(() => without.job);
    undone = [{ job: session.id, label, removed: without.removed }, ...undone];
    told = '';
  },
  undo(): string | undefined {
    const last = zoneList.last;
    if (!last) return undefined;
    undone = undone.filter((each) => each !== last);
    const { id } = edits.withRestored(session.job, last.removed);
    session.update((job) => edits.withRestored(job, last.removed).job);
    told = words.back(last.label);
    return id;
  },
};
