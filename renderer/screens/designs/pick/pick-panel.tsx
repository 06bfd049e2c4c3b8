// The day before the pick: what is entered at the left, and beside it what the crew will have in hand, line by line,
// as it changes with every entry. Kept only when somebody says so.
import { type ReactNode, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link, useParams } from 'wouter';
import { withPrinted } from '../../../../core/sheets/node.ts';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { wordsOf } from '../../../client/refused.ts';
import { useJob } from '../../../parts/job.tsx';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { sheetAddress } from '../../../parts/sheet-address.ts';
import { useUndo } from '../../../parts/undo.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { sheetElement } from '../../sheets/sheet-elements.ts';
import { CraneEntry } from './crane-entry.tsx';
import type { PickDraft } from './pick-draft.ts';
import { PickFields } from './pick-fields.tsx';
import { verdictWords } from './verdict-words.ts';
import '../../../../core/sheets/sheet.css';
import '../../../../core/sheets/lists.css';
import '../../../../core/sheets/drawing.css';
import './pick.css';

export function PickScreen(): ReactNode {
  const { code } = useParams<{ code: string }>();
  const design = decodeURIComponent(code);
  const kept = useCore('pick.read', { design });
  if (kept.error !== null) return <RefusalNote error={kept.error} />;
  if (kept.data === undefined || kept.isPlaceholderData)
    return <Waiting what={`Reading how ${design} is picked …`} />;
  return <PickPanel key={design} design={design} kept={kept.data} />;
}

function PickPanel(props: { readonly design: string; readonly kept: Output<'pick.read'> }): ReactNode {
  const { design, kept } = props;
  const { system } = useUnits();
  const [draft, setDraft] = useState<PickDraft>({ setup: kept.setup, wrong: {} });
  const [entering, setEntering] = useState(false);
  const cranes = useCore('crane.list', {});
  const check = useCore('pick.check', { design, setup: draft.setup });
  const { mutateAsync: save, isPending, error } = useCommand('pick.save');
  const { remember } = useUndo();
  const changed = !kept.isEntered || JSON.stringify(draft.setup) !== JSON.stringify(kept.setup);
  const isWrong = Object.keys(draft.wrong).length > 0;
  const keep = async (): Promise<void> => {
    const { setup } = draft;
    try {
      await save({ design, setup });
    } catch {
      // Said beside the button.
      return;
    }
    remember({
      words: `the pick of ${design}`,
      undo: () => save({ design, setup: kept.setup }),
      redo: () => save({ design, setup }),
    });
  };
  return (
    <div className="screen pick">
      <header className="screen-head pick-head">
        <h1>Pick of {design}</h1>
        <Verdict check={check.data} />
        <div className="pick-actions">
          <Button
            className="primary"
            isDisabled={isPending || isWrong || !changed}
            onPress={() => void keep()}
          >
            Keep
          </Button>
          <Link href={sheetAddress('pick', design)}>Pick sheet</Link>
          <Link href={`/designs/${encodeURIComponent(design)}`}>Design {design}</Link>
        </div>
        <output className="soft pick-said">
          {error !== null
            ? `${wordsOf(error).message} ${wordsOf(error).hint ?? ''}`
            : isWrong
              ? 'What cannot be read is not counted in.'
              : changed
                ? 'Not kept yet.'
                : 'Kept as it stands here.'}
        </output>
      </header>
      <div className="screen-body">
        <div className="pane pick-entries">
          <PickFields
            draft={draft}
            cranes={cranes.data?.cranes ?? []}
            system={system}
            onDraft={setDraft}
            onNewCrane={() => setEntering(true)}
          />
        </div>
        <div className="pane grow pick-paper">
          <Preview design={design} draft={draft} />
        </div>
      </div>
      <CautionLine about="Weights come from entered piece weights, the chart and the wind from entries: a competent person checks them before lifting. Nobody on or under a gang that hangs." />
      {entering ? (
        <CraneEntry
          crane={cranes.data?.cranes.find((one) => one.code === draft.setup.crane) ?? null}
          system={system}
          onDone={(crane) => {
            setEntering(false);
            if (crane !== null) setDraft({ ...draft, setup: { ...draft.setup, crane } });
          }}
        />
      ) : null}
    </div>
  );
}

function Verdict(props: { readonly check: Output<'pick.check'> | undefined }): ReactNode {
  if (props.check === undefined) return <p className="pick-verdict soft">Adding up …</p>;
  const { word, rest } = verdictWords(props.check);
  return (
    <output className={`pick-verdict pick-${props.check.verdict}`}>
      <strong>{word}</strong> {rest}
    </output>
  );
}

/** The pick sheet as it would print now. */
function Preview(props: { readonly design: string; readonly draft: PickDraft }): ReactNode {
  const job = useJob();
  const { system } = useUnits();
  const { design, draft } = props;
  const sheet = useCore('sheet.pick', { design, job: job.code, units: system, setup: draft.setup });
  const tree = useMemo(
    () =>
      sheet.data === undefined ? null : sheetElement(withPrinted(sheet.data.tree, 'when it is printed')),
    [sheet.data],
  );
  if (sheet.error !== null) return <RefusalNote error={sheet.error} />;
  if (tree === null) return <Waiting what="Laying out the sheet …" />;
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section aria-label="The pick sheet as it stands" tabIndex={0} className="pick-sheet">
      {tree}
    </section>
  );
}
