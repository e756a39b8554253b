import type { HazardId } from '$shared/methods';
import type { HazardWords, Say } from '$lib/words/types';
import { eyesWorn } from './eyes';

type BodyHazard = Extract<
  HazardId,
  | 'silica'
  | 'noise'
  | 'vibration'
  | 'eyes'
  | 'water-injection'
  | 'carbon-monoxide'
  | 'electric'
  | 'slips'
  | 'lifting'
>;

const loud = (say: Say): string =>
  `Loud tools kill hearing bit by bit. It does not hurt while it happens, and what is lost does not come back. A day at ${say.figure('noise.niosh-criterion')} is as much as is advised`;

/** Hazards that the tools bring wherever they are used. Controls stand in order: the best first. */
export const bodyHazards = (say: Say): Readonly<Record<BodyHazard, HazardWords>> => ({
  silica: {
    name: 'Silica dust',
    harm: `Concrete dust holds silica, much of it too fine to see. It scars the lungs for good, and can cause lung cancer. The harm shows years later. The US limit over a day is ${say.figure('silica.limit')}, far less than a cloud you can see.`,
    controls: [
      'Choose the method that makes the least dust, and take off no more than has to go.',
      'Put water on the cutting point, or a shroud and extraction with a fine-dust filter on the tool.',
      'Stand upwind, keep others away, and take turns. Work outdoors where you can.',
      'Wear the respirator that the dust table names for the tool, the place and the hours. It has to fit your face, and a beard breaks the seal. A loose paper mask does not keep this dust out.',
      'Vacuum; never sweep dry or blow with air. Change out of dusty clothes before you go home.',
    ],
    stop: 'Stop when you see dust hang in the air, when water or extraction fails, or when the respirator leaks or is hard to breathe through.',
  },
  noise: {
    name: 'Noise',
    harm: `${loud(say)}, and a hammer can make ${say.figure('noise.jackhammer')}.`,
    harmNoHammer: `${loud(say)}.`,
    controls: [
      'Choose a quieter method or machine.',
      'Set compressors and engines far off, or behind a screen.',
      'Keep others away, and split loud work over the crew and over days.',
      'Wear ear protection that is strong enough, all of the time. A few minutes without it undo most of the good.',
    ],
    stop: 'Stop when your ears ring or sounds are dull, or when you have used up your noise for the day.',
  },
  vibration: {
    name: 'Hand-arm vibration',
    harm: 'Tools that shake harm the nerves and blood vessels of the hands. Fingers go numb, then white in the cold, and it may never heal.',
    controls: [
      'Choose a machine on wheels, or a method without hammering.',
      'Use tools with low vibration and sharp bits. Let the tool do the work, and hold it no tighter than you must.',
      'Keep to the time limit of the tool, and change over often.',
      'Keep hands warm and dry. Gloves keep them warm; do not count on them against the shaking.',
    ],
    stop: 'Stop when fingers tingle, go numb or turn white, or when the tool’s time for the day is used up. Tell a doctor if it comes back.',
  },
  eyes: {
    name: 'Flying pieces',
    harm: 'Chips, shot and grit fly fast enough to blind you and cut skin. They can hit people who only pass by.',
    controls: [
      'Keep guards and shrouds on the tool.',
      'Put up screens, and keep everybody without gear well away.',
      'Point the tool away from people, glass and cars.',
      `${eyesWorn} Wear gloves, long sleeves and safety boots.`,
    ],
    stop: 'Stop when someone steps into the area, when a guard is off, or when something is in your eye. Rinse out loose dust, and rinse cement or cleaner for a quarter of an hour. A cut or pierced eye is neither rinsed nor pressed: shield it with a cup, and go to hospital.',
  },
  'water-injection': {
    name: 'Water jet through the skin',
    harm: `From about ${say.figure('hazard.water-injection')} a jet can go through skin, and drive water and dirt deep inside. The hole looks tiny, and the damage is not. It can cost a limb.`,
    controls: [
      'Use the lowest pressure that does the job.',
      'Check hoses and couplings before you start, and let the pressure off before you touch the nozzle.',
      'Never point the lance at a person, and never hold what you wash. Keep others well away.',
      'Wear boots, gloves and leg guards made for the pressure of your machine.',
    ],
    stop: 'If a jet hits skin, stop and go to hospital at once, however small it looks. Say that it was a high-pressure jet: it is treated like a gunshot wound. Ask for a surgeon, and do not squeeze it.',
  },
  'carbon-monoxide': {
    name: 'Engine fumes',
    harm: 'Engines give off carbon monoxide. You cannot see or smell it, and indoors or half indoors it can knock you out within minutes. Open doors and fans are no guarantee.',
    controls: [
      'Use electric or air tools. Run no engine indoors or half indoors: not in a garage with the door open, not under a porch, not in a pit.',
      `Leave the engine outside, at least ${say.figure('co.distance')} from doors, windows and air inlets, and lead in a hose or a cable. Breathing air for a hood never comes from beside an engine.`,
      `Hang an alarm for carbon monoxide where people work, as the last line and not the first. Over a shift the mean must stay below ${say.figure('hazard.co-mean')}.`,
      'No dust mask helps against it. Do not count on one.',
    ],
    stop: `Stop at a headache, dizziness or sickness, when the alarm sounds, or at ${say.figure('hazard.co-ceiling')} even for a moment. Get everybody out into fresh air, and call for help.`,
  },
  electric: {
    name: 'Electric shock',
    harm: 'Water, damaged leads and hidden cables can kill you with one touch.',
    controls: [
      'Find hidden cables and gas pipes before you drill, cut or break. Have them switched off, locked off and checked.',
      'Use battery or low-voltage tools, or a lead with a device that cuts the power at a fault.',
      'Keep plugs and leads out of the water, and check them each day.',
      'Wear dry boots and dry gloves.',
    ],
    stop: 'Stop if the power trips, a lead is cut, a tool tingles, or you meet a cable or a pipe. Touch nothing, and have a qualified electrician look. If you hear or smell gas, touch no switch, make no flame, walk away upwind, and call from there. Whoever had a shock sees a doctor.',
  },
  slips: {
    name: 'Slips and falls',
    harm: 'Wet concrete, slurry, shot and rubble make you slip. Most bad falls start on the level or on a few steps.',
    controls: [
      'Clear rubble, hoses and leads as you go.',
      'Lead water away, and pick up stray shot with a magnet.',
      'Fence off open holes and edges, and light the place. On a ramp, never stand below a machine.',
      'Wear boots with a sole that grips when wet.',
    ],
    stop: 'Stop when it freezes on the wet surface, or when you cannot see where you step.',
  },
  lifting: {
    name: 'Heavy lifting',
    harm: 'Machines, bags and rubble are heavier than they look. A back that is hurt once stays weak.',
    controls: [
      'Have it delivered to the spot, and use a hoist, a ramp or a barrow.',
      'Break rubble small, and fill bags only part way.',
      'Lift heavy things in twos, with straight backs and short ways.',
      'Wear gloves that grip and boots with steel toes.',
    ],
    stop: 'Stop when you feel a sharp pain, or when a load is more than two can handle with ease.',
  },
});
