/** Exit statuses: nothing at fault; faults found; input that can't be read, or bad usage. */
export const EXIT = { fine: 0, faults: 1, unreadable: 2 } as const;
