// Which other design is the same gang or its other hand, so that nobody takes the one for the other.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { Output } from '../../client/core.tsx';

export function LikenessNote(props: {
  readonly code: string;
  readonly sameAs: Output<'design.read'>['sameAs'];
}): ReactNode {
  const { code, sameAs } = props;
  return sameAs.map(({ design, how }) => (
    <p key={`${design} ${how}`} className="note note-caution likeness">
      <span className="note-word">{how === 'mirrored' ? 'Other hand' : 'Same gang'}</span>
      <span>
        {how === 'mirrored' ? `${code} is the mirror image of ` : `${code} is the same gang as `}
        <Link href={`/designs/${encodeURIComponent(design)}`}>{design}</Link>
        {how === 'mirrored' ? `: the other hand; it does not fly on as ${design}.` : '.'}
      </span>
    </p>
  ));
}
