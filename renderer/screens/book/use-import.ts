// Files on their way into the book. They go in order, since stock names components and pours name designs:
// the first one still waiting is tried without storing, and taken in only when a person says so.
import { useCallback, useState } from 'react';
import { type Output, useCommand } from '../../client/core.tsx';
import { guessKind, type ImportKind, orderOf } from './import-steps.ts';

export type ImportResult = Output<'import.file'>;

export interface ImportFile {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly kind: ImportKind;
  readonly tried: ImportResult | null;
  readonly taken: ImportResult | null;
  readonly error: Error | null;
}

export interface Imports {
  readonly files: readonly ImportFile[];
  /** The first that is not taken in yet. */
  readonly current: ImportFile | undefined;
  readonly busy: boolean;
  readonly add: (chosen: readonly File[]) => void;
  readonly setKind: (id: string, kind: ImportKind) => void;
  readonly drop: (id: string) => void;
  readonly attempt: (file: ImportFile) => void;
  readonly take: (file: ImportFile) => void;
}

export function useImport(): Imports {
  const [files, setFiles] = useState<readonly ImportFile[]>([]);
  const [busy, setBusy] = useState(false);
  const { mutateAsync } = useCommand('import.file');
  const change = useCallback((id: string, changes: Partial<ImportFile>) => {
    setFiles((old) => sorted(old.map((file) => (file.id === id ? { ...file, ...changes } : file))));
  }, []);

  const send = useCallback(
    async (file: ImportFile, dryRun: boolean): Promise<ImportResult | null> => {
      setBusy(true);
      try {
        const result = await mutateAsync({ kind: file.kind, text: file.text, dryRun });
        change(file.id, dryRun ? { tried: result, error: null } : { taken: result, error: null });
        return result;
      } catch (error) {
        change(file.id, { tried: null, error: error instanceof Error ? error : new Error(String(error)) });
        return null;
      } finally {
        setBusy(false);
      }
    },
    [mutateAsync, change],
  );

  const add = async (chosen: readonly File[]): Promise<void> => {
    const added = await readAll(chosen, files);
    const all = sorted([...files, ...added]);
    setFiles(all);
    const first = all.find((file) => file.taken === null);
    if (first !== undefined) await send(first, true);
  };
  const take = async (file: ImportFile): Promise<void> => {
    const result = await send(file, false);
    const next = files.find((one) => one.taken === null && one.id !== file.id);
    if (result?.stored === true && next !== undefined) await send(next, true);
  };

  return {
    files,
    current: files.find((file) => file.taken === null),
    busy,
    add: (chosen) => void add(chosen),
    setKind: (id, kind) => change(id, { kind, tried: null, error: null }),
    drop: (id) => setFiles((old) => old.filter((file) => file.id !== id)),
    attempt: (file) => void send(file, true),
    take: (file) => void take(file),
  };
}

function sorted(files: readonly ImportFile[]): readonly ImportFile[] {
  return [...files].sort((one, other) => orderOf(one.kind) - orderOf(other.kind));
}

async function readAll(
  chosen: readonly File[],
  before: readonly ImportFile[],
): Promise<readonly ImportFile[]> {
  const taken = before.map((file) => file.kind);
  const added: ImportFile[] = [];
  for (const file of chosen) {
    const kind = guessKind(file.name, taken);
    taken.push(kind);
    // One after another: the kind of a file whose name says nothing depends on those before it.
    // oxlint-disable-next-line eslint/no-await-in-loop
    const text = await file.text();
    added.push({
      id: crypto.randomUUID(),
      name: file.name,
      text,
      kind,
      tried: null,
      taken: null,
      error: null,
    });
  }
  return added;
}
