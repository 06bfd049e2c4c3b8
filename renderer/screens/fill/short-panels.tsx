// Panels that what is ready does not suffice for.
import type { ReactNode } from 'react';
import type { Proposal } from './fill-shapes.ts';
import { shortPanels } from './gathered.ts';

export function ShortPanels(props: { readonly proposal: Proposal }): ReactNode {
  const lines = shortPanels(props.proposal);
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="fill-short">
      <h2 id="fill-short">Panels short</h2>
      <table className="fill-short">
        <thead>
          <tr>
            <th scope="col">Panel</th>
            <th scope="col" className="number">
              Needed
            </th>
            <th scope="col" className="number">
              Ready
            </th>
            <th scope="col" className="number">
              Short
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ panel, needed, short }) => (
            <tr key={panel}>
              <th scope="row">{panel}</th>
              <td className="number">{needed}</td>
              <td className="number">{needed - short}</td>
              <td className="number short-word">{short} short</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
