// What is taken for what, side by side to one scale, with the measure that tells the two apart. Pairs that the sizes
// propose are offered; what counts is what somebody enters.
import { type ReactNode, useMemo, useState } from 'react';
import { sheetUnits } from '../../../../core/sheets/drawn-gang.ts';
import { pairPicture } from '../../../../core/sheets/look-alike-part.ts';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useUndo } from '../../../parts/undo.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { sheetElement } from '../../sheets/sheet-elements.ts';
import { ComponentField } from '../component-field.tsx';
import '../../../../core/sheets/drawing.css';
import '../../../../core/sheets/lists.css';

type Pair = Output<'lookalike.list'>['pairs'][number];

export function LookAlikesView(): ReactNode {
  const list = useCore('lookalike.list', {});
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Comparing sizes …" />;
  const { pairs, twoOwners } = list.data;
  const entered = pairs.filter((pair) => pair.isEntered);
  const proposed = pairs.filter((pair) => !pair.isEntered);
  return (
    <div className="look-alikes">
      <NewPair />
      <h2>Entered: counted one after the other</h2>
      {entered.length === 0 ? (
        <Empty title="No pair entered yet">
          <p>Two sizes that are easily taken for each other are printed side by side on the count sheet.</p>
        </Empty>
      ) : (
        <PairList pairs={entered} />
      )}
      {proposed.length === 0 ? null : (
        <>
          <h2>Proposed by their sizes</h2>
          <p className="soft">
            Same kind, one measure the same or the only one, near in the other (common practice, no source).
          </p>
          <PairList pairs={proposed} />
        </>
      )}
      {twoOwners.length === 0 ? null : (
        <>
          <h2>Of two owners: only the mark tells</h2>
          <p>{twoOwners.map((each) => `${each.component} (${each.owners.join(', ')})`).join(' · ')}</p>
        </>
      )}
    </div>
  );
}

function PairList(props: { readonly pairs: readonly Pair[] }): ReactNode {
  return (
    <ul className="pair-cards">
      {props.pairs.map((pair) => (
        <li key={`${pair.one.code} ${pair.other.code}`}>
          <PairCard pair={pair} />
        </li>
      ))}
    </ul>
  );
}

function PairCard(props: { readonly pair: Pair }): ReactNode {
  const { pair } = props;
  const { one, other, measure } = pair;
  const { system, length, weight } = useUnits();
  const actions = usePairActions(pair);
  const picture = useMemo(() => pairPicture(pair, sheetUnits(system)), [pair, system]);
  return (
    <article className="pair-card" aria-label={`${one.code} and ${other.code}`}>
      <h3>
        {one.code} and {other.code}
      </h3>
      {picture === null ? null : <div className="pair-paper">{sheetElement(picture)}</div>}
      <p>
        {measure === null ? null : (
          <b>
            {measure.what}: {length(measure.oneNm)} against {length(measure.otherNm)}
          </b>
        )}{' '}
        {pair.tellApart}
      </p>
      <p className="soft">
        {weight(one.weightGrams)} and {weight(other.weightGrams)}
      </p>
      {actions.error === null ? null : <RefusalNote error={actions.error} />}
      {pair.isEntered ? (
        <button type="button" className="quiet" onClick={actions.remove}>
          Take out
        </button>
      ) : (
        <button type="button" onClick={actions.save}>
          Enter as a pair
        </button>
      )}
    </article>
  );
}

function usePairActions({ one, other, tellApart }: Pair) {
  const save = useCommand('lookalike.save');
  const remove = useCommand('lookalike.remove');
  const { remember } = useUndo();
  const names = { component: one.code, other: other.code };
  const words = `${one.code} and ${other.code}`;
  const add = () => save.mutateAsync({ ...names, tellApart });
  const takeOut = () => remove.mutateAsync(names);
  const then = (done: Promise<unknown>, edit: Parameters<typeof remember>[0]): void =>
    void done.then(() => remember(edit)).catch(() => undefined);
  return {
    error: save.error ?? remove.error,
    save: () => then(add(), { words: `enter ${words} as look-alikes`, undo: takeOut, redo: add }),
    remove: () =>
      then(takeOut(), { words: `take ${words} out of the look-alikes`, undo: add, redo: takeOut }),
  };
}

function NewPair(): ReactNode {
  const components = useCore('component.list', {});
  const save = useCommand('lookalike.save');
  const [one, setOne] = useState('');
  const [other, setOther] = useState('');
  const [tellApart, setTellApart] = useState('');
  const known = components.data?.components ?? [];
  return (
    <form
      className="new-pair"
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate(
          { component: one, other, tellApart },
          {
            onSuccess: () => {
              setOne('');
              setOther('');
              setTellApart('');
            },
          },
        );
      }}
    >
      <ComponentField
        label="One component"
        hint="one"
        value={one}
        invalid={false}
        components={known}
        onChange={setOne}
      />
      <span>and</span>
      <ComponentField
        label="The other component"
        hint="the other"
        value={other}
        invalid={false}
        components={known}
        onChange={setOther}
      />
      <label>
        <span className="visually-hidden">What tells them apart</span>
        <input
          className="tell-apart"
          placeholder="what tells them apart"
          value={tellApart}
          maxLength={200}
          onChange={(event) => setTellApart(event.target.value)}
        />
      </label>
      <button type="submit" disabled={one === '' || other === ''}>
        Enter as a pair
      </button>
      {save.error === null ? null : <RefusalNote error={save.error} />}
    </form>
  );
}
