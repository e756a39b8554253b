import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import type { InterviewContext } from '$lib/interview/context';
import type { Draft } from '$lib/ui/question/draft';
import { earlyDraft } from '$lib/ui/question/early';
import { loadParts } from '$lib/ui/question/load';
import QuestionForm from '$lib/ui/question/QuestionForm.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { formatter } from '$lib/words/format';
import type { ChoiceWords, QuestionWords } from '$lib/words/types';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

afterEach(() => {
  cleanup();
  preferences.units = 'metric';
});

/** A question on a page of its own, with what it gave as answers. */
async function shown(question: QuestionId, answers: InterviewContext = { site: {}, zone: {} }) {
  const parts = await loadParts(question);
  const onanswer = vi.fn();
  const taken = (answer: unknown) => answer !== null && onanswer(answer);
  const words = parts.wordsOf(formatter('metric'));
  const props = {
    question,
    words,
    parts,
    answers,
    edited: null as Draft | null,
    back: '/back/',
    // The machine holds what is ticked and hands it back.
    ondraft: (edited: Draft) => void rerender({ edited }),
    onanswer: taken,
  };
  const { rerender } = render(QuestionForm, props);
  return { words, onanswer, user: userEvent.setup() };
}
const named = ({ choices }: QuestionWords): ChoiceWords[] => Object.values(choices);
const press = (name: string) => screen.getByRole('button', { name });
const said = () => screen.getByRole('alert').textContent;

describe('a question with choices', () => {
  it('names each choice, tells its hint, and takes the one that is picked', async () => {
    const { words, onanswer, user } = await shown('looseness');
    const radios = screen.getAllByRole('radio');
    expect(radios).toHaveLength(choicesOf('looseness').length + 1);
    for (const { name, hint } of named(words)) {
      const radio = screen.getByRole('radio', { name });
      expect(radio).toHaveAccessibleDescription(hint);
    }
    await user.click(screen.getByRole('radio', { name: words.choices['rotten' as never]['name'] }));
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(['rotten']);
  });

  it('asks for a choice when none is made, and lets “Not sure” be one', async () => {
    const { onanswer, user } = await shown('texture');
    await user.click(press('Continue'));
    expect(said()).toMatch(/Choose one/);
    expect(onanswer).not.toHaveBeenCalled();
    await user.click(screen.getByRole('radio', { name: 'Not sure' }));
    expect(said()).toBe('');
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith([...choicesOf('texture')]);
  });

  it('takes several that are possible, in the order of the question', async () => {
    const { words, onanswer, user } = await shown('texture');
    await user.click(press('Several possible'));
    const [first, , third] = named(words).map(({ name }) => name);
    await user.click(screen.getByRole('checkbox', { name: third as string }));
    await user.click(screen.getByRole('checkbox', { name: first as string }));
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(['smooth', 'pitted']);
  });

  it('shows the answer given before, and the way back', async () => {
    const { words } = await shown('element', { site: { element: ['wall'] }, zone: {} });
    const name = words.choices['wall' as never]['name'];
    expect(screen.getByRole('radio', { name })).toBeChecked();
    expect(screen.getByRole('link', { name: 'Back' })).toHaveAttribute('href', '/back/');
  });
});

describe('a question with a list', () => {
  it('tells what is there from what may be there', async () => {
    const { words, onanswer, user } = await shown('contamination');
    const nameOf = (choice: string) => words.choices[choice as never]['name'] as string;
    await user.click(screen.getByRole('checkbox', { name: nameOf('oil') }));
    await user.click(screen.getByRole('checkbox', { name: `Maybe: ${nameOf('growth')}` }));
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith({ yes: ['oil'], maybe: ['growth'] });
  });

  it('takes “None of these”, which unticks the rest', async () => {
    const { words, onanswer, user } = await shown('contamination');
    const oil = screen.getByRole('checkbox', { name: words.choices['oil' as never]['name'] });
    await user.click(oil);
    await user.click(screen.getByRole('checkbox', { name: 'None of these' }));
    expect(oil).not.toBeChecked();
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith({ yes: [], maybe: [] });
  });
});

