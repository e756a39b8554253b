import { untrack } from 'svelte';
import type { QuestionId } from '$lib/answers/questions';
import type { TalkPlace, TalkState } from '$lib/interview/refusal';
import type { TalkEvent } from '$lib/interview/talk-types';
import { session } from '$lib/ui/session.svelte';
import type { Draft } from './draft';
import type { Running } from './start-talk';

/**
 * The interview as pages see it: they send what happens and show where it stands. The machine is
 * fetched apart: until it has come, a question can be read and ticked, and what is sent waits.
 */
class Talk {
  #running: Running | undefined;
  #loading: Promise<void> | undefined;
  #waiting: TalkEvent[] = [];
  #state = $state.raw<TalkState>();

  /** Whether the question of this address is the one that is open. */
  isAt(question: QuestionId, zone: string | null): boolean {
    const context = this.#state?.context;
    return context?.question === question && context.named === zone;
  }
  get place(): TalkPlace {
    return (this.#state?.value ?? 'opening') as TalkPlace;
  }
  get context() {
    return this.#state?.context;
  }
  /** What is ticked or typed and not given. */
  get draft(): Draft | null {
    return (this.#state?.context.draft ?? null) as Draft | null;
  }
  /** Whether something is ticked or typed that goes with the tab. */
  get holds(): boolean {
    return (
      this.#state?.context.holds ?? this.#waiting.some((each) => 'holds' in each && each.holds)
    );
  }

  /** What was ticked for the open question before the reader went to look at something else. */
  kept(): Draft | null {
    return this.#running?.kept() ?? null;
  }

  send(event: TalkEvent): boolean {
    if (this.#running) return this.#running.send(event) === null;
    this.#waiting.push(event);
    void this.#load();
    return false;
  }
  /** Looks whether the job in hand has changed. */
  hear(): void {
    this.#running?.hear();
  }
  close(question: QuestionId, zone: string | null): void {
    if (this.isAt(question, zone)) this.send({ type: 'CLOSE' });
    this.#waiting = this.#waiting.filter(
      (each) => !('question' in each) || each.question !== question,
    );
  }
  /** Asks to leave for another address, which may load anew; whether the reader has to be asked first. */
  leave(to: string, anew: boolean): boolean {
    return this.#running?.leave(to, anew) ?? false;
  }

  #load(): Promise<void> {
    return (this.#loading ??= this.#start().catch(() => {
      // Tried again with the next thing the reader does.
      this.#loading = undefined;
      session.saving = 'unavailable';
    }));
  }
  async #start(): Promise<void> {
    const { startTalk } = await import('./start-talk');
    this.#running = await startTalk((state) => (this.#state = state));
    const events = this.#waiting;
    this.#waiting = [];
    for (const event of events) this.#running.send(event);
  }
}

export const talk = new Talk();

/** While a page of the interview stands, the machine hears whatever changes of the job in hand. */
export function listen(): void {
  $effect(() => {
    void [session.job, session.hand, session.ready, session.saving];
    untrack(() => talk.hear());
  });
}
