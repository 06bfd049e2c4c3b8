// What-ifs that were kept: looked at beside the plan, opened again to change them, or dropped, which undo takes back.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useCommand } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { type ChangeNames, changeWords } from '../../parts/changes/change-words.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';

export type Kept = Output<'whatif.list'>['kept'][number];

export function KeptList(props: {
  readonly job: string;
  readonly kept: readonly Kept[];
  readonly names: ChangeNames;
  readonly words: TimeWords;
  readonly readOnly: boolean;
  readonly onLook: (id: string) => void;
  readonly onOpen: (kept: Kept) => void;
  readonly onDropped: (id: string) => void;
}): ReactNode {
  const { job, kept, names, words } = props;
  const { mutateAsync: drop, isPending, error } = useCommand('whatif.drop');
  const { mutateAsync: keep } = useCommand('whatif.keep');
  const { remember } = useUndo();
  const dropOne = ({ id: first, name, changes }: Kept): void => {
    let id = first;
    void drop({ job, id })
      .then(() => {
        props.onDropped(first);
        return remember({
          words: `drop the what-if "${name}"`,
          undo: async () => {
            ({ id } = await keep({ job, name, changes }));
          },
          redo: () => drop({ job, id }),
        });
      })
      // It stays in `error` and is shown.
      .catch(() => undefined);
  };
  return (
    <section aria-label="Kept what-ifs" className="kept">
      <h2>Kept what-ifs</h2>
      {error === null ? null : <RefusalNote error={error} />}
      {kept.length === 0 ? (
        <p className="soft">None is kept. Keep changes under a name to hold them against the plan later.</p>
      ) : (
        <ul>
          {kept.map((each) => (
            <li key={each.id}>
              <b>{each.name}</b>{' '}
              <span className="soft">
                {changeWords(each.changes, names) === each.name
                  ? ''
                  : `${changeWords(each.changes, names)} · `}
                {each.who}, {words.full(each.madeAt)}
              </span>
              {each.whyNot === null ? null : (
                <span className="caution-word-ink"> Not possible any more: {each.whyNot}</span>
              )}
              <span className="kept-acts">
                <Button
                  className="quiet"
                  aria-label={`Look at ${each.name} beside the plan`}
                  isDisabled={each.whyNot !== null}
                  onPress={() => props.onLook(each.id)}
                >
                  Look
                </Button>
                <Button className="quiet" aria-label={`Open ${each.name}`} onPress={() => props.onOpen(each)}>
                  Open
                </Button>
                <Button
                  className="quiet"
                  aria-label={`Drop ${each.name}`}
                  isDisabled={props.readOnly || isPending}
                  onPress={() => dropOne(each)}
                >
                  Drop
                </Button>
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
