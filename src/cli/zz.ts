import { adviseZone } from '$lib/advice/advise';
import { survey } from '$lib/advice/survey';
import { groupsOf } from '$lib/advice/groups';
import { kindsFor, fixedOf } from '$lib/advice/completions';
for (let i = 0; i < 4; i++) {
  let c = process.cpuUsage();
  const k = kindsFor({}, {});
  const g = groupsOf(k, { thickness: 'unknown', setting: 'open' }, fixedOf({}));
  let d = process.cpuUsage(c); console.log('groups', d.user/1000, g.groups.length, g.demands.length, Object.entries(k).map(([n,v])=>n+v.length).join(' '));
  c = process.cpuUsage(); const s = survey({}, {}); d = process.cpuUsage(c); console.log('survey', d.user / 1000, s.tallies.length);
  c = process.cpuUsage(); adviseZone({}, {}); d = process.cpuUsage(c); console.log('advise', d.user / 1000);
}
