// Issues the loose pieces that a pour's plan asks for: locks between gangs, corners, braces, ties.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import {
  errorFor,
  FormEnd,
  looseKinds,
  PlaceSelect,
  readMoment,
  SelectField,
  TextField,
  whenHint,
} from './form-parts.tsx';
import { useKept } from './use-kept.ts';

const fields = ['pour', 'from', 'at'] as const;

export function IssueForm(): ReactNode {
  const job = useJob();
  const pours = useCore('pour.list', { job: job.code });
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const issue = useCommand('pour.issue');
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const { draft, set, clear } = useKept('issue', { pour: '', from: '', at: '' });
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const from = draft.from === '' ? yard : draft.from;
  const error = (field: string) => errorFor(wrong, issue.error, field);
  const chosen = pours.data?.pours.find((each) => each.pour.code === draft.pour);
  const edit = (part: Parameters<typeof set>[0]): void => {
    issue.reset();
    setWrong({});
    setDone(null);
    set(part);
  };
  const book = (): void => {
    if (clock === null || issue.isPending) return;
    const when = readMoment(draft.at, clock);
    setWrong({
      ...(draft.pour === '' ? { pour: { message: 'The pour is missing.' } } : {}),
      ...(when.ok ? {} : { at: when.error }),
    });
    if (!when.ok || draft.pour === '') return;
    issue.mutate(
      { job: job.code, pour: draft.pour, from, at: when.value },
      {
        onSuccess: ({ place, pieces }) => {
          clear();
          const list = Object.entries(pieces).map(([component, quantity]) => `${quantity} ${component}`);
          setDone(`Issued to ${place}: ${list.join(', ')}.`);
        },
      },
    );
  };
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        book();
      }}
    >
      <div className="slip-fields">
        <SelectField
          label="To the pour"
          value={draft.pour}
          none="choose …"
          options={(pours.data?.pours ?? []).map(
            (each) => [each.pour.code, `${each.pour.code} · ${each.pour.name}`] as const,
          )}
          error={error('pour')}
          onChange={(pour) => edit({ pour })}
        />
        <PlaceSelect
          label="From"
          value={from}
          kinds={looseKinds}
          error={error('from')}
          onChange={(code) => edit({ from: code })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
      </div>
      {chosen === undefined ? null : (
        <ul className="loose-lines">
          {chosen.loose.map((line) => (
            <li key={`${line.component} ${line.purpose}`}>
              {line.quantity} <b>{line.component}</b> <span className="soft">{line.purpose}</span>
            </li>
          ))}
        </ul>
      )}
      <p className="soft">What lies at the pour already is not issued again.</p>
      <FormEnd
        words="Issue loose pieces"
        busy={issue.isPending}
        done={done}
        refused={issue.error}
        fields={fields}
      />
    </form>
  );
}
