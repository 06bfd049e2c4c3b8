// Explaining one line: how many pieces by which explanation, with the place or owner it needs, until nothing is left,
// or leaving the rest open by name.
import type { ReactNode } from 'react';
import { useCore } from '../../../client/core.tsx';
import { type DifferenceLine, type How, howWords } from './count-words.ts';
import { type DraftExplanation, type DraftLine, explanation, restOf } from './explain-draft.ts';

/** Nothing of these is taken from an owner or given to one. */
const movesNothing: ReadonlySet<How> = new Set([
  'condition-changed',
  'stacked-with-look-alike',
  'miscounted',
]);

interface ToExplain {
  readonly line: DifferenceLine;
  readonly draft: DraftLine;
  readonly onDraft: (by: (old: DraftLine) => DraftLine) => void;
}

export function ExplainForm(given: ToExplain): ReactNode {
  const { line, draft, onDraft } = given;
  const rest = restOf(line, { ...draft, open: false });
  const isOver = rest.pieces < 0 || rest.inOtherCondition < 0;
  if (line.difference === 0 && line.conditionMoves.length === 0)
    return <p className="counts-accuracy">As booked: nothing to explain.</p>;
  const first = line.offered.find(({ how }) => how !== 'condition-changed')?.how;
  const add = (): void => {
    const how = rest.inOtherCondition > 0 ? 'condition-changed' : first;
    if (how === undefined) return;
    const quantity = rest.inOtherCondition > 0 ? rest.inOtherCondition : Math.max(1, rest.pieces);
    onDraft((old) => ({ ...old, explained: [...old.explained, explanation(how, quantity)] }));
  };
  return (
    <section className="explain" aria-label="How it is explained">
      <h3>How it is explained</h3>
      {draft.explained.map((each, index) => (
        <ExplanationRow
          key={each.id}
          line={line}
          number={index + 1}
          each={each}
          onChange={(part) =>
            onDraft((old) => ({
              ...old,
              explained: old.explained.map((one) => (one.id === each.id ? { ...one, ...part } : one)),
            }))
          }
          onRemove={() =>
            onDraft((old) => ({ ...old, explained: old.explained.filter((one) => one.id !== each.id) }))
          }
        />
      ))}
      <div className="explain-end">
        <button type="button" onClick={add} disabled={first === undefined && rest.inOtherCondition === 0}>
          Another explanation
        </button>
        <output className={isOver ? 'field-error' : 'soft'}>{restWords(rest, draft.open)}</output>
      </div>
      {line.difference === 0 ? null : (
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.open}
            onChange={(event) => {
              const open = event.target.checked;
              onDraft((old) => ({ ...old, open }));
            }}
          />
          leave what is left open: nobody knows yet, the book stays as it is
        </label>
      )}
    </section>
  );
}

function restWords(
  rest: { readonly pieces: number; readonly inOtherCondition: number },
  open: boolean,
): string {
  if (rest.pieces < 0) return `${-rest.pieces} more than there are`;
  if (rest.inOtherCondition < 0)
    return `${-rest.inOtherCondition} more in another condition than were found so`;
  const left = [
    ...(rest.pieces > 0 ? [`${rest.pieces} ${open ? 'left open' : 'to explain'}`] : []),
    ...(rest.inOtherCondition > 0 ? [`${rest.inOtherCondition} in another condition to explain`] : []),
  ];
  return left.length === 0 ? 'Everything is explained.' : left.join(', ');
}

function ExplanationRow(props: {
  readonly line: DifferenceLine;
  readonly number: number;
  readonly each: DraftExplanation;
  readonly onChange: (part: Partial<DraftExplanation>) => void;
  readonly onRemove: () => void;
}): ReactNode {
  const { line, number, each, onChange } = props;
  const owners = useCore('yard.places', {}).data?.owners ?? [];
  const offer = line.offered.find(({ how }) => how === each.how);
  const places = offer?.places ?? [];
  const isWrong = !/^\s*[1-9]\d*\s*$/u.test(each.quantity);
  const lacksPlace = offer?.isPlaceNeeded === true && each.place === '';
  return (
    <div className="explanation">
      <input
        className="quantity"
        inputMode="numeric"
        aria-label={`Pieces of explanation ${number}`}
        aria-invalid={isWrong}
        value={each.quantity}
        onChange={(event) => onChange({ quantity: event.target.value })}
      />
      <select
        aria-label={`Explanation ${number}`}
        value={each.how}
        onChange={(event) => onChange({ how: event.target.value as How, place: '' })}
      >
        {line.offered.map(({ how }) => (
          <option key={how} value={how}>
            {howWords[how]}
          </option>
        ))}
      </select>
      {places.length === 0 && offer?.isPlaceNeeded !== true ? null : (
        <select
          aria-label={`Place of explanation ${number}`}
          aria-invalid={lacksPlace}
          value={each.place}
          onChange={(event) => onChange({ place: event.target.value })}
        >
          <option value="">{offer?.isPlaceNeeded === true ? 'where?' : 'not named'}</option>
          {places.map((place) => (
            <option key={place} value={place}>
              {place}
            </option>
          ))}
        </select>
      )}
      {movesNothing.has(each.how) ? null : (
        <select
          aria-label={`Owner of explanation ${number}`}
          value={each.owner}
          onChange={(event) => onChange({ owner: event.target.value })}
        >
          <option value="">{each.how === 'not-ours' ? 'of others' : 'ours first'}</option>
          {owners.map((owner) => (
            <option key={owner.code} value={owner.code}>
              {owner.code}
            </option>
          ))}
        </select>
      )}
      <button
        type="button"
        className="quiet"
        aria-label={`Take out explanation ${number}`}
        onClick={props.onRemove}
      >
        ✕
      </button>
      <input
        className="explain-remark"
        aria-label={`Remark of explanation ${number}`}
        placeholder={each.how === 'scrapped' ? 'who else says so' : 'remark'}
        maxLength={400}
        value={each.remark}
        onChange={(event) => onChange({ remark: event.target.value })}
      />
      {isWrong ? (
        <span className="field-error" role="alert">
          A whole number of pieces from 1 on.
        </span>
      ) : null}
    </div>
  );
}
