import { count } from '$words/count';

/** The page with the plan of a job. */
export const planPageWords = {
  title: 'Plan',
  waiting: 'Fetching your job from this device.',
  noScript:
    'Working out the plan is done in your own browser, and needs JavaScript, which is switched off.',
  unnamed: 'Job without a name',
  zones: (number: number) => count(number, 'zone', 'zones'),
  made: (date: string) => `Worked out on ${date}`,
  toCrew: 'Crew’s day',
  nothing: {
    title: 'No zone can be planned yet',
    line: 'A zone comes into the plan when its method is certain.',
    go: 'To the zones',
  },
  short: {
    days: 'Working days',
    crew: (people: string, hours: string) => `${people}, ${hours} a day`,
    withWaiting: (zones: string) => `as if this were cleared: ${zones}`,
    people: (number: number) => count(number, 'person', 'people'),
    debris: 'Debris',
    /** Where nothing but a coating comes off. */
    coating: 'coating to bag apart',
    notCounted: 'not counted',
    coatingToo: 'coating to bag apart: not counted',
    ofArea: (area: string) => `from ${area}`,
    fill: 'Repair material',
    bags: (number: string) => `${number} bags`,
    closed: 'Closed',
    opens: (cars: string, heavy: string) =>
      `of them ${cars} after the work, if cars drive there; heavy vehicles: ${heavy} after it`,
    noOverlay: 'without the overlay on top',
    dayCount: (number: string) => `${number} days`,
    none: 'none',
  },
  held: {
    title: 'Not in this plan yet',
    unsettled: 'Its answers still lead to more than one method.',
    oneMethod: 'An open answer decides whether it may be started.',
    toZone: (name: string) => `Advice for ${name}`,
    oneSpot: 'One drawn spot is too deep to patch. Give it a zone of its own:',
    toSpot: 'to the drawing',
    skinTitle: 'Of these only the spots are planned',
    skin: 'The surface beside the spots is loose too. Give the spots a zone of their own; then the rest is planned as well.',
    toZones: 'to the zones',
  },
  hire: {
    machines: 'Machines to have there',
    material: 'Material and debris',
    /** Nobody here knows what a machine costs a day: a line to be filled in. */
    price: 'Price of hire',
    ask: 'Ask a hire shop, and write it in',
  },
  fold: {
    order: 'Order of work and why',
    steps: (number: number) => count(number, 'step', 'steps'),
    days: 'Day by day',
    amounts: 'Amounts, zone by zone',
    patches: 'Patches and the drawing',
    where: 'Where on the slab',
  },
  waits: 'Only once this is cleared',
  callFirst: 'Call before day 1',
  callNobody: 'No engineer or laboratory is needed before day 1.',
  markAhead: 'Have cables and pipes marked days ahead.',
  measureFirst: (zones: string) => `Measure yourselves before you begin there: ${zones}.`,
  order: {
    title: 'Order of work',
    line: 'Each machine is set up once where the order allows. Steps stand by when they begin; some go on side by side.',
    drawing: (steps: number, zones: number) =>
      `Order of work: ${count(steps, 'step', 'steps')} from top to bottom, marked for ${count(zones, 'zone', 'zones')}. The list says the same in words.`,
    allZones: 'all zones',
    inZones: 'in',
    after: (step: string, why: string) => `after “${step}”, ${why}`,
    first: 'Comes first',
    free: 'Needs nothing before it here',
    wait: (hours: string) => `First let it dry: ${hours}.`,
    waitShort: (hours: string) => `dry ${hours}`,
    hours: 'Hours',
    /** Zones in which nobody may begin yet, and hours of theirs. */
    onceCleared: (what: string) => `once cleared: ${what}`,
    /** Before a step that nobody may begin in any zone. */
    notYet: 'Not yet:',
    noHours: 'Takes no time of its own, or a specialist’s: ask for theirs.',
    onceOnly: 'once for the job',
    with: 'With',
    of: (part: number, all: number) => `${part} of ${all}`,
    done: ({ done, all }: { done: number; all: number }) =>
      done === all ? 'done' : `${done} of ${all} done`,
  },
  days: {
    title: 'Who, what, when',
    line: 'Laid with usual times. Slow work takes up to the longer count. Drying goes on through the night.',
    most: (least: string, most: string) =>
      least === most
        ? count(Number(least), 'working day', 'working days')
        : `${least} to ${most} working days`,
    ofClass: (tool: string, most: string) => `${tool} of ${most} at most`,
    drawing: (days: number) =>
      `The steps laid over ${count(days, 'day', 'days')}, with a lane for each person and each machine. “Day by day” says the same in words.`,
    calendar: (days: number) => `${count(days, 'day', 'days')} from the first to the last.`,
    day: (number: number, date: string | null) => `Day ${number}${date ? `, ${date}` : ''}`,
    run: (from: number, to: number, dates: readonly [string, string] | null) =>
      `Days ${from} to ${to}${dates ? `, ${dates[0]} to ${dates[1]}` : ''}`,
    runShort: (from: number, to: number) => `Days ${from} to ${to}`,
    beside: 'beside it',
    onceCleared: 'once cleared',
    hired: (tool: string) => `${tool} (hired)`,
    short: (steps: string) => `Too short to be numbered: ${steps}.`,
    person: (number: number) => `Person ${number}`,
    waits: 'Dries or cures',
    open: 'Clean, not covered',
    untimed: (steps: string) => `That day too, hours not counted: ${steps}.`,
    off: 'A day off.',
    people: (number: number) => count(number, 'person', 'people'),
    hardening: (step: string) => `“${step}” goes on by itself.`,
    covering: 'From the last cleaning to covering',
    openLongest: (hours: string, limit: string) =>
      `Last cleaning to covering: ${hours} of ${limit} it may lie open.`,
    openAtOnce: 'Cover it right after the last cleaning.',
    atOnce: 'right after; the hours of placing are not counted',
    coveringOf: (zone: string, hours: string) => `${zone}: ${hours}.`,
    coveringLimit: (limit: string) => `It may lie open for ${limit} at most; then clean it again.`,
    coveringOver: (zone: string, limit: string) =>
      `${zone} would lie open longer than ${limit}. Clean it again right before it is covered.`,
    notCovered: (zones: string) => `What covers it is not settled, so it is not counted: ${zones}.`,
    dryingFor: (step: string) => `Drying before “${step}”.`,
    bring: 'Bring',
    unknown: (steps: string) =>
      `Not counted in, because something is missing to work them out: ${steps}.`,
    wholeWait: 'Nothing to do but wait.',
    runsOn: (days: number) => `runs on ${count(days, 'day', 'days')}`,
  },
  machines: { title: 'Machines you lack' },
  print: {
    title: 'Print or take along',
    plan: 'Print the plan',
    zones: 'Print zone sheets',
    quantities: 'Print the quantities',
    cautions: 'Print the cautions',
    markdown: 'Plan as text (.md)',
    csv: 'Quantities as a table (.csv)',
    sheet: {
      plan: 'Plan',
      zone: 'Zone sheet',
      quantities: 'Quantities',
      cautions: 'Cautions',
    },
  },
  assumptions: {
    title: 'What this takes for granted',
    crew: (people: string) => `You have not said how many you are. ${people} are counted on.`,
    hours: (hours: string) => `You have not said how long you work. ${hours} a day are counted on.`,
    frost: 'How often it freezes is not settled. Patches are laid for the harder case.',
    yield: (yieldOfBag: string) =>
      `The yield of a bag is a stand-in (${yieldOfBag}). Type in what is printed on yours.`,
    square: (zones: string) =>
      `From one square patch to many small spots, for want of their places: ${zones}. Draw the spots to narrow it.`,
    open: (zone: string, questions: string) =>
      `${zone}: not settled, and without weight for the method: ${questions}.`,
    own: (figure: string, value: string) => `Your own value: ${figure}, ${value}.`,
    usable: (share: string, basis: string) =>
      `Of a working day a tool is at work ${share} (${basis}); the rest goes into setting up, moving and cleaning. So steps fill more of a day than their hours.`,
    hands: 'Work by hand is shared by whoever is free. Bring a tool for each.',
    pullOff:
      'Pull-off tests are not counted in. Where they are asked for, they want a dry face, and hours for the glue to harden.',
    coating: 'Coating that comes off is bagged apart, and is in no amount here.',
    joints: 'No patch may bridge a joint. Keep clear of joints yourself: they are not asked.',
  },
  cautions: { title: 'What can hurt you on this job', on: 'Comes with' },
  answers: 'What you told',
  site: 'The site',
  readMore: 'Change answers',
} as const;
