/** Captions of the three pictures of a method, a step or a check. */
export const frameCaptions = (
  _kind: 'method' | 'check',
  _id: string,
): readonly [string, string, string] => ['Before', 'At work', 'Done'];
