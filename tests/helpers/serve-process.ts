import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** `npm run serve` for a folder, in a process of its own, on a free port. */
export async function serveProcess(folder: string) {
  const child = spawn('node', ['--import', 'tsx', 'src/cli/serve.ts', folder], {
    cwd: root,
    env: { ...process.env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let complaints = '';
  child.stderr.on('data', (chunk: Buffer) => (complaints += chunk.toString()));
  const exited = once(child, 'exit');
  const site = await new Promise<string>((found, failed) => {
    child.stdout.on('data', (chunk: Buffer) => {
      const address = /http:\S+/.exec(chunk.toString());
      if (address) found(address[0]);
    });
    void exited.then(() => failed(new Error(`it ended by itself: ${complaints}`)));
  });
  return {
    /** Its address as it prints it, with the slash at the end. */
    site,
    port: Number(new URL(site).port),
    /** Whether it runs. */
    alive: () => child.exitCode === null && child.signalCode === null,
    complaints: () => complaints,
    async end(): Promise<void> {
      child.kill();
      await exited;
    },
  };
}
