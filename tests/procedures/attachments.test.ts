// Photos of papers, kept beside the demo's own book: one file a content, named by its digest, told when it is missing or
// was changed.
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let bookFile: string;

beforeAll(async () => {
  host = await demoHost();
  const { book } = (await host.ask('host.state' as never, {} as never)) as { book: { file: string } };
  bookFile = book.file;
});

afterAll(() => host.close());

let ids = 0;
const id = (): string => `photo-test-${(ids += 1)}`;

const added = (content: Buffer) => ({
  commandId: id(),
  id: id(),
  paper: 'paper-with-photo',
  occasion: 'damage-at-delivery' as const,
  fileName: 'rail.png',
  base64: content.toString('base64'),
  component: 'R8',
  remark: 'Bent at one end',
});

describe('An attachment', () => {
  const png = Buffer.from('\u0089PNG\r\n\u001a\nrest of it', 'latin1');

  test('is a file beside the book under its digest, read back as it was', async () => {
    const { attachment } = await host.ask('attachment.add', added(png));
    const files = readdirSync(`${bookFile}.files`);
    expect(files).toEqual([`${attachment.sha256}.png`]);
    expect(readFileSync(path.join(`${bookFile}.files`, files[0] ?? ''))).toEqual(png);
    const read = await host.ask('attachment.read', { attachment: attachment.id });
    expect(Buffer.from(read.base64, 'base64')).toEqual(png);
    expect((await host.ask('attachment.list', { paper: 'paper-with-photo' })).attachments).toEqual([
      attachment,
    ]);
    const copy = path.join(path.dirname(bookFile), 'copied.regang');
    await host.ask('host.copy' as never, { file: copy } as never);
    expect(readdirSync(`${copy}.files`)).toEqual(files);
    writeFileSync(path.join(`${bookFile}.files`, files[0] ?? ''), 'something else');
    expect(await host.refused('attachment.read', { attachment: attachment.id })).toBe('file-changed');
    // The same photo once more heals it: it is one file again, and both attachments show it.
    await host.ask('attachment.add', added(png));
    expect(readdirSync(`${bookFile}.files`)).toEqual(files);
    await host.ask('attachment.read', { attachment: attachment.id });
    rmSync(path.join(`${bookFile}.files`, files[0] ?? ''));
    expect(await host.refused('attachment.read', { attachment: attachment.id })).toBe('file-missing');
  });

  test('that is no picture, whatever its name, is not kept', async () => {
    const page = Buffer.from('<html>');
    expect(await host.refused('attachment.add', added(page))).toBe('not-a-picture');
    const large = Buffer.concat([png, Buffer.alloc(12 * 1024 * 1024)]);
    expect(await host.refused('attachment.add', added(large))).toBe('file-too-large');
    expect(existsSync(`${bookFile}.files`) ? readdirSync(`${bookFile}.files`) : []).toEqual([]);
  });
});
