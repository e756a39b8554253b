import { resolve } from '$app/paths';
import type { InterviewPlace } from '$lib/interview/context';

const inZone = (path: string, zone: string | null | undefined): string =>
  zone ? `${path}?zone=${encodeURIComponent(zone)}` : path;

/** Addresses of the site's pages. */
export const paths = {
  home: () => resolve('/'),
  worker: () => `${resolve('/')}service-worker.js`,
  licences: () => `${resolve('/')}learn/licences/`,
  jobs: () => `${resolve('/')}jobs/`,
  weather: (zone?: string | null) => inZone(`${resolve('/')}weather/`, zone),
  learn: () => `${resolve('/')}learn/`,
  practice: () => `${resolve('/')}learn/practice/`,
  chart: () => `${resolve('/')}learn/chart/`,
  explainer: (slug: string) => `${resolve('/')}learn/${slug}/`,
  advice: (zone?: string | null) => inZone(`${resolve('/')}advice/`, zone),
  owner: () => `${resolve('/')}owner/`,
  ready: (zone?: string | null) => inZone(`${resolve('/')}ready/`, zone),
  trial: (zone?: string | null) => inZone(`${resolve('/')}trial/`, zone),
  photos: (zone?: string | null) => inZone(`${resolve('/')}photos/`, zone),
  privacy: () => `${resolve('/')}privacy/`,
  patchPractice: () => `${resolve('/')}trial/practice/`,
  job: () => `${resolve('/')}job/`,
  plan: () => `${resolve('/')}job/plan/`,
  survey: () => `${resolve('/')}survey/`,
  /** The crew's day: of the plan, by the first working day it stands for. */
  crew: (day?: number) => `${resolve('/')}crew/${day === undefined ? '' : `?day=${String(day)}`}`,
  /** A question, or the advice when the interview has come to its end. */
  place: (place: InterviewPlace, zone?: string | null) =>
    place === 'done' ? paths.advice(zone) : inZone(`${resolve('/')}assess/${place}/`, zone),
};
