import type { LimitId } from '$lib/advice/owner-limits';
import type { Amount } from '$lib/plan/amount';
import type { AskId, OfferId } from '$lib/plan/ask';
import type { PriceDriver } from '$lib/plan/price-drivers';
import type { Say } from '$lib/words/types';
import { amountWords, spanWords } from './plan/amounts';

/** What to ask, and what an honest offer contains. */
export const askWords: Readonly<Record<AskId, string>> = {
  find: 'How will you find out where the concrete is loose or hollow?',
  far: 'How far past the damage will you go, and how will you know you have reached sound concrete?',
  method: 'Which method for which part, and why not a gentler one?',
  bruise: 'How will you take off the bruised skin before the new material goes on?',
  neighbours: 'How will you keep dust, noise and wash water from me and my neighbours?',
  tests: 'Which tests will you do before you cover it, and may I see the results?',
  engineer: 'What would make you stop and call an engineer?',
  closed: 'How long must it stay closed, and what will you stand behind?',
};
/** What to ask as well, by what an owner leaves to others in this case. */
const questionsAlso: Readonly<Partial<Record<LimitId, string>>> = {
  edges: 'How will you keep people from falling while you work near the edge?',
  overhead: 'How will you keep people out from under the work?',
  electricity: 'Who finds the cables and pipes, and who switches them off?',
  steel: 'How far will you follow a rusted bar, and how much space will you leave behind it?',
  'old-coating': 'Which laboratory tests the old coating, and may I see its report first?',
};
export const contractorAlso = (limits: readonly LimitId[]): readonly string[] =>
  limits.flatMap((id) => questionsAlso[id] ?? []);

export const offerWords: Readonly<Record<OfferId, string>> = {
  drawing: 'A drawing or photo with the areas marked, and their size.',
  depth: 'The method for each area and the depth allowed for, with a price for going deeper.',
  material: 'The repair material by its data sheet, and the surface its maker asks for.',
  tests: 'What is tested before covering, how often, and what passes.',
  waste: 'Where debris and wash water go.',
  'left-out': 'What is left out: hidden damage, permits, and whoever else has to come.',
};
export const soundQuote: readonly string[] = Object.values(offerWords);

/**
 * What the price goes up and down with. `zones` are names by then.
 * @param mostDebris kg, the most that is told beside it, so that all of it is in one unit
 */
export function priceDriverSentence(driver: PriceDriver, say: Say, mostDebris?: number): string {
  const much = (amount: Amount) => amountWords(amount, say) ?? '';
  switch (driver.id) {
    case 'depth-open':
      return `Nobody has measured how deep it goes (${say.list(driver.zones)}). Until then an offer allows for the worst.`;
    case 'made-new':
      return `Making ${much(driver.amount)} of it new, through its full depth.`;
    case 'break-out':
      return `Breaking out and filling ${much(driver.amount)}.`;
    case 'bars':
      return `Freeing ${much(driver.amount)} of steel bar.`;
    case 'cracks':
      return `Opening ${much(driver.amount)} of crack.`;
    case 'saw-cut':
      return `Sawing ${much(driver.amount)} of edge. Few large patches cost less than many small ones.`;
    case 'debris':
      return `Hauling away ${amountWords(driver.amount, say, mostDebris) ?? ''} of debris.`;
    case 'water':
      return `Catching ${much(driver.amount)} of wash water.`;
    case 'machines':
      return driver.machineDays[1] === 1
        ? 'One machine for one day, and bringing it.'
        : `Machines: ${spanWords(driver.machineDays, 'count', say)} days of hire in all, and bringing them.`;
    case 'days':
      return `${driver.open ? 'At least ' : ''}${spanWords(driver.days, 'count', say)} days on site for ${driver.people === 1 ? 'one person' : `${say.number(driver.people)} people`}, drying and waiting included.`;
    case 'indoors':
      return 'Work indoors: dust has to be kept in, and no engine may run.';
    case 'by-hand':
      return 'No machine on wheels can stand there, so it is work by hand.';
  }
}
