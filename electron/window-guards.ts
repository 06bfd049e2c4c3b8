// What no page of this app ever needs is refused to all of them: other addresses, new windows, frames
// of other kinds, permissions. Links to the outside open in the person's own browser, https only.
import { app, session, shell } from 'electron';
import type { WebContents } from 'electron';
import { isPageAddress } from './page-scheme.ts';

export function guardAllPages(): void {
  app.on('web-contents-created', (_event, contents) => guard(contents));
}

/** All but one: a table that is copied is put on the clipboard, by this app's own page and as plain text. */
export function refusePermissions(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, permission, answer, details) =>
    answer(mayCopy(permission, details.requestingUrl)),
  );
  session.defaultSession.setPermissionCheckHandler((_contents, permission, origin) =>
    mayCopy(permission, origin),
  );
  session.defaultSession.setDevicePermissionHandler(() => false);
}

function mayCopy(permission: string, address: string): boolean {
  return permission === 'clipboard-sanitized-write' && isPageAddress(address);
}

function guard(contents: WebContents): void {
  contents.on('will-navigate', (event) => {
    if (!isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-frame-navigate', (event) => {
    if (!event.isMainFrame || !isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => {
    if (!isPageAddress(event.url)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    openOutside(url);
    return { action: 'deny' };
  });
}

function openOutside(address: string): void {
  if (!URL.canParse(address)) return;
  const url = new URL(address);
  if (url.protocol !== 'https:' || url.username !== '' || url.password !== '') return;
  shell.openExternal(url.href).catch((error: unknown) => console.error(`regang: ${String(error)}`));
}
