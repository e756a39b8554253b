import { wholeNumber } from '$lib/words/by-language';
import type { Job } from '$lib/answers/job';
import type { CrackKind, Mark, MarkKind, Place, SlabOutline, Survey } from '$lib/answers/survey';
import { markFault, faultOf, type FaultId } from '$lib/survey/faults';
import { boxOf, type Box, type Ring } from '$lib/survey/geometry';
import { outlineOf } from '$lib/survey/outline';
import { session } from '$lib/ui/session.svelte';
import { drawnFaults, surveyWords as words } from '$words/survey';
import { rangeOf } from '$shared/figures';
import { markName, withoutField } from './marks';

export type Tool = MarkKind | 'joint' | 'move';
export const tools: readonly Tool[] = [
  'spot',
  'crack',
  'bar',
  'tap',
  'upright',
  'zone',
  'joint',
  'move',
];

/** A mark in the list, or a joint. */
export interface Picked {
  readonly of: 'mark' | 'joint';
  readonly index: number;
}

const most = rangeOf('limit.marks')[1];
const mostJoints = rangeOf('limit.joints')[1];
/** How many steps back are kept. */
const kept = 200;

/** What is done on the drawing of the job in hand. Each change is saved with the job, and can be undone. */
class DrawingState {
  tool = $state<Tool>('spot');
  /** What the next mark is given. */
  heard = $state<'rings' | 'dull'>('dull');
  by = $state<'hammer' | 'chain'>('hammer');
  zone = $state<string>('');
  /** Which is painted; of a mark that is placed it says nothing. */
  painted = $state<string>('');
  crack = $state<CrackKind | ''>('');
  byCorners = $state(false);
  /** Corners of a shape that is begun. */
  begun = $state.raw<readonly Place[]>([]);
  picked = $state.raw<Picked | null>(null);
  /** Why the last thing could not be done; empty when it could. */
  problem = $state('');
  /** What was done last, for those who do not see it. */
  told = $state('');
  #past = $state.raw<readonly (Survey | undefined)[]>([]);
  #ahead = $state.raw<readonly (Survey | undefined)[]>([]);
  #of = '';

  get canUndo(): boolean {
    return this.#past.length > 0;
  }
  get canRedo(): boolean {
    return this.#ahead.length > 0;
  }
  get survey(): Survey | undefined {
    return session.job.survey;
  }

  /** Begins afresh when another job is in hand: its steps are not this one's to undo. */
  take(job: string): void {
    if (job === this.#of) return;
    this.#of = job;
    this.#past = this.#ahead = [];
    this.begun = [];
    this.picked = null;
    this.problem = this.told = '';
    this.tool = 'spot';
    this.by = 'hammer';
    this.zone = this.painted = this.crack = '';
  }

  #put(survey: Survey | undefined): void {
    session.update((job) => withSurvey(job, survey));
  }

