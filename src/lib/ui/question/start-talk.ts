import { goto } from '$app/navigation';
import type { TalkState } from '$lib/interview/refusal';
import { agree } from '$lib/ui/leaving';
import { paths } from '$lib/ui/paths';
import { session } from '$lib/ui/session.svelte';
import type { Draft } from './draft';
import { keepDraft, keptDraft } from './kept-draft';
import { Talker } from './talker';

/** The interview once its machine has come: what it orders is done on the site's own pages. */
export class Running extends Talker {
  /** Whether what was ticked last lies in the tab's own storage. */
  #kept = true;
  /** Whether the page the reader wants to leave for loads anew. */
  #anew = false;

  constructor(seen: (state: TalkState) => void) {
    super(session, {
      go: ({ place, zone }) => void goto(paths.place(place, zone)),
      keep: ({ question, zone, draft }) =>
        (this.#kept = keepDraft(session.id, question, zone, draft as Draft | null)),
      depart: ({ to }) => (this.#anew ? agree(to) : void goto(to)),
      seen,
    });
  }

  kept(): Draft | null {
    const { question, zone } = this.state.context;
    return question && keptDraft(session.id, question, zone);
  }

  leave(to: string, anew: boolean): boolean {
    this.#anew = anew;
    const kept = this.#kept && this.state.value !== 'opening';
    this.send({ type: 'LEAVE', to, kept });
    return this.state.value === 'leaving';
  }
}

/** Runs the interview when the job in hand is there. Without the store an answer is taken all the same. */
export async function startTalk(seen: (state: TalkState) => void): Promise<Running> {
  await session.open().catch(() => undefined);
  return new Running(seen);
}