describe('a question with a number', () => {
  it.each([
    ['nothing', '', /number/i],
    ['a negative', '-3', /less than zero/],
    ['text', 'deep', /deep/],
    // A spall 3 m deep.
    ['the absurd', '3000', /3000|most|deep|large/i],
  ])('says beside the field what is wrong with %s, and keeps it', async (_, text, message) => {
    const { onanswer, user } = await shown('depth');
    const field = screen.getByRole('textbox');
    await user.click(screen.getByRole('radio', { name: 'I measured it' }));
    if (text) await user.type(field, text);
    await user.click(press('Continue'));
    expect(field).toBeInvalid();
    expect(field).toHaveAccessibleDescription(message);
    expect(field).toHaveValue(text);
    expect(field).toHaveFocus();
    expect(onanswer).not.toHaveBeenCalled();
  });

  it('takes a decimal comma', async () => {
    const { onanswer, user } = await shown('depth');
    await user.type(screen.getByRole('textbox'), '6,4');
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(6.4);
  });
});

describe('what a data sheet asks for', () => {
  it.each(['makerProfile', 'makerMoisture'] as const)(
    '%s: no sheet is ticked beforehand, is the “not sure”, and takes one tap',
    async (question) => {
      const { words, onanswer, user } = await shown(question);
      expect(screen.getAllByRole('radio')).toHaveLength(choicesOf(question).length);
      const name = words.choices['no-sheet' as never]['name'] as string;
      expect(screen.getByRole('radio', { name })).toBeChecked();
      expect(screen.queryByRole('button', { name: 'Several possible' })).toBeNull();
      await user.click(press('Continue'));
      expect(onanswer).toHaveBeenCalledWith(['no-sheet']);
    },
  );

  it('takes a grade, and shows one that several were left open as no sheet', async () => {
    const { onanswer, user } = await shown('makerProfile', {
      site: {},
      zone: { makerProfile: choicesOf('makerProfile') as never },
    });
    expect(screen.getByRole('radio', { name: 'No sheet' })).toBeChecked();
    await user.click(screen.getByRole('radio', { name: 'CSP\u00a03' }));
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(['csp-3']);
  });
});

describe('an edge along which nothing stands', () => {
  it('is none with one tap, and shows as none again', async () => {
    const { onanswer, user } = await shown('borderLength');
    await user.click(screen.getByRole('radio', { name: 'None of it' }));
    expect(screen.getByRole('textbox')).toHaveValue('');
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(0);
    cleanup();
    await shown('borderLength', { site: {}, zone: { borderLength: 0 } });
    expect(screen.getByRole('radio', { name: 'None of it' })).toBeChecked();
  });
  it('takes a length, none typed too', async () => {
    const { onanswer, user } = await shown('borderLength');
    await user.type(screen.getByRole('textbox'), '0');
    await user.click(press('Continue'));
    expect(onanswer).toHaveBeenCalledWith(0);
  });
});

describe('a page that is answered before its code has arrived', () => {
  /** The form as it comes, with some of it ticked or typed already. */
  const came = (inside: string) => {
    document.body.innerHTML = `<form data-question="depth">${inside}</form>`;
    const draft = earlyDraft('depth');
    document.body.innerHTML = '';
    return draft;
  };

  it('keeps what was ticked or typed', () => {
    expect(came('<input type="radio" name="depth" value="film" checked>')).toMatchObject({
      way: 'choices',
      picked: ['film'],
    });
    expect(came('<input type="radio" name="depth" value="unsure" checked>')?.way).toBe('unsure');
    expect(came('<input inputmode="decimal" value="6,4">')).toMatchObject({
      way: 'number',
      typed: { text: '6,4', units: 'metric' },
    });
    expect(came('<input type="radio" name="depth" value="film">')).toBe(null);
    expect(came('<input type="radio" name="depth" value="zero" checked>')).toMatchObject({
      way: 'number',
      value: 0,
    });
  });
});
