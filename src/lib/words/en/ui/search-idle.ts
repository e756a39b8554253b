/** Words a search passes over: those that tell nothing, and what nearly every page is about. */
export const searchIdle: Readonly<Record<'always' | 'everywhere', readonly string[]>> = {
  always:
    'a about an and any are as at be but by can did do does for from get had has have how i if in into is it its keeps many me much my need no not of off on onto or our out over should so some than that the them then there they this to under up was we what when where which who why will with would you your'.split(
      ' ',
    ),
  everywhere: ['concrete', 'cement', 'work', 'job'],
};
