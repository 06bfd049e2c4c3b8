// The parts of the yard as tabs: each is a screen with an address of its own.
import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';

const tabs = [
  { path: '/yard', name: 'Quantities' },
  { path: '/yard/papers', name: 'Papers' },
  { path: '/yard/gangs', name: 'Gangs' },
  { path: '/yard/strip', name: 'Strip' },
  { path: '/yard/counts', name: 'Counts' },
  { path: '/yard/condition', name: 'Condition' },
  { path: '/yard/loading', name: 'Loading' },
  { path: '/yard/phone', name: 'Count on a phone' },
] as const;

export function YardTabs(): ReactNode {
  const [path] = useLocation();
  return (
    <nav className="yard-tabs" aria-label="Parts of the yard">
      {tabs.map((tab) => {
        const isHere = tab.path === '/yard' ? path === '/yard' : path.startsWith(tab.path);
        return (
          <Link key={tab.path} href={tab.path} aria-current={isHere ? 'page' : undefined}>
            {tab.name}
          </Link>
        );
      })}
    </nav>
  );
}
