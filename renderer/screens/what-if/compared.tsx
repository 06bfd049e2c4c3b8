// Two plans side by side: their figures in a table, then what differs, part by part. Either can be accepted.
import { type ReactNode, useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Says } from '../../parts/changes/difference.ts';
import {
  CallPart,
  CostPart,
  FindingsPart,
  HeldPart,
  LoadPart,
  PourParts,
  ReroutedPart,
  ShortPart,
  ToldPart,
} from '../../parts/changes/difference-parts.tsx';
import { type Comparison, compareRows } from './compare-rows.ts';

export interface SideChoice {
  readonly id: string;
  readonly name: string;
}

export function Compared(props: {
  readonly comparison: Comparison;
  readonly says: Says;
  readonly one: SideChoice;
  readonly other: SideChoice;
  readonly busy: boolean;
  /** Absent where nothing can be stored. */
  readonly onAccept: ((side: SideChoice, changes: Comparison['one']['changes']) => void) | null;
}): ReactNode {
  const { comparison, says, one, other, onAccept } = props;
  const rows = useMemo(() => compareRows(comparison, says.money), [comparison, says]);
  const part = { difference: comparison, says };
  const accept = (side: SideChoice, changes: Comparison['one']['changes']): ReactNode =>
    changes.length === 0 ? (
      <span className="soft">stands now</span>
    ) : onAccept === null ? null : (
      <Button
        className="primary"
        aria-label={`Accept ${side.name}`}
        isDisabled={props.busy}
        onPress={() => onAccept(side, changes)}
      >
        Accept
      </Button>
    );
  return (
    <div className="plan-pair">
      <table className="plain compare-table">
        <caption className="visually-hidden">Two plans</caption>
        <thead>
          <tr>
            <td aria-label="What" />
            <th scope="col">{one.name}</th>
            <th scope="col">{other.name}</th>
            <th scope="col" className="numeric">
              Between
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key} className={row.one === row.other ? undefined : 'pair-differs'}>
              <th scope="row">{row.name}</th>
              <td>{row.one}</td>
              <td>{row.other}</td>
              <td className="numeric">{row.between}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Take this one</th>
            <td>{accept(one, comparison.one.changes)}</td>
            <td>{accept(other, comparison.other.changes)}</td>
            <td aria-label="Nothing lies between" />
          </tr>
        </tbody>
      </table>
      <div className="compare-parts">
        <div>
          <PourParts {...part} heads={[one.name, other.name]} />
          <ShortPart {...part} left={comparison.other.summary.shortfalls.length} />
          <CostPart {...part} before={comparison.one.summary} after={comparison.other.summary} />
          <CallPart difference={comparison} />
        </div>
        <div>
          <ToldPart difference={comparison} />
          <LoadPart difference={comparison} />
          <HeldPart {...part} />
          <ReroutedPart difference={comparison} />
          <FindingsPart {...part} />
        </div>
      </div>
    </div>
  );
}
