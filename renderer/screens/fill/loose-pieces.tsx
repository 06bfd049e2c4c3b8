// What belongs to none of the gangs and is needed at the pour all the same.
import type { ReactNode } from 'react';
import { formatHours } from '../../../core/units/hours.ts';
import type { Units } from '../../parts/units.tsx';
import type { Proposal } from './fill-shapes.ts';
import { type GatheredLoose, gatheredLoose } from './gathered.ts';

const purposes: Readonly<Record<GatheredLoose['purpose'], string>> = {
  'inside-corner': 'inside corner',
  'outside-corner': 'outside corner',
  'stop-end': 'stop-end',
  closure: 'closure',
  'gang-locks': 'locks between gangs',
  ties: 'ties',
  'opening-joint': 'locks of the opening joints',
};

export function LoosePieces(props: { readonly loose: Proposal['loose']; readonly units: Units }): ReactNode {
  const lines = gatheredLoose(props.loose);
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="fill-loose">
      <h2 id="fill-loose">Beside the gangs</h2>
      <table className="fill-loose">
        <thead>
          <tr>
            <th scope="col">What for</th>
            <th scope="col">Component</th>
            <th scope="col" className="number">
              Pieces
            </th>
            <th scope="col">Where</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={`${line.purpose} ${line.component ?? ''} ${JSON.stringify(line.made)}`}>
              <th scope="row">{purposes[line.purpose]}</th>
              <td>{line.component ?? <span className="soft">{withoutCode(line)}</span>}</td>
              <td className="number">{line.quantity}</td>
              <td>
                {line.made === undefined ? null : `${madeWords(line.made, props.units)}: `}
                <span className="soft">{line.places.join('; ')}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function withoutCode({ purpose, made }: GatheredLoose): string {
  if (purpose === 'ties') return 'by the thickness';
  return made === undefined ? 'none in the catalogue' : 'made on the site';
}

function madeWords(made: NonNullable<GatheredLoose['made']>, units: Units): string {
  const { widthNm, heightNm, areaM2, backingPieces, backing, hours } = made;
  return [
    `${units.length(widthNm)} × ${units.length(heightNm)}`,
    units.area(areaM2),
    backingPieces === 0 ? 'no backing' : `${backingPieces} ${backing ?? 'backing'}`,
    hours === null ? 'no hours in the rule tables' : `${formatHours(hours)} each`,
  ].join(', ');
}
