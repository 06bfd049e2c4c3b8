// Over the tables: which system, which version, what is not saved, and saving it.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../client/core.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import type { DraftEdits } from './draft-store.ts';
import type { RulesRead } from './rules-shapes.ts';
import type { Checked } from './use-checked.ts';

export function RulesHead(props: {
  readonly edits: DraftEdits;
  readonly checked: Checked;
  /** Undefined for a system that is not in the book. */
  readonly read: RulesRead | undefined;
}): ReactNode {
  const { edits, checked, read } = props;
  const { draft } = edits;
  const save = useCommand('rules.save');
  const [said, setSaid] = useState('');
  const isReady = checked.isChanged && checked.problems.length === 0 && checked.changes !== undefined;
  const keep = async (): Promise<void> => {
    try {
      const { version } = await save.mutateAsync({
        system: draft.system,
        systemName: draft.systemName,
        rules: checked.rules,
        components: [...checked.components],
      });
      edits.drop();
      setSaid(`Saved: ${draft.system} stands at version ${version}.`);
    } catch {
      // The note under the head tells why; the draft stays.
      setSaid('');
    }
  };
  return (
    <>
      <header className="screen-head rules-head">
        <h1>
          Rules{' '}
          <span className="rules-system">
            {draft.system} {draft.systemName}
          </span>
        </h1>
        <p className="soft">{stateWords(checked, read, edits)}</p>
        <span className="rules-actions off-paper">
          <output className="soft">{checked.isChanged ? '' : said}</output>
          {edits.begun || read === undefined ? (
            <button type="button" className="quiet" onClick={edits.drop}>
              Give the draft up
            </button>
          ) : null}
          <button
            type="button"
            className="primary"
            disabled={!isReady || save.isPending}
            onClick={() => void keep()}
          >
            Save
          </button>
        </span>
      </header>
      {save.error === null ? null : <RefusalNote error={save.error} />}
      {read !== undefined && edits.begun && edits.fromVersion < read.version ? (
        <div className="note note-caution">
          <span className="note-word">Note</span>
          <span>
            This draft began at version {edits.fromVersion}; version {read.version} was saved since. Versions
            shows what differs.
          </span>
        </div>
      ) : null}
    </>
  );
}

function stateWords(checked: Checked, read: RulesRead | undefined, edits: DraftEdits): string {
  if (read === undefined) return 'New, not saved yet.';
  if (checked.isChanged || checked.problems.length > 0)
    return `A draft from version ${edits.fromVersion}, not saved yet.`;
  return `Version ${read.version}, in force.`;
}
