export const NETWORK = '';
