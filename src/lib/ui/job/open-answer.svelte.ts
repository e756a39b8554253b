import type { QuestionId } from '$lib/answers/questions';
import type { Draft } from '$lib/ui/question/draft';
import { keepDraft, keptDraft } from '$lib/ui/question/kept-draft';
import { session } from '$lib/ui/session.svelte';

interface Open {
  readonly job: string;
  /** Null for an answer about the site. */
  readonly zone: string | null;
  readonly question: QuestionId;
}

let open = $state.raw<Open | null>(null);
/**
 * What is ticked or typed and not given; it waits when another answer is opened, and in the tab when
 * the page goes, where the question's own page finds it too.
 */
let drafts = $state.raw<Readonly<Record<string, Draft>>>({});

const keyOf = (zone: string | null, question: QuestionId) =>
  JSON.stringify([session.id, zone, question]);

/** The answer that is open for changing on the job page: one at a time, as fields have their names once. */
export const openAnswer = {
  get zone(): string | null | undefined {
    return open?.job === session.id ? open.zone : undefined;
  },
  is: (zone: string | null, question: QuestionId): boolean =>
    open?.job === session.id && open.zone === zone && open.question === question,
  open(zone: string | null, question: QuestionId): void {
    open = { job: session.id, zone, question };
  },
  close(): void {
    open = null;
  },
  draft: (zone: string | null, question: QuestionId): Draft | null =>
    drafts[keyOf(zone, question)] ?? keptDraft(session.id, question, zone),
  keep(zone: string | null, question: QuestionId, draft: Draft | null): void {
    const others = Object.entries(drafts).filter(([key]) => key !== keyOf(zone, question));
    drafts = Object.fromEntries(draft ? [...others, [keyOf(zone, question), draft]] : others);
    keepDraft(session.id, question, zone, draft);
  },
};
