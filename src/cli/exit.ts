/** Exit statuses: nothing at fault; faults found; input that can't be read, or bad usage. */
export const EXIT = { fine: 0, faults: 1, unreadable: 2 } as const;

/** An error in what the person asked for: its message is printed as it stands, without a stack, and we exit with 2. */
export class UsageError extends Error {}
