// What a pick list is for: a gang's design, a pour with one side or both, or a note; and from where.
import type { ReactNode } from 'react';
import { pickId, type PickAsked, type PickFor as For } from '../../../../core/yard/pick-id.ts';
import { useCore } from '../../../client/core.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { SelectField } from '../gangs/form-parts.tsx';

const kinds = [
  ['design', 'a gang'],
  ['pour', 'a pour'],
  ['note', 'a note'],
] as const;
type Kind = (typeof kinds)[number][0];

const sides = [
  ['both', 'both sides'],
  ['A', 'side A'],
  ['B', 'side B'],
] as const;

export function PickFor(props: {
  readonly asked: PickAsked | null;
  readonly onAsked: (id: string | null) => void;
}): ReactNode {
  const { asked, onAsked } = props;
  const job = useJob();
  const [query, change] = useAddressQuery();
  const named = kinds.find(([each]) => each === query.get('of'))?.[0];
  const kind: Kind = asked?.picked.of ?? named ?? 'design';
  const picked = asked?.picked ?? null;
  const side = picked?.of === 'pour' ? (picked.side ?? 'both') : 'both';
  const ask = (next: For, from: string | null = asked?.from ?? null): void => onAsked(pickId(next, from));
  return (
    <div className="pick-for">
      <Choice
        label="Pick list for"
        value={kind}
        options={kinds}
        onChange={(next) => change({ of: next, for: null, given: null })}
      />
      {kind === 'design' ? (
        <Designs
          value={picked?.of === 'design' ? picked.design : ''}
          onValue={(design) => ask({ of: 'design', design })}
        />
      ) : null}
      {kind === 'note' ? (
        <Notes
          value={picked?.of === 'note' ? picked.note : ''}
          onValue={(note) => ask({ of: 'note', note }, null)}
        />
      ) : null}
      {kind === 'pour' ? (
        <>
          <Pours
            value={picked?.of === 'pour' ? picked.pour : ''}
            onValue={(pour) => ask({ of: 'pour', job: job.code, pour, side: side === 'both' ? null : side })}
          />
          {picked?.of === 'pour' ? (
            <Choice
              label="Which sides"
              value={side}
              options={sides}
              onChange={(next) => ask({ ...picked, side: next === 'both' ? null : next })}
            />
          ) : null}
        </>
      ) : null}
      {picked === null || picked.of === 'note' ? null : (
        <Places value={asked?.from ?? ''} onValue={(from) => ask(picked, from === '' ? null : from)} />
      )}
    </div>
  );
}

interface Chosen {
  readonly value: string;
  readonly onValue: (value: string) => void;
}

function Designs({ value, onValue }: Chosen): ReactNode {
  const list = useCore('design.list', {});
  const options = (list.data?.designs ?? []).map(({ code, name }) => [code, `${code} · ${name}`] as const);
  return <SelectField label="Design" value={value} none="choose …" options={options} onChange={onValue} />;
}

function Pours({ value, onValue }: Chosen): ReactNode {
  const list = useCore('pour.list', { job: useJob().code });
  const options = (list.data?.pours ?? []).map(
    ({ pour }) => [pour.code, `${pour.code} · ${pour.name}`] as const,
  );
  return <SelectField label="Pour" value={value} none="choose …" options={options} onChange={onValue} />;
}

/** Drafts alone: what is booked has been fetched. */
function Notes({ value, onValue }: Chosen): ReactNode {
  const list = useCore('note.list', {});
  const drafts = (list.data?.notes ?? []).filter(
    (note) => note.state === 'draft' && note.kind !== 'delivery' && note.kind !== 'hire-on',
  );
  const options = drafts.map(
    (note) => [note.id, `${note.kind.replace('-', ' ')} ${note.number}, to ${note.to}`] as const,
  );
  if (list.data !== undefined && options.length === 0)
    return <p className="soft pick-none">No draft of a note takes pieces away from here.</p>;
  return <SelectField label="Note" value={value} none="choose …" options={options} onChange={onValue} />;
}

function Places({ value, onValue }: Chosen): ReactNode {
  const places = useCore('yard.places', {});
  const loose = ['yard', 'site', 'rack', 'container'];
  const options = (places.data?.locations ?? [])
    .filter(({ kind }) => loose.includes(kind))
    .map(({ code, name }) => [code, `${code} · ${name}`] as const);
  return <SelectField label="From" value={value} none="every place" options={options} onChange={onValue} />;
}