  #keep(survey: Survey, told: string): void {
    this.#past = [...this.#past, this.survey].slice(-kept);
    this.#ahead = [];
    this.problem = '';
    this.told = told;
    this.#put(survey);
  }

  undo(): void {
    if (!this.canUndo) return;
    this.#ahead = [...this.#ahead, this.survey];
    this.#put(this.#past.at(-1));
    this.#past = this.#past.slice(0, -1);
    this.#back(words.undone);
  }
  redo(): void {
    if (!this.canRedo) return;
    this.#past = [...this.#past, this.survey];
    this.#put(this.#ahead.at(-1));
    this.#ahead = this.#ahead.slice(0, -1);
    this.#back(words.redone);
  }
  #back(told: string): void {
    this.begun = [];
    this.picked = null;
    this.problem = '';
    this.told = told;
  }

  refuse(problem: string): string {
    this.problem = problem;
    return problem;
  }
  #fault = (fault: FaultId): string => this.refuse(drawnFaults[fault]);

  /** Sets the outline; says what is wrong with it, or what on the drawing it would not fit. */
  setSlab(slab: SlabOutline): string {
    const before = this.survey;
    const next = { ...before, slab };
    const alone = faultOf({ slab });
    if (alone) return this.#fault(alone.fault);
    const fault = faultOf(next);
    if (fault) {
      const [list, index] = fault.path as ['marks' | 'joints', number];
      const name =
        list === 'joints' ? words.names('joint', index + 1) : markName(before?.marks ?? [], index);
      return this.refuse(words.start.leaves(name));
    }
    this.#keep(next, '');
    return '';
  }

  setJoints(joints: NonNullable<Survey['joints']>, told: string): string {
    const { survey } = this;
    if (!survey) return '';
    if (joints.length > mostJoints) return this.refuse(words.full(String(mostJoints)));
    const fault = faultOf({ slab: survey.slab, joints });
    if (fault) return this.#fault(fault.fault);
    this.#keep(joints.length ? { ...survey, joints } : withoutField(survey, 'joints'), told);
    return '';
  }

  setSpacing(spacing: number, told: string): void {
    const { survey } = this;
    if (survey) this.#keep({ ...survey, spacing }, told);
  }

  /** Says that a chain was dragged over everything in lanes so wide, or takes that back. */
  setLanes(lanes: number | null): void {
    const { survey } = this;
    if (!survey) return;
    if (lanes === null) this.#keep(withoutField(survey, 'lanes'), words.sound.chainGone);
    else this.#keep({ ...survey, lanes }, words.sound.chainKept);
  }

  /** Puts marks in, or others in place of all there are. */
  setMarks(marks: readonly Mark[], told: string): string {
    const { survey } = this;
    if (!survey) return '';
    if (marks.length > most) return this.refuse(words.full(wholeNumber(most)));
    this.#keep(marks.length ? { ...survey, marks } : withoutField(survey, 'marks'), told);
    return '';
  }

  /** Places a mark; says what is wrong with it, or nothing. Then it is picked, so that more can be said of it. */
  add(mark: Mark): string {
    const { survey } = this;
    if (!survey) return '';
    const fault = markFault(mark, this.ring);
    if (fault) return this.#fault(fault.fault);
    const marks = [...(survey.marks ?? []), mark];
    const index = marks.length - 1;
    const problem = this.setMarks(marks, words.placed(markName(marks, index)));
    if (problem) return problem;
    this.begun = [];
    if (mark.kind !== 'tap') this.picked = { of: 'mark', index };
    return '';
  }

  addJoint(line: readonly Place[]): string {
    const joints = [...(this.survey?.joints ?? []), line];
    const problem = this.setJoints(joints, words.placed(words.names('joint', joints.length)));
    if (!problem) this.begun = [];
    return problem;
  }

  /** Puts another mark in the place of one; says what is wrong with it, or nothing. */
  change(index: number, mark: Mark): string {
    const marks = this.survey?.marks ?? [];
    const fault = markFault(mark, this.ring);
    if (fault) return this.#fault(fault.fault);
    return this.setMarks(marks.with(index, mark), words.changed(markName(marks, index)));
  }

  /** Puts another line in the place of a joint; says what is wrong with it, or nothing. */
  changeJoint(index: number, line: readonly Place[]): string {
    const joints = this.survey?.joints ?? [];
    return this.setJoints(joints.with(index, line), words.changed(words.names('joint', index + 1)));
  }

  remove({ of, index }: Picked): void {
    this.picked = null;
    if (of === 'joint') {
      const joints = this.survey?.joints ?? [];
      this.setJoints(joints.toSpliced(index, 1), words.removed(words.names('joint', index + 1)));
    } else {
      const marks = this.survey?.marks ?? [];
      this.setMarks(marks.toSpliced(index, 1), words.removed(markName(marks, index)));
    }
  }

  /** A mark of the chosen kind over these places, with what is chosen for it. */
  draw(kind: Exclude<MarkKind, 'tap'> | 'joint', places: readonly Place[], depth?: number): string {
    const zone = this.zone ? { zone: this.zone } : {};
    switch (kind) {
      case 'joint':
        return this.addJoint(places);
      case 'spot':
        return this.add({ kind, corners: places, ...(depth !== undefined && { depth }), ...zone });
      case 'zone':
        return this.add({ kind, corners: places, zone: this.zoneInHand });
      case 'crack':
        return this.add({ kind, line: places, ...(this.crack && { crack: this.crack }), ...zone });
      case 'bar':
        return this.add({ kind, line: places, ...zone });
      case 'upright':
        return this.add({ kind, line: places });
    }
  }

  /** The zone that is painted. */
  get zoneInHand(): string {
    return this.painted || (session.job.zones[0]?.id ?? '');
  }
  get ring(): Ring {
    return this.survey ? outlineOf(this.survey.slab) : [];
  }
  get box(): Box {
    return boxOf(this.ring);
  }
}

export const withSurvey = (job: Job, survey: Survey | undefined): Job =>
  survey ? { ...job, survey } : withoutField(job, 'survey');

export const drawing = new DrawingState();
