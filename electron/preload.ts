// The only bridge into the page: native dialogs, the menu's choices, and one message port to the core,
// handed over when the page's own script is there to take it.
import { contextBridge, ipcRenderer } from 'electron';

/** The little of the page's globals that is used here; the rest of electron/ has no page. */
declare const window: {
  readonly location: { readonly origin: string };
  readonly postMessage: (message: unknown, origin: string, transfer: readonly unknown[]) => void;
  readonly addEventListener: (name: 'DOMContentLoaded', listener: () => void) => void;
};

const kinds = ['open-book', 'new-book', 'copy-book', 'open-csv'];

contextBridge.exposeInMainWorld('regang', {
  door: 'desktop',
  pick: async (kind: unknown): Promise<unknown> => {
    if (typeof kind !== 'string' || !kinds.includes(kind)) throw new Error('An unknown kind of file.');
    return ipcRenderer.invoke('regang:pick', kind);
  },
  savePdf: async (): Promise<unknown> => ipcRenderer.invoke('regang:pdf'),
  onMenu: (chosen: (command: string) => void): (() => void) => {
    const listener = (_event: unknown, command: unknown): void => {
      if (typeof command === 'string') chosen(command);
    };
    ipcRenderer.on('regang:menu', listener);
    return () => void ipcRenderer.removeListener('regang:menu', listener);
  },
});

// The bridge cannot carry a port: it goes to the page as a message of the page's own origin.
ipcRenderer.on('regang:port', (event) => {
  window.postMessage({ kind: 'regang-port' }, window.location.origin, [...event.ports]);
});

// Module scripts have run by then, so that nothing arrives before somebody listens.
window.addEventListener('DOMContentLoaded', () => ipcRenderer.send('regang:want-port'));
