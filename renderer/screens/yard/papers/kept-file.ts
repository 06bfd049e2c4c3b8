// Files between the page and the core: as base64 on the way there, as a picture of the page's own on the way back.
import { useEffect, useState } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import type { Refused } from '../../../client/refused.ts';

export function asBase64(file: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => {
      const url = typeof reader.result === 'string' ? reader.result : '';
      resolve(url.slice(url.indexOf(',') + 1));
    });
    reader.addEventListener('error', () => reject(reader.error ?? new Error('The file cannot be read.')));
    reader.readAsDataURL(file);
  });
}

export interface ShownFile {
  /** Null until it is read. */
  readonly url: string | null;
  readonly error: Refused | null;
}

/** An attachment as an address that only this page knows, given back when it is shown no more. */
export function useKeptFile(attachment: string): ShownFile {
  const read = useCore('attachment.read', { attachment });
  const [url, setUrl] = useState<string | null>(null);
  const { data, error } = read;
  useEffect(() => {
    let made: string | null = null;
    let gone = false;
    const show = async (answered: Output<'attachment.read'>): Promise<void> => {
      const content = await pictureOf(answered);
      if (gone) return;
      made = URL.createObjectURL(content);
      setUrl(made);
    };
    if (data !== undefined) void show(data);
    return () => {
      gone = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [data]);
  return { url: error === null ? url : null, error };
}

async function pictureOf({ base64, attachment }: Output<'attachment.read'>): Promise<Blob> {
  const bytes = await Promise.resolve(Uint8Array.from(atob(base64), (sign) => sign.codePointAt(0) ?? 0));
  return new Blob([bytes], { type: attachment.mediaType });
}
