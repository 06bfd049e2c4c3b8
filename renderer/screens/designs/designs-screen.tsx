import type { ReactNode } from 'react';

export function DesignsScreen(): ReactNode {
  return null;
}
