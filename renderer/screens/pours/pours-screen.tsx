import type { ReactNode } from 'react';

export function PoursScreen(): ReactNode {
  return null;
}
