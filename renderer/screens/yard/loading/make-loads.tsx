// What is to go, and on which trucks: beside it the loads that come of it, redrawn with every change, each kept when
// somebody says so.
import { type ReactNode, useMemo } from 'react';
import { type Input, useCore } from '../../../client/core.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { useKeptTyping } from '../counts/kept-typing.ts';
import { SelectField } from '../gangs/form-parts.tsx';
import { emptyMake, type MakeDraft, readLines, type Tags } from './make-draft.ts';
import { MadeLoads } from './made-loads.tsx';
import { SendLines } from './send-lines.tsx';

const begin = emptyMake();

export function MakeLoads(): ReactNode {
  const [draft, change] = useKeptTyping<MakeDraft>('make loads', begin);
  const set = (part: Partial<MakeDraft>): void => change((old) => ({ ...old, ...part }));
  const trucks = useCore('truck.list', {});
  const notes = useCore('note.list', {});
  const tags = useTags();
  const all = trucks.data?.trucks ?? [];
  // One truck needs no choosing.
  const chosen = draft.trucks.length === 0 ? all.map(({ code }) => code) : draft.trucks;
  const read = useMemo(() => readLines(draft.lines, tags), [draft.lines, tags]);
  const input: Input<'load.propose'> | null =
    chosen.length === 0 || (draft.note === '' && read.lines.length === 0)
      ? null
      : { trucks: [...chosen], ...(draft.note === '' ? { lines: read.lines } : { note: draft.note }) };
  const proposal = useCore('load.propose', input ?? { trucks: ['-'], lines: [] }, {
    enabled: input !== null,
  });
  return (
    <>
      <div className="pane side make-side">
        <h2>What is to go</h2>
        <SelectField
          label="By a note"
          value={draft.note}
          none="no note: the lines below"
          options={(notes.data?.notes ?? [])
            .filter(({ state }) => state === 'draft')
            .map(
              (note) => [note.id, `${note.kind.replace('-', ' ')} ${note.number}, to ${note.to}`] as const,
            )}
          onChange={(note) => set({ note })}
        />
        {draft.note === '' ? (
          <SendLines
            lines={draft.lines}
            wrong={read.wrong}
            gangs={[...tags.gangs]}
            containers={[...tags.containers]}
            onLines={(lines) => set({ lines })}
          />
        ) : null}
        <Trucks all={all} chosen={chosen} onChosen={(next) => set({ trucks: next })} />
      </div>
      <div className="pane grow load-page" aria-live="polite">
        {input === null ? (
          <p className="soft">
            {all.length === 0
              ? 'Enter a truck first: its payload, its deck, and how high it may be stacked.'
              : 'Choose a note, or enter what is to go: the loads are drawn here.'}
          </p>
        ) : null}
        {input !== null && proposal.error !== null ? <RefusalNote error={proposal.error} /> : null}
        {input === null || proposal.data === undefined ? null : (
          <MadeLoads
            key={JSON.stringify(input)}
            proposal={proposal.data}
            note={draft.note === '' ? null : draft.note}
          />
        )}
      </div>
    </>
  );
}

function useTags(): Tags {
  const components = useCore('component.list', {});
  const containers = useCore('container.list', {});
  const gangs = useCore('gang.list', {});
  return useMemo(
    () => ({
      components: new Set((components.data?.components ?? []).map(({ code }) => code)),
      containers: new Set((containers.data?.containers ?? []).map(({ container }) => container)),
      gangs: new Set(
        (gangs.data?.gangs ?? []).filter(({ state }) => state !== 'broken-down').map(({ gang }) => gang),
      ),
    }),
    [components.data, containers.data, gangs.data],
  );
}

function Trucks(props: {
  readonly all: readonly { readonly code: string; readonly name: string; readonly payloadGrams: number }[];
  readonly chosen: readonly string[];
  readonly onChosen: (codes: readonly string[]) => void;
}): ReactNode {
  const { all, chosen, onChosen } = props;
  const units = useUnits();
  return (
    <fieldset className="make-trucks">
      <legend>On these trucks, each as often as it takes</legend>
      {all.length === 0 ? <p className="soft">No truck is entered yet.</p> : null}
      {all.map(({ code, name, payloadGrams }) => (
        <label key={code} className="tick">
          <input
            type="checkbox"
            checked={chosen.includes(code)}
            onChange={(event) =>
              onChosen(event.target.checked ? [...chosen, code] : chosen.filter((each) => each !== code))
            }
          />
          <span>
            <b>{code}</b> {name}, {units.weight(payloadGrams)}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
