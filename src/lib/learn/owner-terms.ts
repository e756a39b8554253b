import { ownerTerms } from 'virtual:explainers';

/** The terms of the glossary that a text uses, with what they mean; in the order of the glossary. */
export const termsIn = (text: string) =>
  ownerTerms.filter(({ term, forms }) =>
    [term, ...forms].some((spelling) => new RegExp(`\\b${spelling}\\b`, 'i').test(text)),
  );
