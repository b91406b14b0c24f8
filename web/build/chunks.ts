/**
 * Which modules go into which file. Left to itself the bundler makes a file for each set of views that share something:
 * some twenty for the page alone, and each costs a slow line a round. Here all that the page shares with others is one.
 */
interface Graph {
  readonly getModuleInfo: (id: string) => {
    readonly isEntry: boolean;
    readonly importers: readonly string[];
    readonly dynamicImporters: readonly string[];
  } | null;
}

/** The name of the file for a module; null where the bundler may choose. */
export function chunkOf(id: string, graph: Graph): string | null {
  const roots = rootsOf(id, graph);
  return roots.size > 1 && [...roots].some((root) => /[/\\]web[/\\](main\.ts|index\.html)$/.test(root))
    ? 'common'
    : null;
}

/** The modules that bring this one with them, by imports that don't wait: pages, and whatever is fetched later. */
function rootsOf(id: string, graph: Graph): ReadonlySet<string> {
  const roots = new Set<string>();
  const seen = new Set<string>();
  const waiting = [id];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    const info = graph.getModuleInfo(next);
    if (info === null) continue;
    if (info.isEntry || info.dynamicImporters.length > 0) roots.add(next);
    waiting.push(...info.importers);
  }
  return roots;
}
