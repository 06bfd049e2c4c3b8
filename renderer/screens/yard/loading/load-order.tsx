// A load in words: what goes on in which order, and as which it comes off again; weights against what the truck takes.
import type { ReactNode } from 'react';
import { layerWords } from '../../../../core/sheets/load-places.ts';
import { useUnits } from '../../../parts/units.tsx';
import { codeOf, type LoadFigures, shareWords } from './loading-words.ts';

type Names = Readonly<Record<string, string>>;

export function LoadSums({ figures }: { readonly figures: LoadFigures }): ReactNode {
  const units = useUnits();
  const { truck } = figures;
  const sums: readonly (readonly [string, string, string])[] = [
    [
      'Weight',
      units.weight(figures.weightGrams),
      `of ${units.weight(truck.payloadGrams)}, ${shareWords(figures.weightGrams, truck.payloadGrams)}`,
    ],
    ['Deck', units.length(figures.usedLengthNm), `of ${units.length(truck.deckLengthNm)}`],
    ['Width', units.length(figures.usedWidthNm), `of ${units.length(truck.deckWidthNm)}`],
    ['Highest', units.length(figures.highestNm), `of ${units.length(truck.stackHeightNm)}`],
  ];
  return (
    <dl className="load-sums">
      {sums.map(([label, is, most]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            <b>{is}</b> <span className="soft">{most}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

export function LoadOrder(props: { readonly figures: LoadFigures; readonly names: Names }): ReactNode {
  const { figures, names } = props;
  const units = useUnits();
  const rows = figures.unloading.map((each, index) => ({ ...each, off: index + 1 })).toReversed();
  return (
    <table className="side-table load-order">
      <caption>In the order of loading</caption>
      <thead>
        <tr>
          <th scope="col" className="numeric">
            On
          </th>
          <th scope="col" className="numeric">
            Stack
          </th>
          <th scope="col" className="numeric">
            Level
          </th>
          <th scope="col">What</th>
          <th scope="col" className="numeric">
            Weight
          </th>
          <th scope="col" className="numeric">
            Stop
          </th>
          <th scope="col" className="numeric">
            Comes off as
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ stop, stack, level, off }, index) => {
          const layer = figures.stacks[stack - 1]?.layers[level - 1];
          return layer === undefined ? null : (
            <tr key={`${stack} ${level}`}>
              <td className="numeric">{index + 1}</td>
              <td className="numeric">{stack}</td>
              <td className="numeric">{level}</td>
              <td>
                <b>{layerWords(layer)}</b> <span className="soft">{names[codeOf(layer)] ?? ''}</span>
              </td>
              <td className="numeric">{units.weight(layer.weightGrams)}</td>
              <td className="numeric">{stop}</td>
              <td className="numeric">{off}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
