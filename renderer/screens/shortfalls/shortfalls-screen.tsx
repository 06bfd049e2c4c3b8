import type { ReactNode } from 'react';
import { Empty } from '../../parts/notes.tsx';

export function ShortfallsScreen(): ReactNode {
  return <Empty title="Shortfalls" />;
}
