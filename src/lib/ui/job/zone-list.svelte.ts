import type { Job } from '$lib/answers/job';
import { cleanName } from '$lib/keep/names';
import { session } from '$lib/ui/session.svelte';
import { jobPageWords as words } from '$words/plan/job';
import { zonesTableWords } from '$words/plan/zones-table';
import { zoneNames } from '$words/zone-names';
import * as edits from './edits';
import type { NewZone } from './read-zones';

/** Where the reader goes on after an undo: a zone of the list, or something on the page by its id. */
export interface Back {
  readonly zone: string | null;
  readonly element?: string;
}
interface Undo {
  readonly job: string;
  /** What was done, and what its button undoes. */
  readonly done: string;
  readonly label: string;
  /** The id of a zone that is out and may come back. */
  readonly kept?: string;
  /** The job as it was before; what is said of it; where the reader goes on. */
  readonly undo: (job: Job) => { job: Job; told: string; back: Back };
}

/** What can be undone in this tab, last first. Kept while the tab is open: an undo never runs out. */
let undone = $state.raw<readonly Undo[]>([]);
let told = $state('');
/** Whether it is shown too: what the list itself does not show. */
let shown = $state(false);

/** What keeps the photos, fetched when a zone goes. */
const shelf = () => import('$lib/ui/photos/shelf');

/** What a zone of the open job is called. */
export const labelOf = (id: string): string => {
  const { zones } = session.job;
  return zoneNames(zones)[zones.findIndex((zone) => zone.id === id)] ?? '';
};
const keptIds = () => undone.flatMap(({ kept }) => kept ?? []);
const remember = (undo: Omit<Undo, 'job'>) => {
  undone = [{ job: session.id, ...undo }, ...undone];
  told = '';
};

/** What the reader does with zones. Each change is saved at once; what it did is told. */
export const zoneList = {
  /** The last thing done, for those who do not see the list move. */
  get told(): string {
    return told;
  },
  get shown(): boolean {
    return shown;
  },
  tell(text: string, seen = false): void {
    told = text;
    shown = seen;
  },
  /** What the next undo takes back; undefined when there is nothing. */
  get last(): Undo | undefined {
    return undone.find(({ job }) => job === session.id);
  },
  /** What another page did with a zone, so that the same bar takes it back. */
  remember,
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
  /** Zones of a table; the id of the first. */
  addMany(zones: readonly NewZone[]): string {
    const { job, ids } = edits.withZones(session.job, zones, keptIds());
    session.update(() => job);
    const added = session.job.zones.filter(({ id }) => ids.includes(id));
    remember({
      done: zonesTableWords.added(ids.length),
      label: words.undoAdded,
      undo: (now) => ({
        job: edits.withoutAdded(now, added),
        told: words.addedGone,
        back: { zone: null, element: 'zones-table' },
      }),
    });
    return ids[0] ?? '';
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
    zoneList.tell(words.copied(label), true);
    return copy.id;
  },
  move(id: string, to: number): void {
    session.update((job) => edits.withMove(job, id, to));
    const place = session.job.zones.findIndex((zone) => zone.id === id);
    zoneList.tell(words.moved(labelOf(id), place + 1, session.job.zones.length));
  },
  remove(id: string): void {
    const label = labelOf(id);
    const without = edits.withoutZone(session.job, id);
    if (!without) return;
    session.update(() => without.job);
    const { removed } = without;
    // Its photos go with it, and come back with it.
    const photos = shelf().then(({ takePhotos }) => takePhotos(session.id, id));
    remember({
      done: words.removed(label),
      label: words.undoOf(label),
      kept: id,
      undo: (now) => {
        const restored = edits.withRestored(now, removed);
        void photos.then(async (taken) => (await shelf()).putPhotosBack(taken, restored.id));
        return { job: restored.job, told: words.back(label), back: { zone: restored.id } };
      },
    });
  },
  undo(): Back | undefined {
    const { last } = zoneList;
    if (!last) return undefined;
    undone = undone.filter((each) => each !== last);
    const result = last.undo(session.job);
    session.update(() => result.job);
    zoneList.tell(result.told, true);
    return result.back;
  },
};
