// The window: where it stands, what it shows, and that its title names the open book.
import path from 'node:path';
import { BrowserWindow, screen } from 'electron';
import { pageAddress } from './page-scheme.ts';
import type { Memory } from './remembered.ts';

const usual = { width: 1280, height: 860 };

export function openWindow(preload: string, memory: Memory): BrowserWindow {
  const window = new BrowserWindow({
    ...placeFor(memory),
    minWidth: 640,
    minHeight: 480,
    show: false,
    title: 'Regang',
    webPreferences: {
      preload: path.resolve(preload),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
    },
  });
  if (memory.values.maximized === true) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('page-title-updated', (event) => event.preventDefault());
  window.on('close', () => {
    memory.keep({ bounds: window.getNormalBounds(), maximized: window.isMaximized() });
  });
  window.loadURL(pageAddress).catch((error: unknown) => console.error(`regang: ${String(error)}`));
  return window;
}

/** Where it stood last, unless that screen is gone. */
function placeFor(memory: Memory): Partial<Electron.Rectangle> {
  const { bounds } = memory.values;
  if (bounds === undefined) return usual;
  const area = screen.getDisplayMatching(bounds).workArea;
  const overlaps =
    bounds.x < area.x + area.width - 80 &&
    bounds.x + bounds.width > area.x + 80 &&
    bounds.y >= area.y - 20 &&
    bounds.y < area.y + area.height - 80;
  return overlaps
    ? bounds
    : { width: Math.min(bounds.width, area.width), height: Math.min(bounds.height, area.height) };
}

export function titleFor(book: { readonly name: string; readonly readOnly: boolean } | null): string {
  if (book === null) return 'Regang';
  return `${book.name}${book.readOnly ? ' (reading only)' : ''} – Regang`;
}
