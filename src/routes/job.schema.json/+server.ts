import { jobSchema } from '$lib/keep/job-schema';
import type { RequestHandler } from './$types';

export const prerender = true;
export const trailingSlash = 'never';

/** The schema of the job file, for whoever writes or checks one with a program of their own. */
export const GET: RequestHandler = () =>
  new Response(`${JSON.stringify(jobSchema(), null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
