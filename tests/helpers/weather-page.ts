import type { Page } from '@playwright/test';

/** Three invented years of Marrow Quay: a wave from frost in January to warmth in July. */
export function inventFile(days = 1095): Buffer {
  const rows = ['date,tmin,tmax,prcp (mm),snow (mm)'];
  for (let day = 0; day < days; day += 1) {
    const date = new Date(Date.UTC(2001, 0, 1 + day));
    const mean = 8 - 13 * Math.cos((2 * Math.PI * (day - 15)) / 365.25);
    const cells = [(mean - 5).toFixed(1), (mean + 5).toFixed(1), '2.5', mean < 0 ? '25' : '0'];
    rows.push([date.toISOString().slice(0, 10), ...cells].join(','));
  }
  return Buffer.from(rows.join('\n'));
}

/** Hands a file to the page. */
export const give = (page: Page, name: string, buffer: Buffer) =>
  page
    .getByLabel('Choose a weather file (CSV)')
    .setInputFiles({ name, mimeType: 'text/csv', buffer });
