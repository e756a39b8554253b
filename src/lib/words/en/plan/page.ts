const count = (number: number, one: string, many: string) =>
  number === 1 ? `1 ${one}` : `${number} ${many}`;

/** The page with the plan of a job. */
export const planPageWords = {
  title: 'Plan',
  waiting: 'Fetching your job from this device.',
  noScript:
    'Working out the plan is done in your own browser, and needs JavaScript, which is switched off.',
  unnamed: 'Job without a name',
  zones: (number: number) => count(number, 'zone', 'zones'),
  made: (date: string) => `Worked out on ${date}`,
  nothing: {
    title: 'No zone can be planned yet',
    line: 'A zone comes into the plan when its method is certain.',
    go: 'To the zones',
  },
  short: {
    days: 'Working days',
    crew: (people: string, hours: string) => `${people}, ${hours} a day`,
    people: (number: number) => count(number, 'person', 'people'),
    area: 'Area planned',
    debris: 'Debris',
    fill: 'Repair material',
    cars: 'Before cars',
    heavy: 'Before heavy vehicles',
    afterRepair: 'after the repair is placed',
    none: 'none',
  },
  held: {
    title: 'Not in this plan yet',
    line: 'These zones wait for something. Nothing below counts them in.',
    needs: (names: string) => `Answer first: ${names}.`,
    may: (names: string) => `It may turn out to need ${names} first.`,
    unsettled: 'Its answers still lead to more than one method.',
    toZone: (name: string) => `Advice for ${name}`,
  },
  waits: 'Only once this is cleared',
  order: {
    title: 'Order of work',
    line: 'Each machine is set up once where the order allows. Do a step in all its zones before the next.',
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
    noHours: 'Takes no time of its own, or a specialist’s: ask for theirs.',
    onceOnly: 'once for the job',
    with: 'With',
    of: (part: number, all: number) => `${part} of ${all}`,
  },
  days: {
    title: 'Days',
    line: 'Laid with usual times. Slow work takes up to the longer count. Drying goes on through the night.',
    most: (least: string, most: string) => `${least} to ${most} working days`,
    drawing: (days: number) =>
      `The steps laid over ${count(days, 'working day', 'working days')}. The list says the same in words.`,
    day: (number: number) => `Day ${number}`,
    run: (from: number, to: number) => `Days ${from} to ${to}`,
    drying: 'drying',
    dryingFor: (step: string) => `Drying before “${step}”.`,
    bring: 'Bring',
    unknown: (steps: string) =>
      `Not counted in, because something is missing to work them out: ${steps}.`,
    wholeWait: 'Nothing to do but wait.',
    machineDays: 'Machines and tools',
    machineOn: 'On days',
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
    joints: 'No patch may bridge a joint. Keep clear of joints yourself: they are not asked.',
  },
  cautions: { title: 'What can hurt you on this job', on: 'Comes with' },
  answers: 'What you told',
  site: 'The site',
  readMore: 'Change answers',
} as const;
