/** Counts and rates that whoever runs the tests should see, past the reporter. */
export const say = (line: string): void => void process.stdout.write(`  ${line}\n`);
