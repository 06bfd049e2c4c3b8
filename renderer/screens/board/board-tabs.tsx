// The parts of the board as tabs: each is a screen with an address of its own.
import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import './board-tabs.css';

const tabs: readonly { readonly path: string; readonly name: string }[] = [
  { path: '/board', name: 'Board' },
  { path: '/board/what-if', name: 'What if' },
  { path: '/board/work', name: 'Crew and crane' },
  { path: '/board/day-end', name: 'Day’s end' },
];

export function BoardTabs(): ReactNode {
  const [path] = useLocation();
  return (
    <nav className="board-tabs" aria-label="Parts of the board">
      {tabs.map((tab) => {
        const isHere = tab.path === '/board' ? path === '/board' : path.startsWith(tab.path);
        return (
          <Link key={tab.path} href={tab.path} aria-current={isHere ? 'page' : undefined}>
            {tab.name}
          </Link>
        );
      })}
    </nav>
  );
}
