// An open design: the row and the fields over it, the tray, the drawing, and beside it what the rules make of it.
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import type { PanelSystem } from '../../../../core/catalogue/system.ts';
import { go } from '../../../client/address.ts';
import { CautionLine, RefusalNote } from '../../../parts/notes.tsx';
import { useUndo } from '../../../parts/undo.tsx';
import { useWindowKeys } from '../../../parts/window-keys.ts';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { numbered } from '../finding-pins.ts';
import { FindingsList } from '../findings-list.tsx';
import { LikenessNote } from '../likeness-note.tsx';
import type { Lit } from '../lit.ts';
import { pressureWords } from '../pressure-words.ts';
import { sizeWords } from '../size-words.ts';
import { TakeoffTable } from '../takeoff-table.tsx';
import { DesignFields } from './design-fields.tsx';
import { type DesignStart, isChanged, readDraft } from './design-draft.ts';
import { EditorElevation } from './editor-elevation.tsx';
import type { EditorKey } from './editor-keys.ts';
import { nextPiece } from './draft-pieces.ts';
import { LeaveQuestion, useLeaving } from './leaving.tsx';
import { pressedKey } from './pressed-key.ts';
import { PieceTools } from './piece-tools.tsx';
import { RowField } from './row-field.tsx';
import { useEditor } from './use-editor.ts';
import { useSave } from './use-save.ts';
import { type TakenOff, useTakenOff } from './use-taken-off.ts';
import { useSizes } from './use-system.ts';

const unlit: Lit = { marks: null, lines: new Set(), finding: null };

export function EditorOf(props: {
  readonly start: DesignStart;
  readonly system: PanelSystem;
  readonly systems: readonly { readonly code: string; readonly name: string }[];
  /** Where it goes back to without a change. */
  readonly back: string;
  readonly onSystem: (code: string) => void;
}): ReactNode {
  const { start, system } = props;
  const units = useUnits();
  useUndoInChoices();
  const sizes = useSizes(system);
  const edits = useEditor(start.geometry, system, sizes);
  const { state, pieces } = edits;
  const { geometry, chosen } = state;
  const [texts, setTexts] = useState(start.texts);
  const editor = {
    ...edits,
    mirror: () => {
      edits.mirror();
      // Which hand the whole gang has then a person says anew: taking it back must not leave the wrong one.
      if (chosen.length === 0) setTexts((old) => ({ ...old, hand: '' }));
    },
  };
  const [litFinding, setLitFinding] = useState<number | null>(null);
  const asked = useTakenOff(texts.system, geometry, start.saved?.code ?? null);
  const { takenOff } = asked;
  const findings = useMemo(
    () =>
      numbered([
        ...(takenOff?.findings ?? []),
        ...(start.mirrorOf === undefined ? [] : (takenOff?.mirrorFindings ?? [])),
      ]),
    [takenOff, start.mirrorOf],
  );
  const { busy, problems, refuse, save } = useSave();
  const leaving = useLeaving(isChanged(start, texts, geometry));
  const leave = useCallback(() => go(props.back), [props.back]);

  const keep = async (): Promise<void> => {
    const read = readDraft(texts, geometry, takenOff?.symmetrical ?? true);
    if ('problems' in read) {
      refuse(read.problems);
      return;
    }
    if (!(await save(start.saved, read.design))) return;
    leaving.letGo();
    go(`/designs/${encodeURIComponent(read.design.code)}`);
  };
  const onKey = (key: EditorKey): void => {
    if (key.does === 'step') {
      const next = nextPiece(pieces, chosen, key.by);
      if (next !== undefined) editor.choose(key.adds ? [...chosen, next] : [next]);
    } else if (key.does === 'all') editor.choose(pieces.map(({ id }) => id));
    else if (key.does === 'leave') {
      if (chosen.length > 0) editor.choose([]);
      else leave();
    } else pressedKey(key, editor, units.system);
  };
  const filler = useFillerSize(pieces, units);
  const name = start.saved === null ? 'New design' : `Edit ${start.saved.code}`;
  const row = problems.find(({ field }) => field === 'row');
  const elsewhere = problems.filter(({ field }) => !shownFields.has(field));

  return (
    <article className="design editor" aria-label={name}>
      <header className="editor-head">
        <div className="editor-row">
          <h1>{name}</h1>
          <RowField
            system={system}
            systemCode={texts.system}
            geometry={geometry}
            problem={row}
            onTyped={editor.retype}
          />
          <div className="editor-end">
            <button type="button" className="primary" disabled={busy} onClick={() => void keep()}>
              Save
            </button>
            <button type="button" onClick={leave}>
              Leave
            </button>
          </div>
        </div>
        <DesignFields
          texts={texts}
          geometry={geometry}
          isNew={start.saved === null}
          systems={props.systems}
          symmetrical={takenOff?.symmetrical}
          problems={problems}
          onTexts={(change) => {
            setTexts((old) => ({ ...old, ...change }));
            if (change.system !== undefined) props.onSystem(change.system);
          }}
          onGeometry={editor.set}
        />
        {elsewhere.map(({ message, hint }) => (
          <RefusalNote key={message} error={new Error(`${message} ${hint ?? ''}`.trim())} />
        ))}
      </header>
      <div className="design-parts">
        <div className="design-drawing">
          <PieceTools editor={editor} />
          <EditorElevation
            name={texts.code === '' ? 'the new design' : texts.code}
            pieces={pieces}
            chosen={chosen}
            edges={geometry.edges}
            takenOff={takenOff}
            behind={asked.behind}
            findings={findings}
            litFinding={litFinding}
            onPointFinding={setLitFinding}
            onChoose={editor.choose}
            onMove={(xNm, yNm) => editor.move({ xNm, yNm })}
            onPlace={editor.place}
            onKey={onKey}
            typed={state.joining === 'row'}
            sizes={sizes}
            filler={filler}
            onPress={editor.placeBeside}
          />
        </div>
        <div className="design-tables">
          {takenOff === undefined ? (
            asked.error === null ? (
              <p className="soft part-words editor-none">Nothing is placed yet.</p>
            ) : (
              <RefusalNote error={asked.error} />
            )
          ) : (
            <>
              <Figures takenOff={takenOff} units={units} />
              <LikenessNote code={texts.code || 'It'} sameAs={takenOff.sameAs} />
              <FindingsList
                findings={findings}
                lit={{ ...unlit, finding: litFinding }}
                onPoint={(pointed) => setLitFinding(pointed?.kind === 'finding' ? pointed.number : null)}
              />
              <TakeoffTable design={takenOff} ruleVersion={null} lit={unlit} onPoint={nothing} />
            </>
          )}
        </div>
      </div>
      <CautionLine about="The take-off follows the entered rule table; hook loads are computed from entered weights." />
      <LeaveQuestion leaving={leaving} name={texts.code === '' ? 'The new design' : texts.code} />
    </article>
  );
}

