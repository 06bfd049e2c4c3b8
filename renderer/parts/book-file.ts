// What can be done with the file of the book: begin one, open another, the demo, a copy. On the desktop a
// native dialog asks where; in a browser the path is typed, since a page sees no folders.
import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useHostCall } from '../client/core.tsx';
import { Refused } from '../client/refused.ts';
import type { PickKind } from '../client/transport.ts';

export interface BookFile {
  readonly demo: () => void;
  /** Without a path the desktop asks for one; in a browser it is needed. */
  readonly begin: (file?: string) => void;
  readonly open: (file?: string) => void;
  readonly copy: (file?: string) => void;
  readonly asksItself: boolean;
  readonly busy: boolean;
  readonly error: Error | null;
  /** Where the last copy was written. */
  readonly copied: string | null;
}

export function useBookFile(): BookFile {
  const [, navigate] = useLocation();
  const [error, setError] = useState<Error | null>(null);
  const [copied, setCopied] = useState<string | null>(null);
  const demo = useHostCall('host.demo');
  const create = useHostCall('host.create');
  const open = useHostCall('host.open');
  const copy = useHostCall('host.copy');

  const run = useCallback(
    async (kind: PickKind, file: string | undefined, act: (file: string) => Promise<void>) => {
      setError(null);
      try {
        const chosen = file ?? (await picked(kind));
        if (chosen !== null && chosen !== '') await act(chosen);
      } catch (problem) {
        setError(problem instanceof Error ? problem : new Error(String(problem)));
      }
    },
    [],
  );

  return {
    demo: () =>
      void run('open-book', 'demo', async () => {
        await demo.mutateAsync({});
        navigate('/board');
      }),
    begin: (file) =>
      void run('new-book', file, async (chosen) => {
        await create.mutateAsync({ file: chosen });
        navigate('/book');
      }),
    open: (file) =>
      void run('open-book', file, async (chosen) => {
        await open.mutateAsync({ file: chosen });
        navigate('/board');
      }),
    copy: (file) =>
      void run('copy-book', file, async (chosen) => {
        const written = await copy.mutateAsync({ file: chosen });
        setCopied(written.file);
      }),
    asksItself: window.regang !== undefined,
    busy: demo.isPending || create.isPending || open.isPending || copy.isPending,
    error,
    copied,
  };
}

async function picked(kind: PickKind): Promise<string | null> {
  const answer = (await window.regang?.pick(kind)) ?? null;
  if (answer === null || typeof answer === 'string') return answer;
  throw new Refused({ code: 'file-not-read', message: answer.error });
}

/** The desktop's own menu opens books as well: then the page begins again at the board of the new one. */
export function useMenu(): void {
  const [, navigate] = useLocation();
  const client = useQueryClient();
  useEffect(() => {
    const stop = window.regang?.onMenu((command) => {
      if (command !== 'book-opened') return;
      void client.invalidateQueries();
      navigate('/board');
    });
    return typeof stop === 'function' ? (stop as () => void) : undefined;
  }, [client, navigate]);
}
