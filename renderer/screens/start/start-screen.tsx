import type { ReactNode } from 'react';
import type { HostOutput } from '../../client/core.tsx';

export function StartScreen(_props: { readonly host: HostOutput<'host.state'> }): ReactNode {
  return null;
}
