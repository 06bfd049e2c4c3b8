// Kind by kind what was tried and why it is no way out: open where nothing helps, closed otherwise.
import type { ReactNode } from 'react';
import { never } from '../../../core/answer.ts';
import type { Ways } from './way-text.ts';

type Tried = Ways['tried'][number];

export function WhyNone(props: { readonly tried: Ways['tried']; readonly isOpen: boolean }): ReactNode {
  const without = props.tried.filter(({ why }) => why !== null);
  if (without.length === 0) return null;
  return (
    <details className="ways-none" open={props.isOpen}>
      <summary>{props.isOpen ? 'What was tried, and why it does not help' : 'What else was tried'}</summary>
      <dl>
        {without.map(({ kind, tried, why }) => (
          <div key={kind}>
            <dt>
              {kindWords(kind)}
              {tried === 0 ? '' : `, ${tried} tried`}
            </dt>
            <dd>{why}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

function kindWords(kind: Tried['kind']): string {
  switch (kind) {
    case 'hire':
      return 'Hire';
    case 'slip':
      return 'A later pour';
    case 'gang':
      return 'A gang that waits';
    case 'strip':
      return 'Another strip criterion';
    case 'transfer':
      return 'From another job';
    case 'design':
      return 'Another design';
    case 'two-together':
      return 'Two of these together';
    default:
      return never(kind);
  }
}
