import type { ReactNode } from 'react';
import type { HostOutput, Output } from '../../client/core.tsx';

export function BookScreen(_props: {
  readonly host: HostOutput<'host.state'>;
  readonly state: Output<'book.state'>;
}): ReactNode {
  return null;
}
