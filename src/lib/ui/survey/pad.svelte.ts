import type { Mark, Place } from '$lib/answers/survey';
import { distance, distanceTo, inside, same, sidesOf } from '$lib/survey/geometry';
import { toUs, fromUs } from '$lib/answers/units';
import { planned } from '$lib/ui/job/plan.svelte';
import { session } from '$lib/ui/session.svelte';
import { surveyWords as words } from '$words/survey';
import { drawing } from './drawing-state.svelte';
import { between, lineAt, markAt, markName, moved, squareRound, tapAt } from './marks';
import { nearest, sounding } from './sounding.svelte';
import { areaRound, typedAreas } from './typed';

/** What the cross moves by and what places are rounded to, mm and inches. */
export const steps = { metric: [10, 50, 100, 250, 500], us: [0.5, 1, 3, 6, 12] } as const;
/** A spot that is only tapped, mm: a first size to be changed. */
const firstSpot = { metric: 300, us: fromUs('mm', 12) } as const;
const survey = $derived(session.job.survey);

/** What touch, mouse and keys do on the drawing, by the tool in hand. */
class Pad {
  /** Place in the list of steps. */
  stepAt = $state(2);
  cursor = $state.raw<Place>([0, 0]);
  /** The mark that is being carried to another place by keys, and where it was taken up. */
  carried = $state.raw<{ index: number; from: Place } | null>(null);

  /** mm */
  get step(): number {
    const { units } = planned.say;
    const step = steps[units][this.stepAt] as number;
    return units === 'us' ? fromUs('mm', step) : step;
  }
  get stepNames(): readonly string[] {
    const { units, unitOf } = planned.say;
    return steps[units].map((step) => `${step} ${unitOf('mm')}`);
  }

  rounded([x, y]: Place): Place {
    const { units } = planned.say;
    const { step } = this;
    const round = (value: number) => {
      const whole = Math.round(value / step) * step;
      return Number((units === 'us' ? fromUs('mm', toUs('mm', whole)) : whole).toFixed(1));
    };
    const { x0, y0, x1, y1 } = drawing.box;
    // What is dragged to an edge is meant to lie on it, whatever the step.
    const edged = (value: number, low: number, high: number) =>
      Math.abs(value - low) < step / 2
        ? low
        : Math.abs(value - high) < step / 2
          ? high
          : round(value);
    return [edged(x, x0, x1), edged(y, y0, y1)];
  }

  /** To the middle of the slab. */
  centre(): void {
    const { x0, y0, x1, y1 } = drawing.box;
    this.cursor = this.rounded([(x0 + x1) / 2, (y0 + y1) / 2]);
  }

  /** Moves the cross by steps; over sounding.dots it goes from one to the next. */
  move(right: number, up: number): void {
    const step = drawing.tool === 'tap' ? sounding.spacing : this.step;
    const { x0, y0, x1, y1 } = drawing.box;
    const [x, y] = this.cursor;
    const within = (value: number, low: number, high: number) =>
      Math.min(high, Math.max(low, value));
    this.cursor = [within(x + right * step, x0, x1), within(y + up * step, y0, y1)];
    if (drawing.tool === 'tap') {
      const dot = nearest(sounding.dots, this.cursor);
      if (dot && distance(dot, this.cursor) < sounding.spacing) this.cursor = dot;
    }
    drawing.told = this.spoken(this.cursor);
  }
  spoken(place: Place): string {
    const { say } = planned;
    const at = words.at(say.length(place[0]), say.length(place[1]));
    if (drawing.tool !== 'tap') return at;
    const tap = survey?.marks?.[sounding.tapAt(place) ?? -1];
    return tap?.kind === 'tap' ? words.told.sound(tap.rings, at) : at;
  }

  /** Enter: begins a shape at the cross, goes on with it, or ends it. */
  enter(): void {
    const { cursor } = this;
    const { tool, begun } = drawing;
    if (tool === 'tap') return this.#sound(cursor);
    if (tool === 'move') return this.#carry(cursor);
    const last = begun.at(-1);
    if (!last) {
      drawing.begun = [cursor];
      drawing.told = words.begun(1);
    } else if ((tool === 'spot' || tool === 'zone') && !drawing.byCorners)
      this.#rectangle(begun[0] as Place, cursor);
    else if (same(last, cursor) || same(begun[0] as Place, cursor)) this.finish();
    else this.#goOn(cursor);
  }

  /** A tap with finger or mouse. */
  tap(place: Place, reach: number): void {
    const { tool } = drawing;
    const here = this.rounded(place);
    this.cursor = here;
    if (tool === 'tap') return this.#sound(place, reach);
    if (tool === 'move') return this.#pick(place, reach);
    if (drawing.begun.length || ((tool === 'spot' || tool === 'zone') && drawing.byCorners))
      return this.enter();
    if (tool === 'spot' || tool === 'zone') return this.#rectangle(here, here);
    if (tool === 'upright') return this.#wall(place, reach);
    this.enter();
  }

  drag(from: Place, to: Place, reach: number): void {
    const { tool } = drawing;
    const [start, end] = [this.rounded(from), this.rounded(to)];
    this.cursor = end;
    if (tool === 'tap') this.#sound(to, reach);
    else if (tool === 'move') this.#shift(markAt(survey?.marks ?? [], from, reach), from, to);
    else if (tool === 'spot' || tool === 'zone') this.#rectangle(start, end);
    else drawing.draw(tool, [start, end]);
  }
  /** Whether a drag from here takes a mark along; else it shifts the drawing. */
  holds(place: Place, reach: number): boolean {
    return drawing.tool !== 'move' || markAt(survey?.marks ?? [], place, reach) !== null;
  }

