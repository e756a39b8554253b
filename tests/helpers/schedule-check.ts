import type { Plan } from '$lib/plan/plan';
import { precedence, wets, needsDry } from '$lib/plan/precedence';
import { everywhere } from '$lib/plan/schedule';
import { figures, valueOf, type FigureId } from '$shared/figures';

const slack = 1e-6;
const moment = (hour: number): number => Math.round(hour / slack);

/** A figure's usual value, looked up anew and not by the scheduler's own code. */
const usual = (id: FigureId): number => {
  const { typical, range, value } = figures[id];
  return typical ?? value ?? ((range?.[0] ?? 0) + (range?.[1] ?? 0)) / 2;
};

/**
 * What is wrong with a schedule, a line each; empty where nothing is. Reads the laid tasks and the
 * table of precedence only, nothing the scheduler worked out on its way.
 */
export function faultsOf({ tasks, schedule }: Plan, off = (_day: number) => false): string[] {
  const { placed, hoursPerDay } = schedule;
  const wrong: string[] = [];
  const say = (line: string) => void wrong.push(line);

  if (
    placed.length !== tasks.length ||
    new Set(placed.map(({ task }) => task)).size !== tasks.length
  )
    say(`${placed.length} of ${tasks.length} tasks are laid`);

  for (const { task, from, to, stretches, people } of placed) {
    const name = `${task.step} ${task.zones.join('+')}`;
    const worked = stretches.reduce((sum, piece) => sum + (piece.to - piece.from), 0);
    const wanted = task.hours?.atTask.typical ?? 0;
    if (Math.abs(worked * people.length - wanted) > slack * Math.max(1, wanted))
      say(`${name}: ${worked * people.length} h laid, ${wanted} h to do`);
    if (!task.shared && people.length > 1) say(`${name}: more than one pair of hands`);
    for (const piece of stretches) {
      const morning = 24 * (piece.day - 1);
      if (
        piece.from < morning - slack ||
        piece.to > morning + hoursPerDay + slack ||
        off(piece.day)
      )
        say(`${name}: work outside hours on day ${piece.day}`);
      if (piece.from < from - slack || piece.to > to + slack) say(`${name}: outside its own times`);
    }
  }

  for (const { before, after, why } of precedence)
    for (const one of placed.filter(({ task }) => before.includes(task.step)))
      for (const other of placed.filter(({ task }) => after.includes(task.step))) {
        if (one.task.step === other.task.step) continue;
        const near =
          everywhere.includes(why) || one.task.zones.some((id) => other.task.zones.includes(id));
        if (near && one.to > other.from + slack)
          say(
            `${why}: ${one.task.step} ends at ${one.to}, ${other.task.step} begins at ${other.from}`,
          );
      }

  const busy = new Map<string, [number, number][]>();
  for (const { task, people, stretches } of placed)
    for (const { from, to } of stretches) {
      const who = people.map((person) => `person ${person}`);
      // Walk-behind machines, and what one person does: common practice.
      const machine = !task.shared && task.tool.tool !== 'hand-tools' ? [task.tool.tool] : [];
      for (const name of [...who, ...machine])
        busy.set(name, [...(busy.get(name) ?? []), [from, to]]);
    }
  for (const [name, spans] of busy) {
    spans.sort((one, other) => one[0] - other[0]);
    spans.forEach(([from], index) => {
      const before = spans[index - 1];
      if (before && before[1] > from + slack) say(`${name} is in two places at ${from}`);
    });
  }

  const zones = new Set(tasks.flatMap((task) => task.zones));
  for (const zone of zones) {
    const here = placed
      .filter(({ task }) => task.zones.includes(zone))
      // Times a hair apart are the same time, told by sums in another order: the shorter comes first.
      .sort((one, other) => moment(one.from) - moment(other.from) || one.to - other.to);
    here.forEach(({ task, from }, index) => {
      if (index && (here[index - 1]?.to ?? 0) > from + slack) say(`${zone}: two things at once`);
      if (task.step !== 'check-ready' && !needsDry.includes(task.step)) return;
      const lastDry = here.findLastIndex(
        (each, place) => place < index && needsDry.includes(each.task.step),
      );
      const wet = here.slice(lastDry + 1, index).findLast((each) => wets.includes(each.task.step));
      if (wet && from < wet.to + usual('dry.before-blasting') - slack)
        say(`${zone}: ${task.step} before ${wet.task.step} has dried`);
    });
    const find = (step: string) => here.find(({ task }) => task.step === step);
    const [clean, cover, test] = [find('last-clean'), find('cover'), find('moisture-test')];
    if (clean && cover && cover.from - clean.to > valueOf('open.limit') + slack)
      say(`${zone}: open for ${cover.from - clean.to} h`);
    if (clean && test && clean.from < test.to + usual('sheet.time') - slack)
      say(`${zone}: cleaned while the moisture test stands`);
    const fill = find('fill-cure');
    const next = here.find(({ task }) => task.step === 'wet-or-dry');
    if (fill && next && next.from < fill.from + 24 * usual('fill-level.cure') - slack)
      say(`${zone}: the fill has not hardened`);
  }
  return wrong;
}
