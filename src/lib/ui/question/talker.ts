import { createActor } from 'xstate';
import type { Job } from '$lib/answers/job';
import { refusalOf, type TalkState } from '$lib/interview/refusal';
import { talk } from '$lib/interview/talk';
import type { Refusal, TalkEvent, TalkOrder } from '$lib/interview/talk-types';
import { within } from '$lib/ui/patience';
import { withAnswer } from '$lib/ui/with-answer';

/** What the interview needs of the job in hand. */
export interface InHand {
  readonly hand: number;
  readonly job: Job;
  /** Why the last state is not on the device; null while nothing is in the way. */
  readonly trouble: string | null;
  readonly gone: boolean;
  /** Why work is held in this tab only; undefined where the device keeps it. */
  readonly why: string | undefined;
  readonly saving: string;
  open(): Promise<void>;
  update(change: (job: Job) => Job): void;
  settled(): Promise<void>;
}

type OrderOf<T extends TalkOrder['type']> = Extract<TalkOrder, { readonly type: T }>;
/** What the interview needs of the page. */
export interface Outside {
  go(order: OrderOf<'go'>): void;
  keep(order: OrderOf<'keep'>): void;
  depart(order: OrderOf<'depart'>): void;
  /** The state is another one. */
  seen(state: TalkState): void;
}

/** Milliseconds for which the next question waits until the answer before it is saved. */
const pause = 1000;

/** Runs the machine of the interview between a page and the job in hand, once that has been opened. Decides nothing. */
export class Talker {
  readonly #actor = createActor(talk);
  readonly #inHand: InHand;
  #told: { job: Job; hand: number } | undefined;
  #trouble: string | null = null;

  readonly #pause: number;

  constructor(inHand: InHand, outside: Outside, wait = pause) {
    this.#inHand = inHand;
    this.#pause = wait;
    this.#actor.on('write', (order) => void this.#write(order));
    this.#actor.on('go', (order) => outside.go(order));
    this.#actor.on('keep', (order) => outside.keep(order));
    this.#actor.on('depart', (order) => outside.depart(order));
    this.#actor.subscribe((state) => outside.seen(state));
    this.#actor.start();
  }

  get state(): TalkState {
    return this.#actor.getSnapshot();
  }

  /** Sends what happened. Why it did nothing, or null when it did something. */
  send(event: TalkEvent): Refusal | null {
    // What another tab did in between comes first.
    this.hear();
    const refused = refusalOf(this.state, event);
    if (!refused) this.#actor.send(event);
    return refused;
  }

  /** Tells the machine of the job in hand, and of the way it is kept, where either has changed. */
  hear(): void {
    const { job, hand, trouble, saving } = this.#inHand;
    if (this.#told?.job !== job || this.#told.hand !== hand) {
      this.#told = { job, hand };
      const { site, zones } = job;
      this.#actor.send({ type: 'JOB', job: { hand, site, zones } });
    }
    // What was in the way is so no more: the reader has chosen, or it was tried again.
    if (this.#trouble && !trouble && saving === 'saved') this.#ended();
  }

  /** Says how the last write ended; while another is under way, that one will say. */
  #ended(): void {
    const { trouble, gone, why, saving } = this.#inHand;
    if (saving === 'saving') return;
    this.#trouble = trouble;
    const reason = gone ? 'gone' : (trouble ?? why);
    this.#actor.send(reason ? { type: 'NOT_SAVED', why: reason } : { type: 'SAVED' });
  }

  async #write({ zone, given }: OrderOf<'write'>): Promise<void> {
    this.#inHand.update((job) => withAnswer(job, zone, given));
    this.hear();
    const settled = this.#inHand.settled();
    if (!(await within(this.#pause, settled))) {
      const late = { type: 'LATE' } as const;
      if (!refusalOf(this.state, late)) this.#actor.send(late);
      await settled;
    }
    // Another job may have been taken into hand meanwhile: then this says nothing of it.
    this.hear();
    this.#ended();
  }
}