  #goOn(place: Place): void {
    drawing.begun = [...drawing.begun, place];
    drawing.told = words.begun(drawing.begun.length);
  }
  get canFinish(): boolean {
    const least = drawing.tool === 'spot' || drawing.tool === 'zone' ? 3 : 2;
    return drawing.begun.length >= least;
  }
  finish(): void {
    const { tool, begun } = drawing;
    if (tool !== 'tap' && tool !== 'move' && this.canFinish) drawing.draw(tool, begun);
  }
  drop(): void {
    drawing.begun = [];
    this.carried = null;
    drawing.problem = '';
  }

  /** The shape that is being drawn, as it would be placed. */
  begun(from: Place | null, to: Place | null): readonly Place[] {
    const { tool, begun } = drawing;
    if (from && to) {
      if (tool === 'tap') return [];
      if (tool === 'move') return [from, to];
      const ends: [Place, Place] = [this.rounded(from), this.rounded(to)];
      return this.closed(from, to) ? between(...ends) : ends;
    }
    if (this.carried) return [this.carried.from, this.cursor];
    if (!begun.length) return [];
    return this.closed(from, to)
      ? between(begun[0] as Place, this.cursor)
      : [...begun, this.cursor];
  }
  closed(from: Place | null, to: Place | null): boolean {
    const box = drawing.tool === 'spot' || drawing.tool === 'zone';
    return box && (Boolean(from && to) || !drawing.byCorners);
  }

  #rectangle(one: Place, other: Place): void {
    const { tool } = drawing;
    if (tool !== 'spot' && tool !== 'zone') return;
    const flat = Math.abs(one[0] - other[0]) < 1 || Math.abs(one[1] - other[1]) < 1;
    if (!flat) drawing.draw(tool, between(one, other));
    else if (tool === 'spot') drawing.draw(tool, squareRound(other, firstSpot[planned.say.units]));
    else {
      const typed = typedAreas(session.job).find(({ zone }) => zone === drawing.zoneInHand);
      const bay = sounding.bays.find(({ ring }) => inside(other, ring));
      if (typed) drawing.draw(tool, areaRound(other, typed.area, drawing.box));
      else if (bay) drawing.draw(tool, bay.ring);
      else drawing.draw(tool, squareRound(other, this.step));
    }
  }

  /** Something stands upright all along the side that was tapped. */
  #wall(place: Place, reach: number): void {
    const side = sidesOf(drawing.ring).find((each) => distanceTo(place, each) <= 2 * reach);
    if (side) drawing.draw('upright', side);
    else this.enter();
  }

  #sound(place: Place, reach = sounding.spacing): void {
    if (drawing.by === 'chain') {
      drawing.refuse(words.sound.asSpot);
      return;
    }
    const dot = nearest(sounding.dots, place);
    if (!dot || distance(dot, place) > Math.max(reach, sounding.spacing)) {
      drawing.refuse(words.sound.noDots);
      return;
    }
    this.cursor = dot;
    const { say } = planned;
    const rings = drawing.heard === 'rings';
    const at = words.at(say.length(dot[0]), say.length(dot[1]));
    const known = sounding.tapAt(dot);
    const marks = survey?.marks ?? [];
    const told = words.sound.taken(rings ? words.sound.rings : words.sound.dull, at);
    if (known === undefined) {
      drawing.add(tapAt(dot, rings));
      drawing.told = told;
    } else if ((marks[known] as { rings: boolean }).rings === rings)
      drawing.setMarks(marks.toSpliced(known, 1), words.sound.cleared);
    else drawing.setMarks(marks.with(known, { ...(marks[known] as Mark), rings } as Mark), told);
  }
  /** All sounding.dots that are left ring. */
  restRings(): void {
    const found = sounding.untapped.map((dot) => tapAt(dot, true));
    drawing.setMarks([...(survey?.marks ?? []), ...found], words.sound.left(0));
  }

  #pick(place: Place, reach: number): void {
    const index = markAt(survey?.marks ?? [], place, reach);
    // A zone is painted over its joints: a joint that was tapped is meant before the ground round it.
    const joint = lineAt(survey?.joints ?? [], place, reach);
    const ground = index !== null && survey?.marks?.[index]?.kind === 'zone';
    if (joint !== null && (index === null || ground)) {
      drawing.picked = { of: 'joint', index: joint };
      drawing.told = words.names('joint', joint + 1);
    } else {
      drawing.picked = index === null ? null : { of: 'mark', index };
      if (index !== null) drawing.told = markName(survey?.marks ?? [], index);
    }
    drawing.problem = drawing.picked ? '' : words.noMark;
  }
  #carry(cursor: Place): void {
    if (this.carried) {
      const { index, from } = this.carried;
      this.carried = null;
      return this.#shift(index, from, cursor);
    }
    this.#pick(cursor, this.step);
    if (drawing.picked?.of === 'mark') this.carried = { index: drawing.picked.index, from: cursor };
  }
  #shift(index: number | null, from: Place, to: Place): void {
    const mark = index === null ? undefined : survey?.marks?.[index];
    if (index === null || !mark) return;
    const [ax, ay] = this.rounded(from);
    const [bx, by] = this.rounded(to);
    if (!drawing.change(index, moved(mark, bx - ax, by - ay)))
      drawing.picked = { of: 'mark', index };
  }
}

export const pad = new Pad();
