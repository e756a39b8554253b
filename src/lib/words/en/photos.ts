import type { PhotoMark, Stage } from '$lib/answers/photo';
import type { Refusal } from '$lib/survey/photo/area';
import type { Say } from '$lib/words/types';

/** Why a picture was not taken in. Nothing else is lost by it. */
export type NotTaken =
  | 'empty'
  | 'no-picture'
  | 'other-form'
  | 'broken'
  | 'too-large'
  | 'no-memory'
  | 'full'
  | 'quota'
  | 'unavailable';

const notTaken: Readonly<Record<NotTaken, string>> = {
  empty: 'The file is empty.',
  'no-picture': 'It is not a picture.',
  'other-form':
    'This browser cannot read this kind of picture (HEIC, for example). Set your camera to JPEG, or take the picture with the button here.',
  broken: 'The picture is broken or cut off. Take it again.',
  'too-large': 'It is larger than this page takes in. Take it with fewer megapixels.',
  'no-memory': 'It is too large for the memory of this device. Take it with fewer megapixels.',
  full: 'This zone has six photos. Delete one first.',
  quota: 'This device has no room left for it. Delete photos or jobs you no longer need.',
  unavailable: 'The storage of this browser did not answer. Try again.',
};

const markNames: Readonly<Record<PhotoMark['kind'], string>> = {
  arrow: 'Arrow',
  ring: 'Ring',
  label: 'Label',
};

/** The photos of a zone. */
export const photoWords = {
  title: 'Photos',
  titleOf: (zone: string) => `Photos: ${zone}`,
  toAdvice: 'To the advice',
  toJob: 'To the job',
  description: 'Photos of a zone: kept on this device alone, with marks, before and after.',
  wait: 'Your job is being opened.',
  noScript: 'This page needs JavaScript, since it takes the camera data out of your photos.',
  others: 'Other zones',
  lead: 'They stay on this device. Place, time and camera are taken out.',
  privacy: 'What is kept where',
  take: 'Take a photo',
  choose: 'Choose photos',
  working: 'Making it smaller …',
  room: (left: number) => (left === 1 ? 'Room for 1 more' : `Room for ${left} more`),
  none: 'No photo yet.',
  full: 'Six photos: this zone is full.',
  added: (count: number) => (count === 1 ? '1 photo added.' : `${count} photos added.`),
  refused: (file: string, why: NotTaken) => `“${file}” was not added. ${notTaken[why]}`,
  changeRefused: {
    gone: 'This photo was deleted in another tab.',
    quota: 'The change is not kept: this device has no room left.',
    unavailable: 'The change is not kept: the storage of this browser did not answer.',
    full: notTaken.full,
  },
  closed: {
    'no-storage': 'This browser keeps nothing for sites here, so photos cannot be kept either.',
    refused: 'This browser refuses to keep photos, as in a private window.',
    blocked:
      'Another tab has an older version of this site open. Close it and load this page anew.',
    slow: 'The storage of this browser does not answer. Load this page anew.',
  },
  unsaved: 'The job itself is not saved on this device yet, so no photo can be kept with it.',
  photo: (place: number) => `Photo ${place}`,
  alt: (place: number, caption: string) =>
    caption ? `Photo ${place}: ${caption}` : `Photo ${place}`,
  stage: 'What it shows',
  stages: { before: 'Before', after: 'After', other: 'Something else' } satisfies Record<
    Stage,
    string
  >,
  caption: 'Caption',
  sheet: 'On the job page and printed sheets',
  owner: 'On the owner’s sheet',
  earlier: 'Earlier',
  later: 'Later',
  delete: 'Delete',
  of: (what: string, place: number) => `${what}: photo ${place}`,
  deleted: (place: number) => `Photo ${place} is deleted.`,
  changed: {
    stage: 'What it shows is changed.',
    caption: 'The caption is changed.',
    sheet: 'What it stands on is changed.',
    owner: 'What it stands on is changed.',
    place: 'The order is changed.',
    marks: 'The marks are changed.',
  },
  undo: 'Undo',
  undone: 'Undone.',
  /** What the browser said when it was asked to keep the photos for good. */
  persist: {
    yes: 'This browser keeps them until you delete them.',
    no: 'This browser may delete them when the device runs out of room. Save the job to a file with its photos.',
  },
  marks: 'Mark',
  marksHint: (count: number) => (count ? String(count) : ''),
  tools: markNames,
  tool: 'Draw',
  pad: 'Photo to draw on',
  keys: 'Arrow keys move the cross, with Shift in small steps. Enter begins and ends.',
  label: 'Text of the label',
  labelFirst: 'Type the text of the label first.',
  begun: 'Begun. Move to the other end and press Enter.',
  drawn: (kind: PhotoMark['kind']) => `${markNames[kind]} drawn.`,
  marksFull: 'No more marks fit on this photo.',
  at: (x: number, y: number) =>
    `${Math.round(x * 100)} across, ${Math.round(y * 100)} down, of 100`,
  mark: (mark: PhotoMark, place: number) =>
    mark.kind === 'label' ? `Label “${mark.text}”` : `${markNames[mark.kind]} ${place}`,
  remove: (mark: string) => `Remove: ${mark}`,
  larger: 'Larger',
  smaller: 'Smaller',
} as const;

/** An area read off a photo. */
export const measureWords = {
  title: 'Measure an area',
  lead: 'Flat ground only. Chalk four marks round the area, tape all six distances, then take the photo from as high as you can. No very wide lens.',
  cracks: 'Crack widths are not measured: on a photo of a slab, one pixel is wider than the crack.',
  steps: { marks: 'Chalk marks', outline: 'Outline' },
  tool: 'Tap',
  marksHow: (done: number) =>
    done < 4
      ? `Tap mark ${done + 1} of 4, one after the other round.`
      : 'All four marks are tapped.',
  outlineHow: 'Tap the corners of the area, one after the other round.',
  zoom: 'Zoom in before you tap: the range gets narrower.',
  taped: 'Taped distances',
  pair: (from: number, to: number) => `From ${from} to ${to}`,
  back: 'Take back the last',
  anew: 'Start again',
  result: (low: string, high: string) => `Between ${low} and ${high}`,
  resultLine: 'In about 19 of 20 such photos the true area lies in this range.',
  take: (area: string) => `Take ${area} over as the area of the zone`,
  taken: (area: string) => `The area of the zone is ${area} now.`,
  takenLabel: 'Undo: area of the zone',
  drawnInstead: 'The area of this zone comes from the drawing of the slab.',
  why: {
    unfinished: '',
    'marks-cross':
      'The four marks cross or lie almost on a line. Tap them again, one after the other round.',
    'no-shape': 'No four marks lie as taped. Read the distances again.',
    'tape-differs':
      'The second diagonal does not go with the rest: one distance is read or typed wrong. Tape again.',
    'outline-crosses': 'The outline crosses itself. Tap its corners one after the other round.',
    'too-far':
      'The outline reaches too far towards the horizon. Take the photo from nearer and higher.',
    'reference-small':
      'The marks span less than half of the area, lengthwise or across. Chalk them further out.',
    'too-unsure':
      'This would be wrong by more than a third. Zoom in and tap again, or take the photo from higher.',
  } satisfies Record<Refusal, string>,
  range: (say: Say, [low, high]: readonly [number, number]) =>
    measureWords.result(say.area(low), say.area(high)),
};
