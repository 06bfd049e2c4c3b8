// Changes that are being tried: typed or by a small form, listed, taken out again, kept under a name or cleared. None of
// them is stored by it.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { ChangeField } from '../../parts/changes/change-field.tsx';
import type { Known, PlanChange } from '../../parts/changes/change-text.ts';
import { type ChangeNames, changeWords } from '../../parts/changes/change-words.ts';
import { KeepWhatif } from '../../parts/changes/keep-whatif.tsx';
import { capital } from '../../parts/changes/part.tsx';
import { AddChangeForm } from './add-change.tsx';

const examples = ['14 +1d', '14 drop', 'LK +40', 'D-101 +2d', 'set GA x2'] as const;

export function DraftPane(props: {
  readonly job: string;
  readonly known: Known & { readonly names: ChangeNames };
  readonly draft: readonly PlanChange[];
  readonly readOnly: boolean;
  readonly onDraft: (changes: readonly PlanChange[]) => void;
  readonly onKept: (id: string) => void;
}): ReactNode {
  const { known, draft, onDraft } = props;
  const add = (changes: readonly PlanChange[]): void => onDraft([...draft, ...changes]);
  return (
    <section aria-label="Changes to try" className="draft">
      <h2>Changes to try</h2>
      <ChangeField
        label="Change"
        known={known}
        onChanges={add}
        onAgain={() => undefined}
        proposed={false}
        clears
        examples={examples}
      />
      {draft.length === 0 ? (
        <p className="soft">
          Nothing is tried yet. Type a change above, or add one below; nothing is stored until it is accepted.
        </p>
      ) : (
        <>
          <ol className="draft-list">
            {draft.map((change, index) => {
              const words = changeWords([change], known.names);
              return (
                // Two of the same stand twice on purpose; a change has no name but its place.
                <li key={`${index}${words}`}>
                  {capital(words)}{' '}
                  <Button
                    className="quiet"
                    aria-label={`Take out: ${words}`}
                    onPress={() => onDraft(draft.filter((_, at) => at !== index))}
                  >
                    Take out
                  </Button>
                </li>
              );
            })}
          </ol>
          <div className="draft-acts">
            {props.readOnly ? null : (
              <KeepWhatif
                job={props.job}
                changes={draft}
                words={changeWords(draft, known.names)}
                onKept={props.onKept}
              />
            )}
            <Button className="quiet" onPress={() => onDraft([])}>
              Clear
            </Button>
          </div>
        </>
      )}
      <AddChangeForm known={known} onAdd={add} />
    </section>
  );
}
