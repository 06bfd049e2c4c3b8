// Which pane stands beside the board: a pour or one of its gangs, or a pane about the whole plan by its name in the address.
import type { ReactNode } from 'react';
import { BetterPane } from './better-pane.tsx';
import type { BoardModel } from './board-rows.ts';
import type { Move } from './board-types.ts';
import { FindingsPane } from './findings-pane.tsx';
import { GangPane } from './gang-pane.tsx';
import { OverPane } from './over-pane.tsx';
import { PourPane } from './pour-pane.tsx';
import { ToldPane } from './told-pane.tsx';
import { UndatedPane } from './undated-pane.tsx';

export function BoardSide(props: {
  readonly model: BoardModel;
  readonly query: URLSearchParams;
  readonly readOnly: boolean;
  readonly onMove: (move: Move) => void;
  readonly onChange: (changes: Readonly<Record<string, string | null>>) => void;
}): ReactNode {
  const { model, query, readOnly, onChange } = props;
  const close = (): void => onChange({ pane: null, day: null });
  const pane = query.get('pane');
  if (pane === 'told') return <ToldPane model={model} readOnly={readOnly} onClose={close} />;
  if (pane === 'undated') return <UndatedPane model={model} readOnly={readOnly} onClose={close} />;
  const day = query.get('day');
  if (pane === 'over' && day !== null)
    return (
      <OverPane
        key={day}
        model={model}
        date={day}
        readOnly={readOnly}
        onDay={(date) => onChange({ day: date })}
        onClose={close}
      />
    );
  if (pane === 'better') return <BetterPane model={model} readOnly={readOnly} onClose={close} />;
  if (pane === 'clashes') {
    const show = (pour: string): void => onChange({ pane: null, pour, gang: null });
    return <FindingsPane model={model} onSelect={show} onClose={close} />;
  }
  const row = model.byCode.get(query.get('pour') ?? '');
  if (row === undefined) return null;
  const gang = row.turns.find(({ id }) => id === query.get('gang'));
  if (gang === undefined)
    return (
      <PourPane
        model={model}
        row={row}
        onMove={props.onMove}
        onGang={(turn) => onChange({ gang: turn })}
        onClose={() => onChange({ pour: null, gang: null })}
      />
    );
  return (
    <GangPane
      key={gang.id}
      model={model}
      row={row}
      turn={gang}
      readOnly={readOnly}
      onGang={(turn) => onChange({ gang: turn })}
    />
  );
}
