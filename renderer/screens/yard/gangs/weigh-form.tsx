// Counting by weight: gross as the scale shows it, its step, and what a piece weighs; the count stands under it with
// the fewest and the most that the weight leaves possible. Nothing is booked by it but the weight, where that is asked.
import { type ReactNode, useState } from 'react';
import { type Input, useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { parseWeight } from '../../../../core/units/weight.ts';
import { useUnits } from '../../../parts/units.tsx';
import { errorFor, readMoment, SelectField, TextField } from './form-parts.tsx';
import type { ContainerRow } from './gang-words.ts';
import { useKept } from './use-kept.ts';
import { countedWords } from './weigh-words.ts';

type Weighing = Input<'container.count'>;
const weights = ['grossGrams', 'tareGrams', 'scaleStepGrams', 'pieceGrams', 'pieceToleranceGrams'] as const;

const fields: readonly string[] = [...weights, 'component'];

export function WeighForm({ row }: { readonly row: ContainerRow }): ReactNode {
  const units = useUnits();
  const components = useCore('component.list', {});
  const [asked, setAsked] = useState<Weighing | null>(null);
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const { draft, set } = useKept(`weigh ${row.container}`, {
    component: row.content[0]?.component ?? '',
    grossGrams: '',
    tareGrams: '',
    scaleStepGrams: '',
    pieceGrams: '',
    pieceToleranceGrams: '',
  });
  const counted = useCore('container.count', asked ?? emptyWeighing(row), { enabled: asked !== null });
  const refused = asked === null ? null : counted.error;
  const error = (field: string) => errorFor(wrong, refused, field);
  const piece = components.data?.components.find((each) => each.code === draft.component);
  const edit = (part: Parameters<typeof set>[0]): void => {
    setAsked(null);
    setWrong({});
    set(part);
  };
  const count = (): void => {
    const read = readWeights(draft);
    setWrong({
      ...read.wrong,
      ...(draft.component === '' ? { component: { message: 'Which pieces is missing.' } } : {}),
    });
    if (Object.keys(read.wrong).length > 0 || draft.component === '') return;
    setAsked({ container: row.container, component: draft.component, grossGrams: 0, ...read.grams });
  };
  const isAtField = refused?.field !== undefined && fields.includes(refused.field);
  const field = (name: (typeof weights)[number], label: string, placeholder: string): ReactNode => (
    <TextField
      label={label}
      value={draft[name]}
      placeholder={placeholder}
      error={error(name)}
      onChange={(text) => edit({ [name]: text })}
    />
  );
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        count();
      }}
    >
      <h3>Count by weight</h3>
      <div className="slip-fields">
        <SelectField
          label="Pieces of"
          value={draft.component}
          none="choose …"
          options={(components.data?.components ?? []).map(
            (each) => [each.code, `${each.code} · ${each.name}`] as const,
          )}
          error={error('component')}
          onChange={(component) => edit({ component })}
        />
        {field('grossGrams', 'Weighs, with the container', 'as 230 lb or 104 kg')}
        {field('tareGrams', 'Container empty', units.weight(row.tareGrams))}
        {field('pieceGrams', 'One piece', piece === undefined ? '' : units.weight(piece.weightGrams))}
        {field('scaleStepGrams', 'Step of the scale', 'as 1 lb')}
        {field('pieceToleranceGrams', 'A piece may be off by', 'as 0.1 lb')}
      </div>
      {refused === null || isAtField ? null : <RefusalNote error={refused} />}
      <div className="slip-end">
        <button type="submit" className="primary">
          Count
        </button>
        <output>
          {asked === null || counted.data === undefined || refused !== null ? (
            isAtField ? (
              'Not counted: see the fields above.'
            ) : (
              ''
            )
          ) : (
            <>
              <b>{countedWords(counted.data)}</b>{' '}
              <span className="soft">
                {counted.data.booked} booked.
                {counted.data.others.length === 0
                  ? ''
                  : ` Booked to it too: ${counted.data.others.join(', ')}; weigh them apart.`}
              </span>
            </>
          )}
        </output>
      </div>
      {asked !== null && refused === null && counted.data !== undefined ? (
        <KeepWeight row={row} grossGrams={asked.grossGrams} />
      ) : null}
    </form>
  );
}

/** The weight is kept with the container; the count goes into a count of the place. */
function KeepWeight({
  row,
  grossGrams,
}: {
  readonly row: ContainerRow;
  readonly grossGrams: number;
}): ReactNode {
  const units = useUnits();
  const clock = useJobClock();
  const step = useCommand('container.step');
  const [at, setAt] = useState('');
  const when = clock === null ? null : readMoment(at, clock);
  const isBad = when !== null && !when.ok;
  return (
    <>
      <div className="slip-end">
        <TextField
          label="Weighed"
          value={at}
          placeholder="now, or as 10 Mar 16:00"
          error={errorFor(isBad ? { at: when.error } : {}, step.error, 'at')}
          onChange={setAt}
        />
        <button
          type="button"
          aria-disabled={step.isPending}
          onClick={() => {
            if (when?.ok === true && !step.isPending)
              step.mutate({ container: row.container, grossGrams, at: when.value });
          }}
        >
          Keep {units.weight(grossGrams)} with {row.container}
        </button>
        <output>{step.isSuccess ? 'Kept.' : ''}</output>
      </div>
      {step.error === null || step.error.field === 'at' ? null : <RefusalNote error={step.error} />}
    </>
  );
}

function emptyWeighing(row: ContainerRow): Weighing {
  return { container: row.container, component: row.component, grossGrams: 0 };
}

function readWeights(draft: Readonly<Record<(typeof weights)[number], string>>) {
  const grams: Partial<Record<(typeof weights)[number], number>> = {};
  const wrong: Record<string, { readonly message: string; readonly hint?: string | undefined }> = {};
  for (const name of weights) {
    const text = draft[name].trim();
    if (text === '') {
      if (name === 'grossGrams') wrong[name] = { message: 'What it weighs is missing.' };
      continue;
    }
    const read = parseWeight(text);
    if (read.ok) grams[name] = read.value;
    else wrong[name] = read.error;
  }
  return { grams, wrong };
}
