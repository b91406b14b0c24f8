/** The folder of the bundle of a checkout's sources as they are; undefined where none can be made or kept. */
export function bundleOf(root: string): Promise<string | undefined>;
/** Changes whenever a source, an installed package or Node does. */
export function fingerprint(root: string): string;
