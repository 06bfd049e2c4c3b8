// One step of the day: ticked or with a reason, and times where somebody wrote them down.
import type { KeyboardEvent, ReactNode } from 'react';
import { stepWords } from '../../../core/sheets/step-words.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import type { DayRead, DraftFault, Line, Reason, StepDraft } from './day-draft.ts';
import { feedWords, gateWords } from './line-words.ts';

export interface StepRowProps {
  readonly line: Line;
  readonly step: StepDraft;
  readonly reasons: DayRead['reasons'];
  readonly faults: readonly DraftFault[];
  readonly words: TimeWords;
  readonly onDone: (done: boolean) => void;
  readonly onReason: (reason: Reason | null) => void;
  readonly onTyped: (change: Partial<StepDraft>) => void;
}

export function StepRow(props: StepRowProps): ReactNode {
  const { line, step, words } = props;
  const what = stepWords(line);
  return (
    <tr className={step.done ? 'is-done' : 'is-missed'} onKeyDown={(event) => rowKey(event, props)}>
      <td className="day-tick">
        <input
          type="checkbox"
          aria-label={`${what} happened`}
          checked={step.done}
          onChange={(event) => props.onDone(event.target.checked)}
        />
      </td>
      <th scope="row" className="day-what">
        {what}
        {line.leftFrom === null ? null : (
          <span className="day-left">left over from {dateWords(line.leftFrom)}</span>
        )}
        {line.openGates.map((gate) => (
          <span key={gate.name} className="caution-word-ink day-gate">
            {gateWords(gate)}
          </span>
        ))}
      </th>
      <td className="day-planned">
        {line.from === line.to ? words.time(line.to) : `${words.time(line.from)}–${words.time(line.to)}`}
      </td>
      <td className="day-gangs">{line.gangs.join(', ')}</td>
      <td className="day-feeds">{line.feeds.map((feed) => feedWords(feed, words)).join('; ')}</td>
      <td>{step.done ? <Times {...props} what={what} /> : <ReasonChoice {...props} what={what} />}</td>
    </tr>
  );
}

function ReasonChoice(props: StepRowProps & { readonly what: string }): ReactNode {
  const { line, step, reasons, faults, what } = props;
  const fault = faults.find(({ field }) => field === 'reason' || field === 'done');
  return (
    <span className="day-reason">
      <select
        aria-label={`Why not: ${what}`}
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : `${line.id}-reason`}
        value={step.reason ?? ''}
        onChange={(event) =>
          props.onReason(reasons.find(({ reason }) => reason === event.target.value)?.reason ?? null)
        }
      >
        <option value="">not ticked: why?</option>
        {reasons.map(({ reason, words }, index) => (
          <option key={reason} value={reason}>
            {index + 1} {words}
          </option>
        ))}
      </select>
      <Fault id={`${line.id}-reason`} fault={fault} />
    </span>
  );
}

function Times(props: StepRowProps & { readonly what: string }): ReactNode {
  const { line } = props;
  return (
    <span className="day-times">
      {line.kind === 'pour' ? null : <Typed {...props} field="from" label="began" />}
      <Typed {...props} field="to" label={line.kind === 'pour' ? 'finished' : 'ended'} />
      {line.kind === 'pour' ? null : <Typed {...props} field="people" label="people" />}
    </span>
  );
}

function Typed(
  props: StepRowProps & {
    readonly what: string;
    readonly field: 'from' | 'to' | 'people';
    readonly label: string;
  },
): ReactNode {
  const { line, step, field, label, what } = props;
  const fault = props.faults.find((each) => each.field === field);
  const id = `${line.id}-${field}`;
  return (
    <span className="day-typed">
      <label>
        {label}
        <input
          value={step[field]}
          placeholder={field === 'people' ? '' : props.words.time(line[field])}
          aria-label={`${label}: ${what}`}
          aria-invalid={fault !== undefined}
          aria-describedby={fault === undefined ? undefined : id}
          onChange={(event) => props.onTyped({ [field]: event.target.value })}
        />
      </label>
      <Fault id={id} fault={fault} />
    </span>
  );
}

function Fault(props: { readonly id: string; readonly fault: DraftFault | undefined }): ReactNode {
  if (props.fault === undefined) return null;
  return (
    <span id={props.id} className="field-error" role="alert">
      {props.fault.message}
    </span>
  );
}

/** A digit is a reason; up and down go from tick to tick. In a field they are what they are. */
function rowKey(event: KeyboardEvent<HTMLTableRowElement>, props: StepRowProps): void {
  const { target, key, currentTarget } = event;
  if (!(target instanceof HTMLInputElement) || target.type !== 'checkbox') return;
  const reason = /^[1-9]$/u.test(key) ? props.reasons[Number(key) - 1] : undefined;
  if (reason !== undefined) {
    props.onReason(reason.reason);
    event.preventDefault();
  }
  if (key !== 'ArrowDown' && key !== 'ArrowUp') return;
  const row = key === 'ArrowDown' ? currentTarget.nextElementSibling : currentTarget.previousElementSibling;
  row?.querySelector<HTMLInputElement>('input[type="checkbox"]')?.focus();
  event.preventDefault();
}
