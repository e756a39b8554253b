import type { Outcome, OutcomeKind, WhyId } from '$lib/trial/outcome';
import type { Say } from '$lib/words/types';

/** What comes next, as the head of the answer. */
export const outcomeNames: Readonly<Record<OutcomeKind, string>> = {
  'go-on': 'Continue as set',
  finer: 'One notch gentler, then try again',
  harsher: 'One notch harder, then try again',
  'another-pass': 'Another pass over the same square',
  'other-method': 'Another method',
  stop: 'Stop and find out',
};

/** What the patch showed, and what that means. */
export const whyWords = (say: Say): Readonly<Record<WhyId, string>> => ({
  'meets-all':
    'It is clean, sound and rough enough, and no deeper than it had to be. Work the zone with these settings.',
  'too-smooth': 'The face is smoother than what goes on next needs.',
  'too-rough': 'The face is rougher than what goes on next can cover.',
  'rough-as-found':
    'It is clean and sound, but rougher than asked. Washing does not make it smoother: the sealer or coat will follow the texture that is there.',
  'still-dusts': 'It still dusts when you wipe it, so weak skin is left.',
  'still-loose': 'A scraper still takes something off: weak concrete, coating or growth is left.',
  'stones-pulled-out':
    'Stones came out whole. In sound concrete they break across, so what holds them is weak.',
  bruised: 'Stones are torn loose or shattered, so what stays is bruised.',
  'too-deep': 'One place is deeper than this method is for.',
  'over-deep': `On average it took ${say.figure('trial.over')} or more of sound concrete.`,
  'bar-heavy-hammer': `You met a bar. Around steel the hammer is of the ${say.figure('hammer.at-steel')} class.`,
  'bar-unexpected': 'You met a bar where none was known. Nobody goes on before its depth is known.',
  'hollow-below': 'It sounds dull, so a layer below has let go.',
  'no-sound-base': 'It is as deep as the damage was said to be, and still not sound.',
  'past-partial-depth': `One place is deeper than ${say.fraction(say.valueOf('depth.partial-limit'))} of the slab, where a repair in part is doubtful.`,
});

/** What to do where it stops, by what stopped it. */
export const stopWords: Readonly<Partial<Record<WhyId, string>>> = {
  'bar-unexpected':
    'Find the bars and their cover with a cover meter. On anything that holds a load, call a licensed engineer.',
  'hollow-below': 'Sound the whole zone with a hammer or chain, and chip one place to the bottom.',
  'no-sound-base': 'Chip one place until it rings clear, and measure how deep that is.',
  'past-partial-depth':
    'Measure the slab at an edge or a drilled hole. A licensed engineer says whether that part is replaced whole.',
};

/** Why the ladder itself has ended. */
export const ladderEnded = (outcome: Outcome): string =>
  !outcome.ladderEnded
    ? ''
    : outcome.because === 'too-much'
      ? 'There is no gentler notch that has not failed.'
      : 'There is no harder notch that may be tried.';

/** Where it takes too much and too little at once. */
export const bothWays = 'It takes too much and leaves too much at once: no setting mends both.';
