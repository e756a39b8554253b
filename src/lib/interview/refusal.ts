import type { SnapshotFrom } from 'xstate';
import { talk } from './talk';
import type { Refusal, TalkEvent } from './talk-types';

export type TalkState = SnapshotFrom<typeof talk>;

/** The names of the states a reader can be in. */
export type TalkPlace = Exclude<TalkState['value'], 'settle' | 'adopted'>;
export const standsAt = (state: TalkState): TalkPlace => state.value as TalkPlace;

/** What an event finds missing wherever the machine stands; null where it depends on the place. */
function missing({ context, value }: TalkState, event: TalkEvent): Refusal | null {
  switch (event.type) {
    case 'LATE':
      return 'nothing-waits';
    case 'KEEP_MINE':
    case 'TAKE_THEIRS':
      return 'nothing-to-choose';
    case 'STAY':
    case 'GO':
      return 'nothing-to-leave';
    case 'DROP':
      return context.draft === null ? 'nothing-drafted' : null;
    case 'CONTINUE':
    case 'BRING':
      if (value !== 'opening' && value !== 'reading' && value !== 'drafting') return null;
      return event.given ? 'another-question' : 'nothing-answered';
    default:
      return null;
  }
}

/** Why an event does nothing in a state; null when it does something. */
export function refusalOf(state: TalkState, event: TalkEvent): Refusal | null {
  if (state.can(event)) return null;
  const lacking = missing(state, event);
  if (lacking) return lacking;
  const [here] = Object.values(state.getMeta()) as { readonly refuses: Refusal }[];
  const refuses = here?.refuses ?? 'no-question-open';
  // Where the question can be answered, a way is refused for its own sake.
  const free = ['reading', 'drafting', 'changed', 'waiting', 'saved', 'late', 'notSaved'];
  const ways = free.includes(String(state.value)) || refuses === 'choose-first';
  if (event.type === 'BACK' && ways) return 'first-question';
  if (event.type === 'GO_TO' && ways) return 'not-asked';
  return refuses;
}
