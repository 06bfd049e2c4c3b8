// Gives a piece that the ledger has at a place a tag, so that it can hold pieces.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
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

const fields = ['container', 'component', 'owner', 'place', 'at'] as const;

export function TagForm(given: {
  readonly nextTags: Readonly<Record<string, string>>;
  readonly onDone: (tag: string) => void;
}): ReactNode {
  const components = useCore('component.list', {});
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const make = useCommand('container.make');
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const ours = places.data?.owners.find((owner) => owner.kind === 'ours')?.code ?? '';
  const { draft, set, clear } = useKept('tag', { component: '', tag: '', owner: '', place: '', at: '' });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const tag = draft.tag.trim() === '' ? (given.nextTags[draft.component] ?? '') : draft.tag.trim();
  const error = (field: string) => errorFor(wrong, make.error, field);
  const edit = (part: Parameters<typeof set>[0]): void => {
    make.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || make.isPending) return;
    const when = readMoment(draft.at, clock);
    const missing = {
      ...(draft.component === '' ? { component: { message: 'Which piece it is is missing.' } } : {}),
      ...(when.ok ? {} : { at: when.error }),
    };
    setWrong(missing);
    if (!when.ok || draft.component === '') return;
    make.mutate(
      {
        container: tag,
        component: draft.component,
        owner: draft.owner === '' ? ours : draft.owner,
        place: draft.place === '' ? yard : draft.place,
        at: when.value,
      },
      {
        onSuccess: (made) => {
          clear();
          given.onDone(made.container);
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
      <p className="soft">
        The piece itself stays counted and, where it is a supplier&rsquo;s, on hire; what is put in it is
        booked to its tag.
      </p>
      <div className="slip-fields">
        <SelectField
          label="Which piece"
          value={draft.component}
          none="choose …"
          options={(components.data?.components ?? [])
            .toSorted((one, other) => Number(other.kind === 'other') - Number(one.kind === 'other'))
            .map((each) => [each.code, `${each.code} · ${each.name}`] as const)}
          error={error('component')}
          onChange={(component) => edit({ component })}
        />
        <TextField
          label="Tag"
          value={draft.tag}
          placeholder={given.nextTags[draft.component] ?? ''}
          maxLength={40}
          error={error('container')}
          onChange={(text) => edit({ tag: text })}
        />
        <SelectField
          label="Whose"
          value={draft.owner === '' ? ours : draft.owner}
          options={(places.data?.owners ?? []).map(
            (each) => [each.code, `${each.code} · ${each.name}`] as const,
          )}
          error={error('owner')}
          onChange={(owner) => edit({ owner })}
        />
        <PlaceSelect
          label="Place"
          value={draft.place === '' ? yard : draft.place}
          kinds={looseKinds}
          error={error('place')}
          onChange={(place) => edit({ place })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
      </div>
      <FormEnd
        words={tag === '' ? 'Give it a tag' : `Tag it ${tag}`}
        busy={make.isPending}
        done={null}
        refused={make.error}
        fields={fields}
      />
    </form>
  );
}
