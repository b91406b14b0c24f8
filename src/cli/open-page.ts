/** Opens the page in the person's own browser. */
import { spawn } from 'node:child_process';

/** The system's own way of opening an address. */
function opener(address: string): readonly [string, readonly string[]] {
  switch (process.platform) {
    case 'darwin':
      return ['open', [address]];
    case 'win32':
      return ['cmd', ['/c', 'start', '', address]];
    default:
      return ['xdg-open', [address]];
  }
}

/** True where a browser was asked to open the address; false where there is nothing to ask. */
export function openPage(address: string): Promise<boolean> {
  return new Promise((resolve) => {
    const [command, args] = opener(address);
    const child = spawn(command, args, { stdio: 'ignore', detached: true });
    child.once('error', () => resolve(false));
    // An opener that fails does so at once; one that works may stay as long as the browser.
    child.once('exit', (code) => resolve(code === 0));
    setTimeout(() => {
      child.unref();
      resolve(true);
    }, 1500).unref();
  });
}
