// What if: two plans of the job side by side, as it stands, with changes that are being tried, or with a kept what-if.
// Nothing is stored until one is accepted.
import { type ReactNode, useMemo } from 'react';
import { useCore, useHostState } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import type { Output } from '../../client/shapes.ts';
import { aboutWords } from '../../parts/changes/change-words.ts';
import type { Says } from '../../parts/changes/difference.ts';
import { useKnown } from '../../parts/changes/use-known.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { timeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { BoardTabs } from '../board/board-tabs.tsx';
import { Compared, type SideChoice } from './compared.tsx';
import { draftOf, draftText, sideInput } from './draft-address.ts';
import { DraftPane } from './draft-pane.tsx';
import { KeptList } from './kept-list.tsx';
import { useAccept } from './use-accept.ts';
import '../../style/board-head.css';
import '../../style/panes.css';
import './what-if.css';

export function WhatIfScreen(): ReactNode {
  const job = useJob();
  const board = useCore('board.read', { job: job.code, ...useLiveNow(job.code) });
  if (board.error !== null) return <RefusalNote error={board.error} />;
  if (board.data === undefined) return <Waiting what="Planning the job …" />;
  return <WhatIf board={board.data} />;
}

function WhatIf({ board }: { readonly board: Output<'board.read'> }): ReactNode {
  const { code: job, timeZone, currency } = board.job;
  const live = useLiveNow(job);
  const [query, change] = useAddressQuery();
  const readOnly = useHostState().data?.book?.readOnly === true;
  const known = useKnown(board, live.now);
  const { money } = useUnits();
  const words = timeWords(timeZone);
  const says = useMemo<Says>(
    () => ({ words, timeZone, money: (cents) => money(cents, currency) }),
    [words, timeZone, money, currency],
  );
  const text = query.get('draft');
  const draft = useMemo(() => draftOf(text), [text]);
  const kept = useCore('whatif.list', { job }).data?.kept ?? [];
  const choices: readonly SideChoice[] = [
    { id: 'now', name: 'As it stands' },
    ...(draft.length === 0 ? [] : [{ id: 'draft', name: 'With the changes to try' }]),
    ...kept.map(({ id, name }) => ({ id, name })),
  ];
  const chosen = (name: string, otherwise: string): SideChoice =>
    choices.find(({ id }) => id === query.get(name)) ??
    choices.find(({ id }) => id === otherwise) ?? { id: 'now', name: 'As it stands' };
  const one = chosen('one', 'now');
  const other = chosen('other', draft.length > 0 ? 'draft' : (kept[0]?.id ?? 'now'));
  const isSame = one.id === other.id;
  const compared = useCore(
    'whatif.compare',
    { job, one: sideInput(one.id, draft), other: sideInput(other.id, draft), ...live },
    { enabled: !isSame },
  );
  const { accept, busy, error } = useAccept(job);
  const onAccept = (side: SideChoice, changes: Output<'whatif.compare'>['one']['changes']): void => {
    const ofKept = kept.find(({ id }) => id === side.id) ?? null;
    const about = ofKept?.name ?? aboutWords(changes, known.names);
    void accept(changes, about, ofKept)
      .then(() =>
        change(side.id === 'draft' ? { draft: null, one: null, other: null } : { one: null, other: null }),
      )
      // A refusal stays in `error` and is shown.
      .catch(() => undefined);
  };
  return (
    <div className="screen what-if">
      <header className="screen-head">
        <h1>What if</h1>
        <BoardTabs />
      </header>
      <div className="screen-body">
        <div className="pane grow">
          <div className="side-choices">
            <SideSelect label="Left" side={one} choices={choices} onChange={(id) => change({ one: id })} />
            <SideSelect
              label="Right"
              side={other}
              choices={choices}
              onChange={(id) => change({ other: id })}
            />
          </div>
          {error === null ? null : <RefusalNote error={error} />}
          {isSame ? (
            <p className="soft what-if-empty">
              {choices.length === 1
                ? 'Type a change at the right, such as 14 +1d: the plan with it then stands here beside the plan as it is.'
                : 'Both sides show the same plan. Choose another one at the left or at the right.'}
            </p>
          ) : compared.error !== null ? (
            <RefusalNote error={compared.error} />
          ) : compared.data === undefined ? (
            <Waiting what="Planning both …" />
          ) : (
            <div aria-busy={compared.isPlaceholderData}>
              {compared.isPlaceholderData ? <output className="soft">Planning both …</output> : null}
              <Compared
                comparison={compared.data}
                says={says}
                one={one}
                other={other}
                busy={busy || compared.isPlaceholderData}
                onAccept={readOnly ? null : onAccept}
              />
            </div>
          )}
        </div>
        <aside className="pane side" aria-label="Changes">
          <DraftPane
            job={job}
            known={known}
            draft={draft}
            readOnly={readOnly}
            onDraft={(changes) =>
              change({ draft: draftText(changes), other: changes.length === 0 ? null : 'draft' })
            }
            onKept={(id) => change({ draft: null, other: id })}
          />
          <KeptList
            job={job}
            kept={kept}
            names={known.names}
            words={words}
            readOnly={readOnly}
            onLook={(id) => change({ one: 'now', other: id })}
            onOpen={({ changes }) => change({ draft: draftText(changes), one: 'now', other: 'draft' })}
            onDropped={(id) => {
              if (id === query.get('other')) change({ other: null });
              if (id === query.get('one')) change({ one: null });
            }}
          />
        </aside>
      </div>
      <CautionLine />
    </div>
  );
}

function SideSelect(props: {
  readonly label: string;
  readonly side: SideChoice;
  readonly choices: readonly SideChoice[];
  readonly onChange: (id: string) => void;
}): ReactNode {
  return (
    <label>
      <span>{props.label}</span>
      <select value={props.side.id} onChange={(event) => props.onChange(event.target.value)}>
        {props.choices.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
