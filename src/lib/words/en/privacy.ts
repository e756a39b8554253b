import type { Part } from '$lib/keep/everything';

interface Kept {
  /** What of it there is. */
  readonly what: string;
  /** How it goes. */
  readonly gone: string;
}

/** What is kept where, what leaves when it is shared, and how it is removed. */
export const privacyWords = {
  title: 'Privacy',
  description: 'What this site keeps and where, what leaves when you share, and how to remove it.',
  lead: 'No account, no cookies, nobody counts visits. What you enter stays in this browser, on this device, until you share it.',
  keptTitle: 'What is kept on this device',
  kept: {
    jobs: {
      what: 'Your jobs with every answer, drawing and reading.',
      gone: 'Delete a job under “Your jobs”.',
    },
    photos: {
      what: 'Photos of zones, with your marks. They are made again when you add them: place, time and camera are not in them. When you added them is kept.',
      gone: 'Delete a photo on its page. A deleted zone or job takes its photos along. The open tab holds them for “Undo” until you close it.',
    },
    results: {
      what: 'Your results of practice.',
      gone: 'Forget them on the practice page.',
    },
    given: {
      what: 'Results that others sent you, each with the name its sender chose.',
      gone: 'Remove a name where you gather them.',
    },
    settings: {
      what: 'Units, how you read, which job was open, and what you were typing in a tab.',
      gone: 'They go with “Delete everything”.',
    },
    files: {
      what: 'A copy of this site, so that it opens without a network. Nothing of yours is in it.',
      gone: 'It goes with “Delete everything” and comes back at your next visit.',
    },
  } satisfies Record<Part, Kept>,
  room: 'A browser may delete what sites keep when the device runs out of room. After your first photo, this site asks it once not to.',
  leavesTitle: 'What leaves when you share',
  leaves: [
    'A link or a code holds the whole job, and never a photo. It stands behind the # of the address, which browsers send to no server. Whoever has it can read the job.',
    'A file holds the whole job. Photos are in it only when you choose “with its photos”.',
    'A result of practice holds the cases, what you picked, the day and the time, and your name if you type one.',
    'Paper shows what the sheet shows, and the photos you chose for it.',
  ],
  others: 'What others have, you cannot take back from here.',
  hostTitle: 'What the host of this site sees',
  host: 'Which files your browser asks for, and from which network, as with every site. Nothing you enter, and no photo.',
  cameraTitle: 'Camera and place',
  camera:
    'This site asks for neither. “Take a photo” opens the camera of your device, and the browser hands over the one picture. Your device may keep its own copy among your pictures, with the place in it.',
  removeTitle: 'Remove all of it',
  remove:
    '“Delete everything” lists what there is and deletes it. Clearing the data of this site in your browser does the same.',
  toRemove: 'To “Delete everything”',
} as const;
