import type { ReactNode } from 'react';
import { Empty } from '../../parts/notes.tsx';

export function BoardScreen(): ReactNode {
  return <Empty title="Board" />;
}
