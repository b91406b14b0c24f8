export function compileForOneRun(): void;
export function compileForShortRuns(): void;
