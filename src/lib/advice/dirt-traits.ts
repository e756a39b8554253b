import type { Contaminant } from '$lib/answers/questions';

/** Oil, a thin coating, a heavy one, growth and salt bloom each change something. */
export const traitOfContamination = (set: readonly Contaminant[]): string =>
  [
    set.includes('oil'),
    set.includes('thin-coating'),
    set.includes('thick-coating') || set.includes('rubbery-coating'),
    set.includes('growth'),
    set.includes('salt-bloom'),
  ].join();

/**
 * A failure on a test patch counts only where the method would have done, and needles take off a
 * thick coating but no rubbery one. A thin one beside either changes nothing more; so there are no
 * more possibilities than bits (`groups.ts`).
 */
export const traitAfterPatch = (set: readonly Contaminant[]): string => {
  const coating = (['rubbery-coating', 'thick-coating', 'thin-coating'] as const).find((each) =>
    set.includes(each),
  );
  return [
    coating,
    ...(['oil', 'growth', 'salt-bloom'] as const).map((each) => set.includes(each)),
  ].join();
};
