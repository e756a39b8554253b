import { csvOf } from '$lib/keep/export-csv';
import { markdownOf } from '$lib/keep/export-markdown';
import { session } from '$lib/ui/session.svelte';
import { planDocument } from '$words/plan/document';
import { quantityRows, tableHead } from '$words/plan/table';
import { download } from './download';
import { planned } from './plan.svelte';
import { today } from './today';

/** Keeps the plan as text that reads without this site. */
export const saveMarkdown = (): void =>
  download(
    markdownOf(
      planDocument(session.job, planned.plan, planned.say, {
        date: today().long,
        nameOf: planned.nameOf,
      }),
    ),
    'text/markdown',
    '.plan.md',
  );

/** Keeps the amounts as a table. */
export const saveTable = (): void =>
  download(
    csvOf(
      tableHead,
      quantityRows(session.job, planned.plan, planned.say, {
        date: today().iso,
        nameOf: planned.nameOf,
      }),
    ),
    'text/csv',
    '.quantities.csv',
  );