const shownFields: ReadonlySet<string> = new Set([
  'code',
  'name',
  'system',
  'revision',
  'hand',
  'edges',
  'assemble',
  'breakDown',
  'row',
]);

const nothing = (): void => undefined;

function Figures(props: { readonly takenOff: TakenOff; readonly units: Units }): ReactNode {
  const { takenOff, units } = props;
  const facts: readonly (readonly [string, string])[] = [
    ['Size', sizeWords(takenOff.widthNm, takenOff.heightNm, units.system)],
    ['Area', units.area(takenOff.areaM2)],
    ['Weight without hooks', units.weight(takenOff.weightGrams)],
    ['Permitted pressure', pressureWords(takenOff, units.system)],
  ];
  return (
    <dl className="design-facts editor-figures">
      {facts.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** In a choice or a box to tick there is nothing of its own to take back: the keys are the editor's there too. */
function useUndoInChoices(): void {
  const undo = useUndo();
  useWindowKeys((event) => {
    const { target } = event;
    const isChoice =
      target instanceof HTMLSelectElement ||
      (target instanceof HTMLInputElement && target.type === 'checkbox');
    if (!isChoice || !(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    if (key === 'z' && !event.shiftKey) undo.undo();
    else if (key === 'y' || key === 'z') undo.redo();
    else return;
    event.preventDefault();
  });
}

/** A filler is offered as high as the lowest row, a few inches wide: where it goes it is made to fit. */
function useFillerSize(
  pieces: readonly { readonly yNm: number; readonly heightNm: number }[],
  units: Units,
): { readonly panel: null; readonly widthNm: number; readonly heightNm: number } {
  const widthNm = units.system === 'us' ? 101_600_000 : 100_000_000;
  const low = Math.min(...pieces.map(({ yNm }) => yNm));
  const heightNm = pieces.find(({ yNm }) => yNm === low)?.heightNm ?? 2_438_400_000;
  return useMemo(() => ({ panel: null, widthNm, heightNm }), [widthNm, heightNm]);
}
