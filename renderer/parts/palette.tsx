// Placeholder until the palette lands with the next step.
import type { ReactNode } from 'react';
import type { Job } from './job.tsx';

export function Palette(_props: { readonly job: Job | null }): ReactNode {
  return null;
}
