/** From screen to phone, and on paper. */
export const carryWords = {
  setAlternative: 'Code that opens this set of cases on a phone',
  setTooLarge: 'This set is too large for a code. Send the link.',
  alternative: 'Code that opens this job on a phone',
  scan: 'Scan it: this job opens on a phone, without its photos.',
  /** The crew's log makes the code too large. */
  withoutLog: (file: string) =>
    `The log of the work is too large for the code: it is in the file. Save it under “Your jobs”: ${file}`,
  toJobs: 'To your jobs: send the link, or save the file',
  linkOnly: 'The job is too large for a code: send the link, or the file.',
  toPhone: 'Take it to a phone',
  back: 'Back at the desk, share the job from the phone and choose “Bring it into a job here”.',
  takeFile: (file: string) =>
    `This job is too large for a code. To take it along, save it to a file under “Your jobs”: ${file}`,
} as const;
