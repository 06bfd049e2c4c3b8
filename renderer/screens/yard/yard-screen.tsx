import type { ReactNode } from 'react';

export function YardScreen(): ReactNode {
  return null;
}
