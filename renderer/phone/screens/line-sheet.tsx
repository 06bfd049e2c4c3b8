// Counting one line: the condition, then more, less, as expected, or a number. Each tap is on the phone before its
// figure is shown.
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type Condition, conditions } from '../../../core/yard/movement.ts';
import { total } from '../../../core/yard/ticket-counts.ts';
import { conditionWords } from '../../screens/yard/yard-words.ts';
import type { CountLine } from '../counting/figures.ts';
import { findLine, lineKey, shownGroups } from '../counting/shown.ts';
import {
  addTo,
  asExpected,
  forget,
  isOnlyExtra,
  noneThere,
  overAsExtra,
  setTo,
  standsAt,
} from '../counting/taps.ts';
import { changeDraft } from '../kept/entries.ts';
import type { EntryLine, KeptPaper } from '../kept/kept.ts';
import { keptNow } from '../kept/state.ts';
import { standsWords } from './line-words.ts';
import { NumberPad } from './number-pad.tsx';
import { Refusal } from './refusal.tsx';

/** Taps go one after another, each on what the one before has left. */
let tapping: Promise<void> = Promise.resolve();
/** The condition that was tapped last: pieces of one strip are mostly alike. */
let lastCondition: Condition = 'ready';

type Tap = (line: CountLine) => (lines: readonly EntryLine[]) => readonly EntryLine[];

export function LineSheet(props: {
  readonly paper: KeptPaper;
  readonly line: CountLine;
  readonly next: string | null;
  readonly onLine: (key: string) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { paper, line, next, onLine, onClose } = props;
  const [condition, setCondition] = useState<Condition>(() => bestCondition(line));
  const [pad, setPad] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);

  const change = async (by: Tap): Promise<void> => {
    const now = keptNow();
    const kept = now.papers.find(({ key }) => key === paper.key) ?? paper;
    const fresh = findLine(shownGroups(now, kept), lineKey(line)) ?? line;
    await changeDraft(paper, by(fresh));
    setFailed(null);
  };
  const tap = (by: Tap): void => {
    tapping = tapping.then(() => change(by)).catch((error: unknown) => setFailed(String(error)));
  };
  const choose = (chosen: Condition): void => {
    lastCondition = chosen;
    setCondition(chosen);
  };
  const missing = (line.expected ?? 0) - total(line.counted);
  const stands = standsAt(line, condition);

  return (
    <dialog ref={dialog} className="line-sheet" aria-labelledby="line-title" onClose={onClose}>
      <h2 id="line-title" className="sheet-title">
        {line.component} <span className="line-name">{line.name}</span>
      </h2>
      <output className="sheet-stands">{standsWords(line)}</output>
      {line.lookAlike === null ? null : (
        <p className="look-alike">
          <strong>Measure it.</strong> It is taken for {line.lookAlike}.
        </p>
      )}
      {failed === null ? null : (
        <Refusal refusal={{ code: 'not-kept', message: 'Not kept on this phone.', hint: failed }} isNew />
      )}
      <fieldset className="conditions">
        <legend className="visually-hidden">Condition</legend>
        {conditions.map((each) => (
          <button key={each} type="button" aria-pressed={each === condition} onClick={() => choose(each)}>
            {conditionWords[each]}
            <span className="condition-figure">{standsAt(line, each)}</span>
          </button>
        ))}
      </fieldset>
      {pad ? (
        <NumberPad
          bundleSize={line.bundleSize}
          onSet={(number) => {
            tap((fresh) => setTo(paper, fresh, condition, number));
            setPad(false);
          }}
          onAdd={(number) => {
            tap((fresh) => addTo(paper, fresh, condition, number));
            setPad(false);
          }}
          onClose={() => setPad(false)}
        />
      ) : (
        <>
          <div className="count-row">
            <button
              type="button"
              className="count-button"
              aria-label="One less"
              disabled={stands <= 0}
              onClick={() => tap((fresh) => addTo(paper, fresh, condition, -1))}
            >
              −
            </button>
            <output className="count-figure" aria-label={`Counted ${conditionWords[condition]}`}>
              {stands}
            </output>
            <button
              type="button"
              className="count-button"
              aria-label="One more"
              onClick={() => tap((fresh) => addTo(paper, fresh, condition, 1))}
            >
              +
            </button>
          </div>
          <div className="sheet-actions">
            {paper.kind === 'ticket' && missing > 0 ? (
              <button
                type="button"
                className="primary"
                onClick={() => tap((fresh) => asExpected(fresh, condition))}
              >
                = {line.isLate ? 'all' : 'expected'}: {missing} {total(line.counted) === 0 ? '' : 'more '}
                {conditionWords[condition]}
              </button>
            ) : null}
            {paper.kind === 'ticket' && missing < 0 ? (
              <button type="button" className="primary" onClick={() => tap(overAsExtra)}>
                {-missing} really more: enter as extra
              </button>
            ) : null}
            <button type="button" onClick={() => setPad(true)}>
              Number …
            </button>
            {line.isCounted || isOnlyExtra(line) ? null : (
              <button type="button" onClick={() => tap((fresh) => noneThere(paper, fresh))}>
                None there
              </button>
            )}
            {line.isUnsent ? (
              <button type="button" onClick={() => tap(forget)}>
                Take back what is not sent
              </button>
            ) : null}
          </div>
        </>
      )}
      <div className="sheet-foot">
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
        {next === null ? null : (
          <button type="button" className="primary" onClick={() => onLine(next)}>
            Next line
          </button>
        )}
      </div>
    </dialog>
  );
}

/** The one that has any, if only one has; else that of the line before. */
function bestCondition(line: CountLine): Condition {
  const some = conditions.filter((condition) => standsAt(line, condition) > 0);
  return some.length === 1 && some[0] !== undefined ? some[0] : lastCondition;
}
