// The list of a day and its end: everything ticked by one key, what did not happen unticked with a reason, saved.
import { type FormEvent, type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { useCommand } from '../../client/core.tsx';
import { Refused } from '../../client/refused.ts';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';
import { useWindowKeys } from '../../parts/window-keys.ts';
import {
  beginDraft,
  type DayDraft,
  type DayRead,
  faultOfField,
  keepDraft,
  keptDraft,
  saidOf,
  stepOf,
  tickAll,
  withDone,
  withReason,
  withStep,
} from './day-draft.ts';
import { MovesPart } from './moves-part.tsx';
import { StepRow } from './step-row.tsx';

export function DayForm(given: {
  readonly day: DayRead;
  readonly words: TimeWords;
  readonly currency: string;
}): ReactNode {
  const { day, words } = given;
  const job = useJob();
  const [draft, setDraft] = useState(() => keptDraft(job.code, day.date) ?? beginDraft(day, words.time));
  const [tried, setTried] = useState(false);
  const { save, back, lastReport } = useDayEnd(day);
  const change = (next: DayDraft): void => {
    keepDraft(job.code, day.date, next);
    setDraft(next);
    if (save.isError) save.reset();
  };
  const said = saidOf(draft, day);
  const refused =
    save.error instanceof Refused ? faultOfField(save.error.field, save.error.message, day) : null;
  const faults = [
    ...(tried ? said.faults : said.faults.filter(({ field }) => field !== 'reason')),
    ...(refused === null ? [] : [refused]),
  ];
  const all = (): void => change(tickAll(draft, day.lines));
  const submit = async (event?: FormEvent): Promise<void> => {
    event?.preventDefault();
    setTried(true);
    if (said.faults.length > 0 || save.isPending) return;
    if (await lastReport(said.steps, draft.remark)) {
      keepDraft(job.code, day.date, null);
      setTried(false);
    }
  };
  useWindowKeys((event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
    if (event.key.toLowerCase() === 'a') all();
    else if (event.key === 'Enter' && !isPressed(event.target)) void submit();
  });
  return (
    <form className="day-form" onSubmit={(event) => void submit(event)}>
      <div className="day-tools off-paper">
        <Button onPress={all}>
          All of it happened <kbd>A</kbd>
        </Button>
        <span className="soft">
          <kbd>Space</kbd> ticks and unticks, <kbd>1</kbd>–<kbd>{day.reasons.length}</kbd> say why not,{' '}
          <kbd>↑</kbd> <kbd>↓</kbd> go on, <kbd>Enter</kbd> ends the day
        </span>
      </div>
      <table className="day-list">
        <caption className="visually-hidden">Steps of {dateWords(day.date)}</caption>
        <thead>
          <tr>
            <th scope="col">Done</th>
            <th scope="col">What</th>
            <th scope="col">Planned</th>
            <th scope="col">Gangs</th>
            <th scope="col">What waits for it</th>
            <th scope="col">Times, where written down; or why not</th>
          </tr>
        </thead>
        <tbody>
          {day.lines.map((line) => (
            <StepRow
              key={line.id}
              line={line}
              step={stepOf(draft, line.id)}
              reasons={day.reasons}
              faults={faults.filter(({ id }) => id === line.id)}
              words={words}
              onDone={(done) => change(withDone(draft, line.id, done))}
              onReason={(reason) => change(withReason(draft, line.id, reason))}
              onTyped={(typed) => change(withStep(draft, line.id, typed))}
            />
          ))}
        </tbody>
      </table>
      <div className="day-foot off-paper">
        <label className="day-remark">
          Remark
          <input
            value={draft.remark}
            maxLength={500}
            onChange={(event) => change({ ...draft, remark: event.target.value })}
          />
        </label>
        <Button type="submit" className="primary" isDisabled={save.isPending}>
          {day.report === null ? `End ${dateWords(day.date)}` : `Correct ${dateWords(day.date)}`}
        </Button>
        {day.report?.canBeTakenBack === true ? (
          <Button onPress={() => back(day.report?.id ?? '')}>Take its end back</Button>
        ) : null}
      </div>
      {save.error === null || refused !== null ? null : <RefusalNote error={save.error} />}
      <MovesPart date={day.date} said={said} currency={given.currency} words={words} />
    </form>
  );
}

type Steps = ReturnType<typeof saidOf>['steps'];

/** Saves an end of the day, and remembers how it is taken back. */
function useDayEnd(day: DayRead) {
  const job = useJob().code;
  const save = useCommand('dayend.save');
  const takeBack = useCommand('dayend.takeback');
  const { remember } = useUndo();
  const back = (report: string): void => takeBack.mutate({ job, report });
  const lastReport = async (steps: Steps, remark: string): Promise<boolean> => {
    const whole = { job, date: day.date, steps, remark: remark.trim() === '' ? null : remark };
    let report = '';
    try {
      report = (await save.mutateAsync(whole)).report;
    } catch {
      // Said beside the step, or under the list.
      return false;
    }
    remember({
      words: `the end of ${dateWords(day.date)}`,
      undo: () => takeBack.mutateAsync({ job, report }),
      redo: async () => {
        report = (await save.mutateAsync(whole)).report;
      },
    });
    return true;
  };
  return { save, back, lastReport };
}

function isTyping(target: EventTarget | null): boolean {
  return (
    (target instanceof HTMLInputElement && target.type !== 'checkbox') ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement
  );
}

/** What Enter already does something with. */
function isPressed(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button, a, input, [role="dialog"]') !== null;
}
